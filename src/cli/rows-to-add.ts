// The rows that confirm a day: one for each athlete who was due, as it was written but for the exceptions that were
// typed. Two sessions on one day are one row of both; practice, matches and tests have rows of their own. Called by
// `footfall done`, which checks the rows and writes them.

import type { Plan } from '../plan/types.ts';
import { isRecorded } from '../report/due-sessions.ts';
import type { DueSession } from '../report/due-sessions.ts';
import { selectsAthlete } from '../report/selection.ts';
import type { Selection } from '../report/selection.ts';
import { isoDate } from '../util/days.ts';
import type { Day } from '../util/days.ts';
import { readExceptions } from './exceptions.ts';
import type { Exceptions } from './exceptions.ts';
import type { RecordRow } from './record-file.ts';

export interface DayToConfirm {
  readonly date: Day;
  readonly kind: DueSession['kind'];
  readonly plan: Plan;
  /** What of that kind was planned that day. */
  readonly planned: readonly DueSession[];
  readonly selection: Selection;
  readonly typed: readonly string[];
}

export type RowsToAdd =
  | {
      readonly ok: true;
      readonly rows: readonly RecordRow[];
      /** Athletes who were due and are on the record for that day already. */
      readonly recorded: readonly string[];
    }
  | { readonly ok: false; readonly problem: string };

const refused = (problem: string): RowsToAdd => ({ ok: false, problem });

/** In order of athlete. Refused where an exception is for somebody it can't be for, or nothing is planned that day. */
export function rowsToAdd({ date, kind, plan, planned, selection, typed }: DayToConfirm): RowsToAdd {
  const exceptions = readExceptions(typed, plan);
  if (!exceptions.ok) return refused(exceptions.problem);
  const { of, named } = exceptions;
  const rows: RecordRow[] = [];
  const recorded: string[] = [];
  let due = 0;
  for (const athlete of plan.athletes) {
    const { id } = athlete;
    const isChosen = selectsAthlete(selection, athlete);
    const mine = planned.filter((one) => one.athlete.id === id);
    const said = named.has(id) || mine.length > 0 ? (of.get(id) ?? {}) : {};
    if (named.has(id) && !isChosen) return refused(`${id} is not among those named by --athlete and --squad`);
    if (!isChosen || (mine.length === 0 && !named.has(id))) continue;
    due += 1;
    if (isRecorded(plan.record, id, date, kind)) {
      if (named.has(id)) return refused(`${id} is on the record for ${isoDate(date)} already: change it there`);
      recorded.push(id);
    } else if (mine.length === 0 && !isWorthARow(said)) {
      return refused(
        `${id} has ${nothing(kind)} planned on ${isoDate(date)}; with contacts it is ${besides(kind)}: ${id}=40, ` +
          `and how a morning was can be told alone: ${id}.pain=3`,
      );
    } else rows.push(rowOf({ date: isoDate(date), athlete: id, kind }, mine, said));
  }
  return due === 0 ? refused(nothingPlanned(date, kind)) : { ok: true, rows, recorded };
}

/** Jumps besides, or how a morning was. */
const isWorthARow = ({ contacts, pain }: Exceptions): boolean =>
  pain !== undefined || (contacts !== undefined && Number(contacts) !== 0);

const nothing = (kind: DueSession['kind']): string => (kind === 'session' ? 'nothing' : `no ${kind}`);
const besides = (kind: DueSession['kind']): string => `a ${kind} besides`;

const nothingPlanned = (date: Day, kind: DueSession['kind']): string =>
  `${nothing(kind)} is planned on ${isoDate(date)}; who trained besides is named with contacts: mira=40`;

/** The day's row. A morning told alone, with nothing planned, is one of no contacts. */
function rowOf(row: RecordRow, planned: readonly DueSession[], said: Exceptions): RecordRow {
  if (planned.length === 0 && said.contacts === undefined) return { ...row, contacts: '0', minutes: '0', ...said };
  if (said.contacts !== undefined) return { ...row, ...missed(said.contacts), ...said };
  const contacts = planned.reduce((sum, one) => sum + one.contacts, 0);
  const minutes = planned.flatMap((one) => one.minutes ?? []);
  return {
    ...row,
    contacts: String(contacts),
    ...(minutes.length > 0 && { minutes: String(minutes.reduce((sum, one) => sum + one, 0)) }),
    ...said,
  };
}

/** No contacts are no session, and took no time; of another number nobody knows how long it took. */
const missed = (contacts: string): RecordRow => (Number(contacts) === 0 ? { minutes: '0' } : {});
