// Whatever holds the week before, the sessions of the week of a peak are hardly larger than those of the taper week before
// it: by a quarter, rounded up to whole steps. Asked of the stage's own numbers in plain arithmetic, and of the audit.

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { compilePlan } from '../../src/compile.ts';
import type { BuiltWeek } from '../../src/build/types.ts';
import type { Competition, Pin, Plan } from '../../src/plan/types.ts';
import { DAYS_A_WEEK } from '../../src/util/days.ts';
import type { Weekday } from '../../src/util/days.ts';
import { EVERYBODY, HALL, HERE, slot } from '../unit/schedule/make-plan.ts';
import { PATIENCE, plansFor, tell } from './plans.ts';
import { randomPlan } from './random-plan.ts';

const PLANS = plansFor(60);

const WEEKS = 12;

const weekdays = fc.subarray<Weekday>([0, 1, 2, 3, 4], { minLength: 2 });

interface Drawn {
  /** Days with a slot, and those that have one in the taper alone. */
  readonly days: readonly Weekday[];
  readonly late: readonly Weekday[];
  readonly peakOn: number;
  /** The coach's number for the first week of the taper, in steps. */
  readonly steps: number | undefined;
}

const drawn = fc.record<Drawn>({
  days: weekdays,
  late: fc.oneof(fc.constant([]), weekdays),
  peakOn: fc.integer({ min: 4, max: 6 }),
  steps: fc.option(fc.integer({ min: 1, max: 20 }), { nil: undefined, freq: 2 }),
});

/** The athletes of a random plan in twelve weeks to one peak, with nobody away. */
const toOnePeak = fc.tuple(randomPlan, drawn).map(([plan, { days, late, peakOn, steps }]): Plan => {
  const { starts } = plan.season;
  const ends = starts + WEEKS * DAYS_A_WEEK - 1;
  const taper = ends + 1 - 2 * DAYS_A_WEEK;
  const day = ends + 1 - DAYS_A_WEEK + peakOn;
  const range = { from: day, until: day };
  const cup: Competition = { name: 'Cup', range, prepare: 'peak', jumps: 0, who: EVERYBODY, span: HERE };
  const week = { from: taper, until: taper + DAYS_A_WEEK - 1 };
  const contacts = { kind: 'contacts', contactsAWeek: 5 * (steps ?? 0) } as const;
  const pin: Pin = { range: week, who: EVERYBODY, effects: [contacts], because: 'camp', span: HERE };
  const lateOnly = late.filter((one) => !days.includes(one));
  return {
    ...plan,
    season: { ...plan.season, ends, inSeason: [] },
    places: new Map([[HALL.id, HALL]]),
    slots: [
      ...days.map((one) => slot(one)),
      ...lateOnly.map((one) => slot(one, { range: { from: taper, until: ends } })),
    ],
    competitions: [cup],
    closures: [],
    practice: [],
    tests: [],
    pins: steps === undefined ? [] : [pin],
    ruleChanges: [],
    waivers: [],
    athletes: plan.athletes.map((one) => ({ ...one, away: [], returning: [] })),
  };
});

const largest = ({ sessions }: BuiltWeek): number =>
  Math.max(0, ...sessions.filter(({ kind }) => kind !== 'primer').map(({ contacts }) => contacts));

it('the last sessions before a peak are hardly larger than those before', { timeout: PATIENCE }, () => {
  let pairs = 0;
  let larger = 0;
  fc.assert(
    fc.property(toOnePeak, (plan) => {
      for (const { weeks, diagnostics } of compilePlan(plan).athletes) {
        expect(diagnostics.filter(({ params }) => params['breach'] === 'session')).toEqual([]);
        const [first, last] = weeks.slice(-2);
        if (first?.kind !== 'taper' || last?.kind !== 'taper') continue;
        const before = largest(first);
        const after = largest(last);
        if (before === 0 || after === 0) continue;
        pairs += 1;
        if (after > before) larger += 1;
        expect(after).toBeLessThanOrEqual(Math.max(15, 5 * Math.ceil(before / 4)));
      }
    }),
    { numRuns: PLANS },
  );
  tell(`tapers: ${PLANS} plans, ${pairs} of two weeks, in ${larger} the last session is larger than those before`);
  expect(pairs).toBeGreaterThan(PLANS / 4);
});
