// What is told of an athlete's record: weeks that nobody wrote down, a morning that stops the jumps, and weeks too far over
// what was usual to count in full. Called by first-stages.ts.

import { problem } from '../diagnostics/problem.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import type { Athlete, DoneRow } from '../plan/types.ts';
import { DAYS_A_WEEK, isoDate } from '../util/days.ts';
import type { Day } from '../util/days.ts';
import { isLeap, openingVolume } from './contacts/bounds.ts';
import type { Past } from './contacts/past.ts';
import type { WeekTerms } from './contacts/terms.ts';
import type { SeasonTerms } from './season-terms.ts';
import type { ContactsWeek } from './types.ts';

type Recorded = Pick<SeasonTerms, 'grid' | 'past' | 'terms'>;

/** Of a season whose `contacts` were planned by these terms. */
export function findingsOnRecord(
  athlete: Athlete,
  { grid, past, terms }: Recorded,
  contacts: readonly ContactsWeek[],
): readonly Diagnostic[] {
  const ahead = grid.weeks[past.recorded.length]?.starts;
  const leaps = past.recorded.flatMap(({ rows }, index) => {
    const [week, done, of] = [grid.weeks[index], contacts[index], terms[index]];
    return week === undefined || done === undefined || of === undefined
      ? []
      : leapOf(athlete, week.starts, of, done, rows);
  });
  return [...notRecorded(athlete, past.overdue, ahead), ...stoppedByPain(athlete, past, ahead), ...leaps];
}

/**
 * Said at the largest row of the week, where a slip of a finger is. Who has waived the rise of that week knows of it; it
 * counts for no more because of that. Of a week without a row there is nothing to mend.
 */
function leapOf(
  athlete: Athlete,
  starts: Day,
  terms: WeekTerms,
  { contacts, adaptedBefore, adapted }: ContactsWeek,
  rows: readonly DoneRow[],
): readonly Diagnostic[] {
  const largest = largestOf(rows, contacts);
  if (largest === undefined || !isLeap(terms, contacts) || isRiseWaived(terms)) return [];
  const params = {
    athlete: athlete.name,
    id: athlete.id,
    week: isoDate(starts),
    until: isoDate(starts + DAYS_A_WEEK - 1),
    contacts,
    here: largest.contacts ?? ('' as const),
    usual: openingVolume(terms, adaptedBefore),
    counts: adapted,
  };
  return [problem('schedule/record-leap', { params, span: largest.span, athlete: athlete.id, week: starts })];
}

/** Whether the coach has said of the week that it may rise. */
export const isRiseWaived = ({ waived = [] }: WeekTerms): boolean => waived.some(({ rule }) => rule === 'weekly-rise');

/** Of equal ones the first. Rows without a number share what the others leave of the week's contacts. */
function largestOf(rows: readonly DoneRow[], ofWeek: number): DoneRow | undefined {
  const asWritten = rows.filter(({ contacts }) => contacts === undefined).length;
  const left = rows.reduce((rest, { contacts = 0 }) => rest - contacts, ofWeek);
  const sizeOf = ({ contacts = left / asWritten }: DoneRow): number => contacts;
  return rows.reduce<DoneRow | undefined>(
    (most, row) => (most === undefined || sizeOf(row) > sizeOf(most) ? row : most),
    undefined,
  );
}

/** Asks for the record of weeks that nobody has written down. */
function notRecorded(athlete: Athlete, overdue: readonly Day[], week: Day | undefined): readonly Diagnostic[] {
  if (overdue.length === 0) return [];
  const params = { athlete: athlete.name, weeks: overdue.map(isoDate) };
  return [problem('schedule/record-missing', { params, span: athlete.span, athlete: athlete.id, week })];
}

/** Once, for the last morning on the record: a season without jumps is no small thing to find out from a table. */
function stoppedByPain(athlete: Athlete, { recorded, painful }: Past, ahead: Day | undefined): readonly Diagnostic[] {
  const stop = [...painful].find(([week, { stops }]) => stops && week >= recorded.length);
  if (stop === undefined || ahead === undefined) return [];
  const [week, { day, pain, span, better }] = stop;
  const from = ahead + DAYS_A_WEEK * (week - recorded.length);
  const params = {
    athlete: athlete.name,
    pain,
    on: isoDate(day),
    week: isoDate(from),
    better: better === undefined ? '' : isoDate(better),
  };
  return [problem('schedule/pain-stop', { params, span, athlete: athlete.id, week: from })];
}
