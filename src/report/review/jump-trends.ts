// One athlete's jump tests: the last day of each, the day before it that was tested in the same way, and whether the
// change between them is more than noise. Two ways of testing never meet: J2, J14 (P).

import type { TestRow } from '../../plan/types.ts';
import type { JumpTest } from '../../library/jump-tests.ts';
import { JUMP_TESTS } from '../../library/jump-tests.ts';
import { forecastHeight } from '../../record/forecast.ts';
import type { Forecast } from '../../record/forecast.ts';
import { isInsideNoise, smallestWorthwhileChange, usualJumpError } from '../../record/jumps.ts';
import { groupTrials, isSameWay } from '../../record/trials.ts';
import type { Trial, TrialGroup } from '../../record/trials.ts';
import { REVIEW } from '../../library/review.ts';
import { mean } from '../../util/statistics.ts';

export interface JumpTrend {
  readonly group: TrialGroup;
  /** Of the trials, in the unit of the measure. */
  readonly mean: number;
  /** The last day before that was tested in the same way. */
  readonly before?: { readonly group: TrialGroup; readonly mean: number };
  readonly change?: number;
  /** Published, between days: J11 (P). Of heights alone. */
  readonly typicalError?: number;
  readonly insideNoise?: boolean;
  /** 0.2 of the spread between those tested in the same way: J13 (M). Where there are enough of them. */
  readonly worthwhile?: number;
  /** How many the spread is of. */
  readonly worthwhileOf?: number;
  /** Where groups stood after jump training, from this mean: J15 (P). */
  readonly forecast?: Forecast;
}

export function trialOf({ athlete, day, test, value, unit, method, arms }: TestRow): Trial {
  return {
    athlete,
    day,
    test,
    value,
    unit,
    ...(method !== undefined && { method }),
    ...(arms !== undefined && { arms }),
  };
}

/** The last group of each test and way, in the order of their first trials. `groups` may be of many athletes. */
export function lastGroups(groups: readonly TrialGroup[]): readonly TrialGroup[] {
  const isNewer = (one: TrialGroup, other: TrialGroup): boolean =>
    one.test === other.test && isSameWay(one, other) && (one.day ?? 0) > (other.day ?? 0);
  return groups.filter((group) => !groups.some((other) => isNewer(other, group)));
}

/** Trends of some athletes; `everybody` are the groups of the whole plan, for the spread between athletes. */
export function jumpTrends(rows: readonly TestRow[], everybody: readonly TrialGroup[]): readonly JumpTrend[] {
  const groups = groupTrials(rows.map(trialOf));
  return lastGroups(groups).map((group) => {
    const middle = mean(group.values);
    const before = groups
      .filter((one) => one.test === group.test && isSameWay(one, group) && (one.day ?? 0) < (group.day ?? 0))
      .toSorted((a, b) => (a.day ?? 0) - (b.day ?? 0))
      .at(-1);
    return {
      group,
      mean: middle,
      ...(before !== undefined && changeFrom(group, before, middle)),
      ...spreadBetween(group, everybody),
      ...forecastFrom(group, middle),
    };
  });
}

function changeFrom(group: TrialGroup, before: TrialGroup, middle: number): Partial<JumpTrend> {
  const was = mean(before.values);
  const change = middle - was;
  const common = { before: { group: before, mean: was }, change };
  if (group.measure !== 'height') return common;
  const typicalError = usualJumpError(was);
  return { ...common, typicalError, insideNoise: isInsideNoise(change, typicalError) };
}

function spreadBetween(group: TrialGroup, everybody: readonly TrialGroup[]): Partial<JumpTrend> {
  const { test, method, arms, measure } = group;
  const alike = everybody.filter(
    (one) => one.test === test && one.method === method && one.arms === arms && one.measure === measure,
  );
  if (alike.length < REVIEW.fewestForSpread) return {};
  return {
    worthwhile: smallestWorthwhileChange(alike.map(({ values }) => mean(values))),
    worthwhileOf: alike.length,
  };
}

function forecastFrom({ test, arms, measure }: TrialGroup, middle: number): Partial<JumpTrend> {
  if (measure !== 'height' || arms === undefined || !isJumpTest(test)) return {};
  const forecast = forecastHeight(test, arms, middle);
  return forecast === undefined ? {} : { forecast };
}

const isJumpTest = (test: string): test is JumpTest => JUMP_TESTS.some((one) => one === test);
