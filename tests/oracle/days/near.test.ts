// Seasons whose sheets are out and whose plan was edited then: of all days that hold as much, no others move fewer
// sessions. Counted, not weighed, so that the weights have no say in it.

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { scheduleDays } from '../../../src/schedule/days.ts';
import type { PublishedDay } from '../../../src/schedule/days.ts';
import type { DaysWeek } from '../../../src/schedule/types.ts';
import type { Day } from '../../../src/util/days.ts';
import { inputOf } from '../../unit/days/make-season.ts';
import { countsOfSeason, leastCounts } from './brute-force.ts';
import { chosenDays, plainWeeks } from './plain-weeks.ts';
import { randomSeason } from './random-seasons.ts';

const RUNS = 150;

/** A season, and the same weeks with the closures, pins and tests of another. */
const edited = fc.tuple(randomSeason(3, 4), randomSeason(3, 4)).map(([{ season }, other]) => {
  const { closures = [], pins = [], tests = [] } = other.season.plan ?? {};
  return { season, fresh: { ...season, plan: { ...season.plan, closures, pins, tests } } };
});

function publishedBy(weeks: readonly DaysWeek[]): ReadonlyMap<Day, PublishedDay> {
  const days = new Map<Day, PublishedDay>();
  for (const { day, contacts, lifts } of weeks.flatMap(({ sessions }) => sessions)) {
    const before = days.get(day);
    days.set(day, { jumps: before?.jumps === true || contacts > 0, lifts: before?.lifts === true || lifts });
  }
  return days;
}

test(`as few sessions move as in any season, in ${RUNS} that were edited`, { timeout: 240_000 }, () => {
  let moved = 0;
  fc.assert(
    fc.property(edited, ({ season, fresh }) => {
      const before = inputOf(season);
      const published = publishedBy(scheduleDays(before.plan, before.input).value);
      const { plan, input } = inputOf(fresh);
      const plain = plainWeeks(plan, input, published);
      const chosen = chosenDays(scheduleDays(plan, input, new Map([['ada', published]])).value);
      const counts = countsOfSeason(plain, chosen);
      expect(counts).toEqual(leastCounts(plain));
      moved += counts[3];
    }),
    { numRuns: RUNS },
  );
  expect(moved).toBeGreaterThan(RUNS / 10);
});
