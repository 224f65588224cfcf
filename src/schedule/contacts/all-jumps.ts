// What practice, matches and tests leave of a week in which they rise over the weeks before: the rule all-jumps-rise. What
// an athlete is used to is A and the mean of the other jumps of the last weeks, so that easy, closed and missed weeks don't
// make a usual week look like a leap. Known from the calendar but for A, which the bound rises with. Common practice (C).

import { getRuleValue } from '../../plan/rule-book.ts';
import { usualOtherJumps } from '../done-jumps.ts';
import { changedBy } from './changed-by.ts';
import type { AllJumps } from './terms.ts';
import type { WeekFacts } from './week-facts.ts';

/** Undefined where other jumps don't rise, while too few weeks lie behind, and where the rule is waived. */
export function allJumpsOf(facts: readonly WeekFacts[], index: number): AllJumps | undefined {
  const one = facts[index];
  if (one === undefined || one.week.otherJumps === 0) return undefined;
  const { book, range, week } = one;
  if (book.waiver('all-jumps-rise', range) !== undefined) return undefined;
  const weeks = getRuleValue(book, 'all-jumps-rise', 'weeks', range);
  const before = sumBefore(facts, index, weeks);
  if (before === undefined || week.otherJumps * weeks <= before) return undefined;
  return {
    percent: getRuleValue(book, 'all-jumps-rise', 'most', range),
    weeks,
    before,
    other: week.otherJumps,
    spans: changedBy(book, 'all-jumps-rise', range),
  };
}

/** Other jumps of the last so many weeks before one; weeks with nothing are left out. */
function sumBefore(facts: readonly WeekFacts[], index: number, weeks: number): number | undefined {
  let sum = 0;
  let found = 0;
  for (let at = index - 1; at >= 0 && found < weeks; at -= 1) {
    const one = facts[at];
    if (one === undefined) break;
    const isIdle = one.kind.kind === 'empty' || one.kind.kind === 'transition';
    if (isIdle && one.week.otherJumps === 0) continue;
    sum += usualOtherJumps(one.week);
    found += 1;
  }
  return found < weeks || weeks < 1 ? undefined : sum;
}
