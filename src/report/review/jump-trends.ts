// One athlete's jump tests: the last day of each, the day before it that was tested in the same way, and whether the
// change between them is more than noise. Two ways of testing never meet: J2, J14 (P).

import type { TestRow } from '../../plan/types.ts';
import { isInsideNoise, smallestWorthwhileChange, usualJumpError } from '../../record/jumps.ts';
import { groupTrials, withTimes } from '../../record/trials.ts';
import type { TrialGroup } from '../../record/trials.ts';
import { REVIEW } from '../../library/review.ts';
import { mean } from '../../util/statistics.ts';
import { grouped } from '../../util/grouped.ts';

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
}

/** Groups of what is on record; times that belong to no jump are left out. */
export const groupsOf = (rows: readonly TestRow[]): readonly TrialGroup[] => groupTrials(withTimes(rows));

/** Groups of one test, way and athlete each, in order of day, in the order of their first trials. */
export function byWay(groups: readonly TrialGroup[]): readonly (readonly TrialGroup[])[] {
  const ways = grouped(groups, ({ athlete, test, method, arms, measure }) =>
    JSON.stringify([athlete, test, method, arms, measure]),
  );
  return ways.map((way) => way.toSorted((a, b) => (a.day ?? 0) - (b.day ?? 0)));
}

/** The last group of each test, way and athlete. */
export const lastGroups = (groups: readonly TrialGroup[]): readonly TrialGroup[] =>
  byWay(groups).flatMap((way) => way.at(-1) ?? []);

/** Trends of one athlete's groups; `everybody` are those of the whole plan, for the spread between athletes. */
export function jumpTrends(groups: readonly TrialGroup[], everybody: readonly TrialGroup[]): readonly JumpTrend[] {
  return byWay(groups).flatMap((way) => {
    const group = way.at(-1);
    if (group === undefined) return [];
    const middle = mean(group.values);
    return {
      group,
      mean: middle,
      ...changeFrom(group, way.at(-2), middle),
      ...spreadBetween(group, everybody),
    };
  });
}

function changeFrom(
  group: TrialGroup,
  before: TrialGroup | undefined,
  middle: number,
): Omit<Partial<JumpTrend>, 'group' | 'mean'> {
  if (before === undefined) return {};
  const was = mean(before.values);
  const change = middle - was;
  const common = { before: { group: before, mean: was }, change };
  if (group.measure !== 'height') return common;
  const typicalError = usualJumpError(was);
  return { ...common, typicalError, insideNoise: isInsideNoise(change, typicalError) };
}

function spreadBetween(
  group: TrialGroup,
  everybody: readonly TrialGroup[],
): Pick<JumpTrend, 'worthwhile' | 'worthwhileOf'> {
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
