// The trials of a test typed after `footfall done --test`, as rows of the file that the plan names under record: tests:.
// Called by the command. Test and unit are judged by the reading of the plan with the rows in it.

import type { Plan } from '../plan/types.ts';
import { selectsAthlete } from '../report/selection.ts';
import type { Selection } from '../report/selection.ts';
import { isoDate } from '../util/days.ts';
import type { Day } from '../util/days.ts';
import { appendRows, withRecord } from './add-to-record.ts';
import type { Opened } from './add-to-record.ts';
import { DONE } from './exit-status.ts';
import type { ExitStatus } from './exit-status.ts';
import type { DoneRequest } from './file-requests.ts';
import type { RecordRow } from './record-file.ts';
import { select, unknown } from './select.ts';
import { lined, refuse } from './session.ts';
import type { Session } from './session.ts';

export type TestRequest = DoneRequest & { readonly date: Day; readonly test: string };

/** Status 0 with the trials added, all of them or none; 1 where the plan has errors with them; 2 where they are refused. */
export async function recordTest(request: TestRequest, session: Session): Promise<ExitStatus> {
  if (request.kind !== undefined)
    return await refuse(session, '--test records trials and --kind what was done: one at a time');
  return await withRecord(request.plan, 'tests', session, (opened) => addTrials(request, opened, session));
}

async function addTrials(request: TestRequest, opened: Opened, session: Session): Promise<ExitStatus> {
  const chosen = select(request, opened.plan);
  if (!chosen.ok) return await refuse(session, chosen.problem);
  const rows = trialRows(request, opened.plan, chosen.selection);
  if (typeof rows === 'string') return await refuse(session, rows);
  const failed = await appendRows(request.plan, opened, rows, session);
  if (failed !== undefined) return failed;
  await session.out.writeAll(lined(rows.map(rowWords)));
  const count = rows.length === 1 ? '1 trial' : `${rows.length} trials`;
  await session.err.write(
    `footfall: ${isoDate(request.date)}: ${count} of ${request.test} added to ${opened.record.path}\n`,
  );
  return DONE;
}

const rowWords = ({ athlete = '', trial = '', value = '', unit = '' }: RecordRow): string =>
  `${athlete}: trial ${trial}, ${value} ${unit}`;

const TYPED = /^([^=]+)=(.*\S.*)$/su;
const TRIAL = /^(\d+(?:\.\d+)?) ?([A-Za-z][A-Za-z/]*)$/u;

/** A row for each trial, in the order of the athletes as typed; or why there are none, in words. */
function trialRows(
  { date, test, method, arms, exceptions }: TestRequest,
  plan: Plan,
  selection: Selection,
): readonly RecordRow[] | string {
  if (exceptions.length === 0) return `whose trials? ${EXAMPLE}`;
  const all = { date: isoDate(date), test, ...(method !== undefined && { method }), ...armsOf(arms) };
  const ids = new Set(plan.athletes.map(({ id }) => id));
  const rows: RecordRow[] = [];
  const named = new Set<string>();
  for (const text of exceptions) {
    const [, athlete = '', typed = ''] = TYPED.exec(text) ?? [];
    if (athlete === '') return `"${text}" is no trial: ${EXAMPLE}`;
    const problem = unknown([athlete], 'athlete', ids) ?? refusalOf(athlete, date, test, plan, selection);
    if (problem !== undefined) return problem;
    if (named.has(athlete)) return `${athlete} is given twice: all trials stand with commas between`;
    named.add(athlete);
    for (const [index, trial] of typed.split(',').entries()) {
      const [, value = '', unit = ''] = TRIAL.exec(trial.trim()) ?? [];
      if (unit === '') return `"${trial.trim()}" is no trial: each has its unit, and a point for decimals. ${EXAMPLE}`;
      rows.push({ ...all, athlete, trial: String(index + 1), value, unit });
    }
  }
  return rows;
}

const EXAMPLE = 'Write "mira=33.5 cm, 34 cm"';

const armsOf = (arms: boolean | undefined): RecordRow => (arms === undefined ? {} : { arms: arms ? 'yes' : 'no' });

/** Not among those asked for, or with trials of that test on record for that day, which are never changed. */
function refusalOf(id: string, date: Day, test: string, plan: Plan, selection: Selection): string | undefined {
  if (!plan.athletes.some((athlete) => athlete.id === id && selectsAthlete(selection, athlete)))
    return `${id} is not among those named by --athlete and --squad`;
  const isThere = plan.record.tests.some((row) => row.athlete === id && row.day === date && row.test === test);
  return isThere
    ? `${id} has trials of ${test} on the record for ${isoDate(date)} already: change it there`
    : undefined;
}
