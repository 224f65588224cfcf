// The costs of days stand on floors: all of one floor, over the longest season, weighs less than one unit of the next.

import { describe, expect, it } from 'vitest';
import { DAY_PREFERENCES, DAY_STABILITY, JUMP_SHORTFALL, LIFT_SHORTFALL } from '../../../src/library/days.ts';

const LONGEST_SEASON_WEEKS = 104;
const DAYS = 7;
const BOTH_SIDES = 2;

const most = (costs: readonly { readonly cost: number }[]): number => costs.reduce((sum, { cost }) => sum + cost, 0);

const preferences =
  LONGEST_SEASON_WEEKS *
  DAYS *
  (most(Object.values(DAY_PREFERENCES)) + (BOTH_SIDES - 1) * DAY_PREFERENCES['beside-hard-day'].cost);
const published = LONGEST_SEASON_WEEKS * DAYS * BOTH_SIDES * DAY_STABILITY.published.cost;
const noFreeDay = LONGEST_SEASON_WEEKS * DAY_STABILITY['no-free-day'].cost;
const lifts = LONGEST_SEASON_WEEKS * (DAYS * LIFT_SHORTFALL.missing.cost + LIFT_SHORTFALL.none.cost);
const jumps = LONGEST_SEASON_WEEKS * DAYS * (JUMP_SHORTFALL.missing.cost + JUMP_SHORTFALL['pin-unmet'].cost);

describe('the costs of days', () => {
  it('weigh a published day over all preferences of a season', () => {
    expect(preferences).toBeLessThan(DAY_STABILITY.published.cost);
  });

  it("weigh a young athlete's free day over all published days of a week and its preferences", () => {
    expect(DAYS * BOTH_SIDES * DAY_STABILITY.published.cost + preferences).toBeLessThan(
      DAY_STABILITY['no-free-day'].cost,
    );
  });

  it('weigh a lift session over all that stands below', () => {
    expect(preferences + published + noFreeDay).toBeLessThan(LIFT_SHORTFALL.missing.cost);
  });

  it('weigh a jump session over all that stands below', () => {
    expect(preferences + published + noFreeDay + lifts).toBeLessThan(JUMP_SHORTFALL.missing.cost);
  });

  it('add up without rounding', () => {
    expect(preferences + published + noFreeDay + lifts + jumps).toBeLessThan(Number.MAX_SAFE_INTEGER);
  });
});
