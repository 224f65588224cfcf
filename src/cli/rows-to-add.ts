// The rows that confirm a day: one for each athlete who was due, as it was written but for the exceptions that were typed.
// Two sessions on one day are one row of both.
// Called by `footfall done`, which checks the rows and writes them.

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
  readonly plan: Plan;
  /** Sessions of that day. */
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
export function rowsToAdd({ date, plan, planned, selection, typed }: DayToConfirm): RowsToAdd {
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
    if (isRecorded(plan.record, id, date)) {
      if (named.has(id)) return refused(`${id} is on the record for ${isoDate(date)} already: change it there`);
      recorded.push(id);
    } else if (mine.length === 0 && !isNumberOver0(said.contacts)) {
      return refused(`${id} has nothing planned on ${isoDate(date)}; with contacts it is a session besides: ${id}=40`);
    } else rows.push(...rowsOf(id, date, mine, said));
  }
  return due === 0 ? refused(nothingPlanned(date)) : { ok: true, rows, recorded };
}

const isNumberOver0 = (text: string | undefined): boolean => text !== undefined && Number(text) !== 0;

const nothingPlanned = (date: Day): string =>
  `nothing is planned on ${isoDate(date)}; who trained besides is named with contacts: mira=40`;

/** The day's row. */
function rowsOf(athlete: string, date: Day, planned: readonly DueSession[], said: Exceptions): readonly RecordRow[] {
  const row = { date: isoDate(date), athlete, kind: 'session' };
  if (said.contacts !== undefined) return [{ ...row, ...missed(said.contacts), ...said }];
  const contacts = planned.reduce((sum, one) => sum + one.contacts, 0);
  const minutes = planned.reduce((sum, one) => sum + one.minutes, 0);
  return [{ ...row, contacts: String(contacts), minutes: String(minutes), ...said }];
}

/** No contacts are no session, and took no time; of another number nobody knows how long it took. */
const missed = (contacts: string): RecordRow => (Number(contacts) === 0 ? { minutes: '0' } : {});
