import { describe, expect, it } from 'vitest';
import {
  countDays,
  daysOf,
  firstDay,
  lastDay,
  listSpacedSets,
  NO_DAYS,
  setOf,
} from '../../../src/schedule/days/day-sets.ts';

const EVERY_DAY = setOf([0, 1, 2, 3, 4, 5, 6]);

describe('sets of days', () => {
  it('know their members, their number, the first and the last', () => {
    const set = setOf([1, 3, 6]);
    expect([daysOf(set), countDays(set), firstDay(set), lastDay(set)]).toEqual([[1, 3, 6], 3, 1, 6]);
  });

  it('have no first or last day when empty', () => {
    expect([daysOf(NO_DAYS), countDays(NO_DAYS), firstDay(NO_DAYS), lastDay(NO_DAYS)]).toEqual([[], 0, 7, -1]);
  });

  it('are listed with the one first that has the first day in which they differ', () => {
    expect(listSpacedSets(setOf([0, 2, 3]), 2).map(daysOf)).toEqual([[0, 2], [0, 3], [0], [2], [3], []]);
  });

  it.each([
    // Subsets of seven days without neighbours: the ninth Fibonacci number. All subsets: 2 to the seventh.
    [2, 34],
    [1, 128],
    [7, 8],
    [30, 8],
  ])('whose days are %i or more apart are %i in a week', (apart, sets) => {
    expect(listSpacedSets(EVERY_DAY, apart)).toHaveLength(sets);
  });
});
