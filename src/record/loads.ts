// The load of training as the athletes felt it: session load, and what a week of it looks like. Of the two standard
// deviations the sample one (n − 1) is used, as the paper doesn't say which it means; it gives the lower monotony.

import { mean, sampleDeviation } from '../util/statistics.ts';
import { DAYS_A_WEEK } from '../util/days.ts';

/** Effort from 0 to 10 times minutes. Foster 1998, Med Sci Sports Exerc 30(7):1164–1168 (P). */
export function sessionLoad(effort: number, minutes: number): number {
  return effort * minutes;
}

export interface WeekLoad {
  /** Sum of the days. */
  readonly load: number;
  /** Mean of the days by their sample standard deviation; absent where all days are equal. */
  readonly monotony?: number;
  /** Load times monotony; absent with it. */
  readonly strain?: number;
}

/** Of the loads of a week's seven days, rest days as 0. Foster 1998 (P). */
export function weekLoad(days: readonly number[]): WeekLoad {
  if (days.length !== DAYS_A_WEEK) throw new RangeError(`a week has ${DAYS_A_WEEK} days, not ${days.length}`);
  const load = days.reduce((sum, day) => sum + day, 0);
  if (days.every((day) => day === days[0])) return { load };
  const monotony = mean(days) / sampleDeviation(days);
  return { load, monotony, strain: load * monotony };
}

/**
 * The last week's load by the mean of the weeks given, itself among them as is common; absent where that mean is 0.
 * Description only: no zone of it is known to be safe. R8 (P): Impellizzeri 2021, Lolli 2019.
 */
export function acuteToChronic(weeks: readonly number[]): number | undefined {
  const last = weeks.at(-1);
  if (last === undefined) return undefined;
  const usual = mean(weeks);
  return usual === 0 ? undefined : last / usual;
}
