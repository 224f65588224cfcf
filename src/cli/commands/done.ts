// `footfall done`: prints what is over and not on the record, or adds a day's sessions, practice, match or tests to it, or
// with `--test` the trials of a test. While rows are added no other footfall adds any, so that a day confirmed by two at
// once is confirmed once.

import type { Build } from '../../build/types.ts';
import { compile } from '../../compile.ts';
import type { Plan } from '../../plan/types.ts';
import { dueTable, dueWords, inOrderOfDay, isRecorded, plannedFor } from '../../report/due-sessions.ts';
import type { DueSession } from '../../report/due-sessions.ts';
import { selectsAthlete } from '../../report/selection.ts';
import type { Selection } from '../../report/selection.ts';
import { DAYS_A_WEEK, isoDate, startOfWeek } from '../../util/days.ts';
import type { Day } from '../../util/days.ts';
import type { RecordFile, RecordRow } from '../record-file.ts';
import { appendRows, openRecord, withRecord } from '../add-to-record.ts';
import type { Opened } from '../add-to-record.ts';
import { openSheets, tellNoneKept } from '../open-built.ts';
import type { SheetsOut } from '../open-built.ts';
import { recordTest } from '../record-test.ts';
import { rowsToAdd } from '../rows-to-add.ts';
import { DONE } from '../exit-status.ts';
import type { ExitStatus } from '../exit-status.ts';
import { tableOrLines } from '../table-or-lines.ts';
import type { DoneRequest } from '../file-requests.ts';
import { select } from '../select.ts';
import { lined, refuse } from '../session.ts';
import type { Session } from '../session.ts';

const SHEET_DAYS = 28;

/**
 * Status 0 for a sheet or for rows that were added; 1 where the plan has errors; 2 where the day or an exception is
 * refused, and nothing is written then.
 */
export async function recordDone(request: DoneRequest, session: Session): Promise<ExitStatus> {
  const { date, exceptions, from, format, test, method, arms, near } = request;
  if (test === undefined && (method !== undefined || arms !== undefined))
    return await refuse(session, '--method and --arms say how a test was measured: name it with --test');
  if (test !== undefined && near !== undefined)
    return await refuse(session, '--near says where sessions stand, and trials of a test are none');
  if (date === undefined) {
    if (test !== undefined) return await refuse(session, 'say which day the test was: --date 2027-02-02');
    if (exceptions.length > 0) return await refuse(session, 'say which day it was: --date 2027-02-02');
    return await printSheet(request, session);
  }
  if (from !== undefined) return await refuse(session, '--from is for the sheet, which is printed without --date');
  if (format !== 'text') return await refuse(session, '--format is for the sheet, which is printed without --date');
  if (date > session.today) return await refuse(session, `${isoDate(date)} is still to come: nothing is done yet`);
  if (test !== undefined) return await recordTest({ ...request, date, test }, session);
  const out = await openSheets(request.near, session);
  if (!out.ok) return out.status;
  return await withRecord(request.plan, 'done', session, (opened) =>
    addRows(date, request, { ...opened, ...out.sheets }, session),
  );
}

async function addRows(
  date: Day,
  request: DoneRequest,
  opened: Opened & SheetsOut,
  session: Session,
): Promise<ExitStatus> {
  const { plan, record } = opened;
  const chosen = select(request, plan);
  if (!chosen.ok) return await refuse(session, chosen.problem);
  const { kind = 'session', near } = request;
  if (near !== undefined) await tellNoneKept(near, plan, opened, session);
  const all = sessionsOf(opened, startOfWeek(date, plan.season.weekStarts), date, date, session.today);
  const planned = all.filter((one) => one.kind === kind);
  const found = rowsToAdd({ date, kind, plan, planned, selection: chosen.selection, typed: request.exceptions });
  if (!found.ok) return await refuse(session, found.problem);
  const failed = await appendRows(request.plan, opened, found.rows, session);
  if (failed !== undefined) return failed;
  await session.out.writeAll(lined(found.rows.map(rowWords)));
  await session.err.write(
    `footfall: ${toldWords(found.rows.length, found.recorded, record, date)}${outsideWords(plan, date)}\n`,
  );
  return DONE;
}

const rowWords = ({
  athlete = '',
  contacts = '',
  minutes = '',
  effort = '',
  pain = '',
  note = '',
}: RecordRow): string =>
  [
    `${athlete}: ${contactWords(contacts, minutes)}`,
    ...(minutes === '' || minutes === '0' ? [] : [`${minutes} min`]),
    ...(effort === '' ? [] : [`effort ${effort}`]),
    ...(pain === '' ? [] : [`pain ${pain}`]),
    ...(note === '' ? [] : [note]),
  ].join(', ');

/** Who only lifted has no contacts and minutes all the same; who wasn't there has neither. */
function contactWords(contacts: string, minutes: string): string {
  if (contacts !== '0') return `${contacts} contacts`;
  return minutes === '0' ? 'nothing done' : 'no jumps';
}

function toldWords(added: number, recorded: readonly string[], { path }: RecordFile, date: Day): string {
  const rows = added === 1 ? '1 row' : `${added} rows`;
  const before = recorded.length === 0 ? '' : `; on the record already, and left as they are: ${recorded.join(', ')}`;
  return `${isoDate(date)}: ${added === 0 ? 'nothing' : rows} added to ${path}${before}`;
}

/** Training before a season may be kept, but the year of a date is easily last year's. */
function outsideWords({ season: { starts, ends } }: Plan, date: Day): string {
  if (starts <= date && date <= ends) return '';
  return `; the season is ${isoDate(starts)} to ${isoDate(ends)}, so it doesn't count for what somebody is used to: is the year right?`;
}

/** What was planned from one day to another, as the sheets of the week that starts on `monday` had it. */
function sessionsOf(
  { documents, plan, published }: Pick<Opened, 'documents' | 'plan'> & SheetsOut,
  monday: Day,
  from: Day,
  until: Day,
  today: Day,
): readonly DueSession[] {
  if (monday > plan.season.ends) return [];
  const standing = { today, asOf: monday, ...(published !== undefined && { published }) };
  const build: Build | undefined = compile(documents, standing).value;
  const due: DueSession[] = [];
  for (const built of build?.athletes ?? []) due.push(...plannedFor(built, from, until));
  return due;
}

async function printSheet(request: DoneRequest, session: Session): Promise<ExitStatus> {
  const out = await openSheets(request.near, session);
  if (!out.ok) return out.status;
  const opened = await openRecord(request.plan, 'done', session);
  if (!opened.ok) return opened.status;
  const chosen = select(request, opened.plan);
  if (!chosen.ok) return await refuse(session, chosen.problem);
  if (request.near !== undefined) await tellNoneKept(request.near, opened.plan, out.sheets, session);
  const from = Math.max(request.from ?? session.today - SHEET_DAYS, opened.plan.season.starts);
  const { kind } = request;
  const all = dueSessions({ ...opened, ...out.sheets }, chosen.selection, from, session.today);
  const due = kind === undefined ? all : all.filter((one) => one.kind === kind);
  if (due.length === 0) await session.err.write(`footfall: nothing is to confirm since ${isoDate(from)}\n`);
  else await session.out.writeAll(rendered(request, due));
  return DONE;
}

/** What is over: of the days before today. */
function dueSessions(opened: Opened & SheetsOut, { who }: Selection, from: Day, today: Day): readonly DueSession[] {
  const { plan } = opened;
  const due: DueSession[] = [];
  const last = Math.min(today - 1, plan.season.ends);
  for (let monday = startOfWeek(from, plan.season.weekStarts); monday <= last; monday += DAYS_A_WEEK) {
    const until = Math.min(last, monday + DAYS_A_WEEK - 1);
    due.push(...sessionsOf(opened, monday, Math.max(from, monday), until, today));
  }
  return inOrderOfDay(
    due.filter(
      ({ athlete, day, kind }) => selectsAthlete({ who }, athlete) && !isRecorded(plan.record, athlete.id, day, kind),
    ),
  );
}

/** As a shell takes it for one word. */
const quoted = (path: string): string => (/^[\w./-]+$/u.test(path) ? path : `'${path.replaceAll("'", "'\\''")}'`);

function rendered({ format, plan, near }: DoneRequest, due: readonly DueSession[]): Iterable<string> {
  const out = near === undefined ? '' : ` --near ${quoted(near)}`;
  const where = `${plan === '.' ? '' : ` --plan ${quoted(plan)}`}${out}`;
  return tableOrLines(
    format,
    () => dueTable(due),
    () =>
      dueWords(due, (day, kind) => {
        const option = kind === 'session' ? '' : ` --kind ${kind}`;
        return `footfall done${where} --date ${isoDate(day)}${option}`;
      }),
  );
}
