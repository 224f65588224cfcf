// The maximum behind a lift's load: the lift's own, or another's where the library says that it serves, and what it
// still counts for. Called for every loaded line. A stale maximum counts in full and says so; after weeks away one that
// is older than the absence counts for less.

import type { Reason } from '../../build/types.ts';
import type { Athlete, LiftMax } from '../../plan/types.ts';
import type { Lift } from '../../library/types.ts';
import type { Day } from '../../util/days.ts';
import { DAYS_A_WEEK } from '../../util/days.ts';
import { LIFTING } from '../../library/lifting.ts';
import { PERCENT } from '../../util/units.ts';

export interface UsableMax {
  readonly max: LiftMax;
  /** What stands for 100 % in this lift, in grams and not rounded. */
  readonly wholeGrams: number;
  readonly stale: boolean;
  /** The share it counts for after time away, in per cent, where that is less than 100. */
  readonly awayShare?: number;
}

/** How old a maximum may be, and what it counts for after time away, from the rule of stale tests. */
export interface StaleRule {
  readonly weeks: number;
  readonly awayWeeks: number;
  readonly share: number;
}

/** Whether the maximum behind a lift's load is known, on whatever day. */
export const hasMax = ({ id, maxOf }: Lift, { athlete: { lifts } }: { readonly athlete: Athlete }): boolean =>
  maxOf !== undefined && (lifts.has(id) || lifts.has(maxOf));

/**
 * The maximum of a lift on a day, or undefined when none is known. `returns` are the days training began again after an
 * absence long enough to count, in order.
 */
export function findMax(
  athlete: Athlete,
  lift: Lift,
  day: Day,
  rule: StaleRule,
  returns: readonly Day[],
): UsableMax | undefined {
  if (lift.maxOf === undefined) return undefined;
  const own = athlete.lifts.get(lift.id);
  const max = own ?? athlete.lifts.get(lift.maxOf);
  if (max === undefined) return undefined;
  const share = own === undefined ? (lift.maxShare ?? PERCENT) : PERCENT;
  // One that is dated later than the session was not there yet, and says nothing of what time away has cost by then.
  const known = max.on !== undefined && max.on <= day ? max.on : undefined;
  const away = returns.some((back) => back <= day && (known === undefined || known < back));
  return {
    max,
    wholeGrams: (max.grams * share * (away ? rule.share : PERCENT)) / (PERCENT * PERCENT),
    stale: max.on !== undefined && day - max.on >= rule.weeks * DAYS_A_WEEK,
    ...(away ? { awayShare: rule.share } : {}),
  };
}

/**
 * The share that is said of a load: the one that was asked for, as plates round down, or that of the kilos where the kit
 * makes far less. Common practice, no source. `percent` of `wholeGrams` was asked for.
 */
export function saidShare(loadGrams: number, percent: number, wholeGrams: number): number {
  const asked = (wholeGrams * percent) / PERCENT;
  const made = (loadGrams * PERCENT) / wholeGrams;
  const isFar = percent - made > LIFTING.farUnderPoints && asked - loadGrams > LIFTING.farUnderGrams;
  return isFar ? Math.floor(made) : percent;
}

/** That the kit makes far less than this share, of so many grams. */
export const platesReason = (percent: number, grams: number): Reason => ({
  about: 'load',
  by: 'plates',
  params: { percent, grams },
  spans: [],
});
