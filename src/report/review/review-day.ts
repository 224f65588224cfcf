// Which day a review is of, and which weeks lie behind it. Nothing asks the clock: without a day of the coach's own it is
// the record that says how far things have come.

import type { Build, BuildWeek } from '../../build/types.ts';
import { REVIEW } from '../../library/review.ts';
import { holds } from '../../plan/applies.ts';
import type { Plan } from '../../plan/types.ts';
import { DAYS_A_WEEK, startOfWeek, weekdayOf } from '../../util/days.ts';
import type { Day } from '../../util/days.ts';

/**
 * The day after the last row on record; where no slot is left in its week the week is over, and it is the first day of
 * the next one. Undefined where nothing is recorded.
 */
export function dayOfReview({ record, season, slots }: Pick<Plan, 'record' | 'season' | 'slots'>): Day | undefined {
  const last = record.done.at(-1);
  if (last === undefined) return undefined;
  const day = last.day + 1;
  const week = startOfWeek(day, season.weekStarts);
  if (day === week) return day;
  for (let next = day; next < week + DAYS_A_WEEK; next += 1) {
    if (slots.some((slot) => slot.day === weekdayOf(next) && holds(slot.range, next))) return day;
  }
  return week + DAYS_A_WEEK;
}

/** The last weeks wholly before a day, oldest first. */
export const weeksBehind = ({ weeks }: Pick<Build, 'weeks'>, day: Day): readonly BuildWeek[] =>
  weeks.filter(({ starts }) => starts + DAYS_A_WEEK <= day).slice(-REVIEW.weeks);
