// Where groups of athletes stood after a programme of jump training, laid on an adult's test before the season. A range to
// talk about: groups gained that much on the average, a person may gain more, less or nothing. J15 (P).

import type { BuiltAthlete } from '../../build/types.ts';
import { JUMP_TESTS, TRAINING_GAIN_WEEKS } from '../../library/jump-tests.ts';
import type { JumpTest } from '../../library/jump-tests.ts';
import { REVIEW } from '../../library/review.ts';
import { ageOn } from '../../plan/athlete-facts.ts';
import { forecastHeight } from '../../record/forecast.ts';
import type { Forecast } from '../../record/forecast.ts';
import type { TrialGroup } from '../../record/trials.ts';
import { DAYS_A_WEEK } from '../../util/days.ts';
import type { Day } from '../../util/days.ts';
import { mean } from '../../util/statistics.ts';
import { byWay } from './jump-trends.ts';

export interface ProgrammeForecast {
  /** The test it starts from. */
  readonly group: TrialGroup;
  readonly mean: number;
  /** In the unit of the mean. */
  readonly after: Forecast;
  /** Weeks with jumps in the athlete's season from that test on, and their contacts, done and planned. */
  readonly weeks: number;
  readonly contacts: number;
}

/**
 * One for each test and way that something is published of: from the last test before the season, or without one from
 * its first. None for who isn't known to be an adult, nor for fewer or more weeks than the programmes had.
 */
export function programmeForecasts(
  { athlete, weeks }: Pick<BuiltAthlete, 'athlete' | 'weeks'>,
  groups: readonly TrialGroup[],
  starts: Day,
): readonly ProgrammeForecast[] {
  if ((ageOn(athlete, starts) ?? 0) < REVIEW.adultAge) return [];
  const { from, to } = TRAINING_GAIN_WEEKS;
  return byWay(groups).flatMap((way) => {
    const group = startOf(way, starts);
    if (group === undefined) return [];
    const { day = starts } = group;
    const jumping = weeks.filter((week) => week.contacts > 0 && week.starts + DAYS_A_WEEK > day);
    const middle = mean(group.values);
    const after = afterTraining(group, middle);
    if (after === undefined || jumping.length < from || jumping.length > to) return [];
    const contacts = jumping.reduce((sum, week) => sum + week.contacts, 0);
    return { group, mean: middle, after, weeks: jumping.length, contacts };
  });
}

/** Of a test and way, in order of day. */
const startOf = (groups: readonly TrialGroup[], starts: Day): TrialGroup | undefined =>
  groups.findLast(({ day = starts }) => day <= starts) ?? groups[0];

function afterTraining({ test, arms, measure }: TrialGroup, height: number): Forecast | undefined {
  if (measure !== 'height' || arms === undefined || !isJumpTest(test)) return undefined;
  return forecastHeight(test, arms, height);
}

const isJumpTest = (test: string): test is JumpTest => JUMP_TESTS.some((one) => one === test);
