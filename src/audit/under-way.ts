// A week under way of which more was done than its sheets had: what it comes to with the sessions that are left. Worked out
// from the rows of the record, and never from what the build says was done. Called by read-season.ts.

import { doneBy } from '../plan/done-by.ts';
import type { BuiltWeek } from '../build/types.ts';
import { VOLUME } from '../library/volume.ts';
import type { Athlete, DoneRow, Plan } from '../plan/types.ts';
import type { Day } from '../util/days.ts';

/**
 * Contacts of the week: what is planned and what was done over it, in whole steps. Where nothing is left there is nothing to
 * judge any more, so that it is at most what the week was planned at; what was too little for a session counts as done.
 */
export function contactsUnderWay(plan: Plan, athlete: Athlete, week: BuiltWeek, planned: number): number {
  const { underWay } = week;
  if (underWay === undefined) return planned;
  const over = doneUpTo(plan, athlete, week, underWay.from) - writtenUpTo(week, underWay.from);
  const contacts = planned + Math.max(0, Math.floor(over / VOLUME.step) * VOLUME.step);
  if (areJumpsLeft(week)) return contacts;
  return contacts + VOLUME.leastSession > underWay.planned ? Math.max(planned, underWay.planned) : contacts;
}

/** Whether there are jumps to come in a week, all of them unless it is under way and was cut. */
export const areJumpsLeft = ({ sessions, underWay }: BuiltWeek): boolean =>
  sessions.some(({ day, contacts }) => contacts > 0 && (underWay === undefined || day >= underWay.from));

function writtenUpTo({ sessions }: BuiltWeek, from: Day): number {
  let sum = 0;
  for (const { day, contacts } of sessions) if (day < from) sum += contacts;
  return sum;
}

function doneUpTo(plan: Plan, { id }: Athlete, week: BuiltWeek, from: Day): number {
  const rows = doneBy(plan.record, id).filter(
    ({ kind, day }) => kind === 'session' && week.starts <= day && day < from,
  );
  let sum = 0;
  for (const day of new Set(rows.map((row) => row.day))) sum += doneOn(day, rows, week);
  return sum;
}

/**
 * Of rows that contradict one another the larger counts. A row as written counts what its day was written with; on a day
 * with nothing on it one session of the week.
 */
function doneOn(day: Day, rows: readonly DoneRow[], { sessions, underWay, possible }: BuiltWeek): number {
  const mine = rows.filter((row) => row.day === day);
  const numbered = mine.reduce((sum, { contacts = 0, mayBe }) => sum + (mayBe?.contacts ?? contacts), 0);
  if (mine.every(({ contacts }) => contacts !== undefined)) return numbered;
  const sheets = sessions.filter((session) => session.day === day);
  const written =
    sheets.length === 0
      ? Math.floor((underWay?.planned ?? 0) / Math.max(1, possible))
      : sheets.reduce((sum, { contacts }) => sum + contacts, 0);
  return Math.max(numbered, written);
}
