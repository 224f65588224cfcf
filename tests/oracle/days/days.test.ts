// The days of random short seasons against all days tried out: the same days, not only the same cost, so that ties are
// broken as promised too.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { scheduleDays } from '../../../src/schedule/days.ts';
import { inputOf } from '../../unit/days/make-season.ts';
import { costOfSeason, tryAllDays } from './brute-force.ts';
import { chosenDays, plainWeeks } from './plain-weeks.ts';
import { randomSeason } from './random-seasons.ts';

const RUNS = 400;

describe('the days of a season', () => {
  it(`are those of least cost among all days there are, in ${RUNS} random seasons`, { timeout: 240_000 }, () => {
    fc.assert(
      fc.property(randomSeason(3, 4), ({ season, published }) => {
        const { plan, input } = inputOf(season);
        const plain = plainWeeks(plan, input, published);
        const best = tryAllDays(plain);
        const chosen = chosenDays(scheduleDays(plan, input, new Map([['ada', published]])).value);
        expect(costOfSeason(plain, chosen)).toBe(best.cost);
        expect(chosen).toEqual(best.weeks);
      }),
      { numRuns: RUNS },
    );
  });
});
