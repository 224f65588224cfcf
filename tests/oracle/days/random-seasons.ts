// Random short seasons for the days: slots, matches, practice, tests, closures, pins, waivers and changed rules round weeks
// whose sessions are given.

import fc from 'fast-check';
import type { DayRange, Plan, Waiver } from '../../../src/plan/types.ts';
import type { PublishedDay } from '../../../src/schedule/days.ts';
import type { Day, Weekday } from '../../../src/util/days.ts';
import { day } from '../../unit/date.ts';
import { ALWAYS, EVERYBODY, HERE, slot } from '../../unit/schedule/make-plan.ts';
import { FIRST_MONDAY } from '../../unit/days/make-season.ts';
import type { SeasonByHand } from '../../unit/days/make-season.ts';

const START = day(FIRST_MONDAY);

const weekday = fc.integer({ min: 0, max: 6 }) as fc.Arbitrary<Weekday>;
const about = { who: EVERYBODY, span: HERE, because: 'so' };

const week = fc.record({
  sessions: fc.array(fc.constantFrom(40, 50, 60), { maxLength: 3 }),
  phase: fc.constantFrom('foundation', 'hypertrophy', 'strength', 'power', 'maintenance'),
  kind: fc.constantFrom('load', 'load', 'load', 'deload', 'taper', 'empty', 'transition'),
});

function rangeIn(days: number): fc.Arbitrary<DayRange> {
  return fc
    .tuple(fc.integer({ min: 0, max: days - 1 }), fc.integer({ min: 0, max: 6 }))
    .map(([from, length]) => ({ from: START + from, until: START + from + length }));
}

const often = <T>(item: fc.Arbitrary<T>, maxLength: number): fc.Arbitrary<T[]> => fc.array(item, { maxLength });

function planChange(days: number): fc.Arbitrary<Partial<Plan>> {
  const range = rangeIn(days);
  return fc.record({
    slots: fc
      .uniqueArray(
        fc.record({
          day: weekday,
          use: fc.constantFrom('jumps', 'lifts', 'both', 'both'),
          range: fc.oneof({ weight: 4, arbitrary: fc.constant(ALWAYS) }, { weight: 1, arbitrary: range }),
        }),
        {
          minLength: 2,
          maxLength: 4,
          selector: (one) => one.day,
        },
      )
      .map((slots) => slots.toSorted((a, b) => a.day - b.day).map((one) => slot(one.day, one))),
    competitions: often(
      fc
        .record({
          name: fc.constant('Match'),
          range: range.map(({ from, until }) => ({ from, until: Math.min(until, from + 2) })),
          prepare: fc.constantFrom('peak', 'through', 'freshen'),
          jumps: fc.constantFrom(0, 60),
        })
        .map((one) => ({ ...one, ...about })),
      2,
    ),
    practice: often(
      fc
        .record({
          day: weekday,
          jumps: fc.constantFrom(30, 60, 90),
          range: fc.constantFrom(ALWAYS, { from: START, until: START + 8 }),
        })
        .map((one) => ({ ...one, ...about })),
      3,
    ),
    closures: often(
      range.map((closed) => ({ range: closed, trained: 'none' as const, ...about })),
      1,
    ),
    tests: often(
      fc.integer({ min: 0, max: days - 1 }).map((at) => ({ day: START + at, what: [], contacts: 10, ...about })),
      1,
    ),
    waivers: often(
      fc
        .record({
          rule: fc.constantFrom<Waiver['rule']>(
            'session-spacing',
            'lift-spacing',
            'lift-event-gap',
            'test-fresh',
            'congested-week',
            'fast-spacing',
            'strength-always',
          ),
          range,
        })
        .map((one) => ({ ...one, ...about })),
      2,
    ),
    ruleChanges: often(
      fc
        .record({
          rule: fc.constantFrom<Waiver['rule']>('session-spacing', 'lift-spacing'),
          parameters: fc.constant(new Map([['apart', 3]])),
          range,
        })
        .map((one) => ({ ...one, ...about })),
      1,
    ),
    pins: often(
      fc
        .record({
          range,
          effects: fc.oneof(
            fc.constant([{ kind: 'rest' as const }]),
            fc.uniqueArray(weekday, { minLength: 1, maxLength: 2 }).map((days) => [{ kind: 'on' as const, days }]),
          ),
        })
        .map((one) => ({ ...one, ...about })),
      2,
    ),
  });
}

export interface RandomSeason {
  readonly season: SeasonByHand;
  readonly published: ReadonlyMap<Day, PublishedDay>;
}

/** Seasons of so many weeks, and the days that sheets already out give them. */
export const randomSeason = (least: number, most: number): fc.Arbitrary<RandomSeason> =>
  fc.array(week, { minLength: least, maxLength: most }).chain((weeks) =>
    fc.record({
      season: fc.record({
        weeks: fc.constant(weeks),
        plan: planChange(weeks.length * 7),
        athlete: fc.constantFrom({}, { born: { earliest: day('2013-01-01'), latest: day('2013-12-31') } }),
      }),
      published: fc
        .array(fc.tuple(fc.integer({ min: 0, max: weeks.length * 7 - 1 }), fc.boolean()), { maxLength: 4 })
        .map((days) => new Map(days.map(([at, jumps]) => [START + at, { jumps, lifts: !jumps }]))),
    }),
  );
