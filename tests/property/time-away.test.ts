// More time away never raises volume, in the two senses in which it can be promised.
//
// - What an absence takes: against the same season in which the weeks it closes had been trained at what the athlete is
//   used to, and none of the weeks behind it were a rung of the way back, no week's ceiling is higher.
// - An absence that begins when it began and is longer by whole weeks: where no phase and no easy week moves with it, and
//   the way back isn't the long ladder in place of the short one, no week's ceiling is higher.
//
// Against the season without the absence a single week may be higher, as other things move with it: the path to a peak has
// fewer weeks, an easy week falls elsewhere, the day of a limit or of the shortest slot is gone and no longer holds its week.
// And a week of a little training is a week of load, by which what the athlete is used to falls faster than by a week away.
// So it does in the weeks behind a short ladder that a ceiling holds low, and doesn't on the last rungs of a long one.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Level } from '../../src/library/types.ts';
import type { Athlete, Away, Plan, Trained } from '../../src/plan/types.ts';
import { ceilingLine } from '../../src/schedule/contacts/search.ts';
import type { WeekTerms } from '../../src/schedule/contacts/terms.ts';
import type { KindWeek } from '../../src/schedule/types.ts';
import { isoDate } from '../../src/util/days.ts';
import { day } from '../unit/date.ts';
import { athlete, HERE, plan, slot } from '../unit/schedule/make-plan.ts';
import { contactsOf } from './contacts-of.ts';
import { PATIENCE, plansFor, tell } from './plans.ts';
import { LIBRARY, randomPlan } from './random-plan.ts';

const PLANS = plansFor(200);

const trained = fc.constantFrom<Trained>('none', 'none', 'some', 'full');

const away = (from: number, until: number, how: Trained): Away => ({
  range: { from, until },
  because: 'away',
  trained: how,
  span: HERE,
});

/** The week as it would be for somebody who had gone on at what they are used to. */
function asIfTrained(terms: WeekTerms, kind: KindWeek | undefined): WeekTerms {
  if (kind?.kind === 'empty') return { ...terms, keep: { kind: 'stay' } };
  if (kind?.kind !== 'return' || kind.step === undefined) return terms;
  return {
    ...terms,
    openingPercent: 100,
    growth: { kind: 'rise', by: 'weekly-rise', percent: 10, contacts: 10 },
    keep: { kind: 'stay' },
  };
}

const MONDAY = day('2027-01-04');

const SHORT_FROM = 2;
const LONG_FROM = 4;

/** Whether one way back has two rungs and the other four. */
const longerLadder = (short: number, long: number, how: Trained): boolean =>
  how === 'none' && short >= SHORT_FROM && short < LONG_FROM && long >= LONG_FROM;

/** A child's season: foundation from end to end, on days that are always open. */
const plainSeason: fc.Arbitrary<readonly [plan: Plan, athlete: Athlete]> = fc
  .record({
    weeks: fc.integer({ min: 4, max: 30 }),
    days: fc.constantFrom([slot(0), slot(3)], [slot(1), slot(3), slot(5)], [slot(2)]),
    level: fc.constantFrom<Level>('beginner', 'intermediate', 'advanced'),
    contacts: fc.integer({ min: 10, max: 120 }),
    goal: fc.integer({ min: 20, max: 140 }),
  })
  .map(({ weeks, days, level, contacts, goal }) => [
    plan({ starts: isoDate(MONDAY), ends: isoDate(MONDAY + 7 * weeks - 1) }, { slots: days, library: LIBRARY }),
    athlete(level, contacts, {
      born: { earliest: day('2014-06-01'), latest: day('2014-06-01') },
      goal: { value: goal, origin: { kind: 'written', span: HERE } },
    }),
  ]);

describe('time away', { timeout: PATIENCE }, () => {
  it('never gives more than going on as usual', () => {
    let lower = 0;
    fc.assert(
      fc.property(randomPlan, fc.nat({ max: 120 }), fc.nat({ max: 50 }), trained, (drawn, from, days, how) => {
        const starts = drawn.season.starts + from;
        for (const one of drawn.athletes) {
          const gone = { ...one, away: [...one.away, away(starts, starts + days, how)] };
          const { terms, kinds, start, weeks } = contactsOf(drawn, gone);
          const usual = ceilingLine(
            terms.map((week, at) => asIfTrained(week, kinds.value[at])),
            start,
          );
          const more = weeks.map(({ most }, at) => most - (usual[at]?.most ?? 0));
          expect(more.filter((contacts) => contacts > 0)).toEqual([]);
          lower += more.filter((contacts) => contacts < 0).length;
        }
      }),
      { numRuns: PLANS },
    );
    tell(`time away: ${PLANS} plans, ${lower} weeks with a lower ceiling than as usual, none with a higher one`);
    expect(lower).toBeGreaterThan(PLANS / 10);
  });

  it('never gives more for being longer', () => {
    let lower = 0;
    const weeksAway = fc.record({
      from: fc.nat({ max: 20 }),
      weeks: fc.integer({ min: 0, max: 7 }),
      more: fc.integer({ min: 1, max: 5 }),
      how: trained,
    });
    fc.assert(
      fc.property(plainSeason, weeksAway, ([drawn, one], { from, weeks, more, how }) => {
        if (longerLadder(weeks, weeks + more, how)) return;
        const starts = MONDAY + 7 * from;
        const goneFor = (count: number): readonly Away[] =>
          count === 0 ? [] : [away(starts, starts + 7 * count - 1, how)];
        const short = contactsOf(drawn, { ...one, away: goneFor(weeks) }).weeks;
        const long = contactsOf(drawn, { ...one, away: goneFor(weeks + more) }).weeks;
        const higher = long.map(({ most }, at) => most - (short[at]?.most ?? 0));
        expect(higher.filter((contacts) => contacts > 0)).toEqual([]);
        lower += higher.filter((contacts) => contacts < 0).length;
      }),
      { numRuns: 2 * PLANS },
    );
    tell(`longer time away: ${2 * PLANS} plans, ${lower} weeks with a lower ceiling, none with a higher one`);
    expect(lower).toBeGreaterThan(PLANS / 10);
  });
});
