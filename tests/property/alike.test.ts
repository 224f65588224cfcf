// Squads are full of athletes who get one season, one verdict and one set of lines between them, or one season with kilos of
// their own. Whatever the plan, nobody gets by that what being compiled alone wouldn't give; and the audit asks nothing of an
// athlete that it doesn't compare.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { auditAthlete } from '../../src/audit/audit.ts';
import type { BuiltAthlete } from '../../src/build/types.ts';
import { compilePlan } from '../../src/compile.ts';
import { BUILT_IN } from '../../src/library/index.ts';
import type { Athlete, Kit, LiftMax, Pin, Plan } from '../../src/plan/types.ts';
import { NO_KIT } from '../unit/bare-plan.ts';
import { day } from '../unit/date.ts';
import { EVERYBODY, HERE } from '../unit/schedule/make-plan.ts';
import { PATIENCE, plansFor, tell } from './plans.ts';
import { randomPlan, withProgramme } from './random-plan.ts';

const PLANS = plansFor(30);

/** What members of a squad may differ by, one thing at a time: values on either side of what the rules ask for. */
const change: fc.Arbitrary<Partial<Athlete>> = fc.oneof(
  fc.constant({}),
  fc.constantFrom(55_000, 80_000, 99_000, 101_000).map((massGrams) => ({ massGrams })),
  fc
    .constantFrom('2013-03-10', '2011-02-20', '2011-10-10', '2011-11-20', '2010-06-01', '2001-01-01', '1990-12-31')
    .map((iso) => ({ born: { earliest: day(iso), latest: day(iso) } })),
  fc.subarray(['drops', 'drop-strength', 'loads', 'drop-jump-30']).map((ids) => ({ cleared: new Set(ids) })),
  fc.constantFrom(90_000, 160_000).map((grams) => ({ lifts: new Map([['back-squat', maximum('back-squat', grams)]]) })),
  fc.constantFrom('long-jump', 'high-jump', 'volleyball', 'general').map((value) => ({
    sport: { value, origin: { kind: 'written', span: HERE } } as const,
  })),
  fc.constant({ goal: { value: 70, origin: { kind: 'written', span: HERE } } } as const),
);

const maximum = (lift: string, grams: number): LiftMax => ({ lift, grams, estimated: false, span: HERE });

/** A plan whose athletes have others beside them who differ by little. */
const crowded = fc.tuple(randomPlan, fc.array(change, { minLength: 3, maxLength: 7 })).map(([plan, changes]): Plan => ({
  ...plan,
  athletes: plan.athletes.flatMap((athlete) => [
    athlete,
    ...changes.map((one, index) => withChange(athlete, `${athlete.id}-${index}`, one)),
  ]),
}));

/** Nothing stands in the way of the others. */
function withChange(athlete: Athlete, id: string, one: Partial<Athlete>): Athlete {
  return { ...athlete, limits: [], away: [], returning: [], ...one, id, name: id };
}

/** On either side of what a bar of 15 or 20 kg is too heavy for, and of the strength that drops ask for. */
const maxima: fc.Arbitrary<Athlete['lifts']> = fc
  .array(
    fc.record({
      lift: fc.constantFrom(
        'back-squat',
        'back-squat',
        'bench-press',
        'romanian-deadlift',
        'half-squat',
        'power-clean',
      ),
      grams: fc.constantFrom(18_000, 24_000, 31_000, 45_000, 60_000, 92_500, 140_000),
      estimated: fc.boolean(),
      on: fc.constantFrom(undefined, day('2026-12-12'), day('2026-06-01'), day('2027-02-10')),
    }),
    { minLength: 1, maxLength: 3 },
  )
  .map((drawn) => new Map(drawn.map(({ on, ...one }) => [one.lift, { ...one, span: HERE, ...(on && { on }) }])));

/** As `crowded`, at places where there are bars, with maxima that are mostly the same and of other numbers. */
const lifting = fc
  .tuple(
    fc.oneof(randomPlan, withProgramme(randomPlan)),
    maxima,
    fc.array(fc.constantFrom(0.5, 0.9, 1, 1.1, 2), { minLength: 2, maxLength: 4 }),
    fc.array(maxima, { maxLength: 2 }),
    fc.constantFrom('back-squat', 'bench-press', 'romanian-deadlift'),
  )
  .map(([plan, first, times, others, pinned]): Plan => {
    const all = [first, ...times.map((one) => timesAs(first, one)), ...others];
    const slots = plan.slots.map((one) => ({ ...one, place: { ...one.place, kit: LIFTING_KIT } }));
    const pin: Pin = {
      range: { from: day('2027-01-11'), until: day('2027-01-31') },
      who: EVERYBODY,
      effects: [{ kind: 'load', loadsGrams: new Map([[pinned, 50_000]]) }],
      because: 'the coach says so',
      span: HERE,
    };
    return {
      ...plan,
      slots,
      pins: [...plan.pins, pin],
      athletes: plan.athletes
        .slice(0, 1)
        .flatMap((athlete) => [
          athlete,
          ...all.map((lifts, index) => withChange(athlete, `${athlete.id}-${index}`, { lifts })),
        ]),
    };
  });

const LIFTING_KIT: Kit = {
  ...NO_KIT,
  counts: new Map([
    ['racks', 4],
    ['bars', 4],
    ['benches', 2],
    ['dumbbells', 8],
  ]),
  barsGrams: [15_000, 20_000],
  smallestPlateGrams: 1250,
};

const timesAs = (lifts: Athlete['lifts'], times: number): Athlete['lifts'] =>
  new Map([...lifts].map(([id, one]) => [id, { ...one, grams: Math.floor(one.grams * times) }]));

const seen = ({ weeks, days, diagnostics, blocked, freed }: BuiltAthlete): unknown => ({
  weeks,
  days,
  diagnostics,
  blocked: [...blocked],
  freed: [...freed],
});

describe('who is compiled among others', { timeout: PATIENCE }, () => {
  it('gets what being compiled alone gives', () => {
    let athletes = 0;
    let shared = 0;
    fc.assert(
      fc.property(crowded, (plan) => {
        const seasons = new Set<BuiltAthlete['weeks']>();
        for (const built of compilePlan(plan).athletes) {
          athletes += 1;
          shared += seasons.has(built.weeks) ? 1 : 0;
          seasons.add(built.weeks);
          expect(seen(built)).toEqual(seen(compilePlan({ ...plan }).athlete(built.athlete)));
        }
      }),
      { numRuns: PLANS },
    );
    tell(`alike: ${PLANS} plans, ${athletes} athletes, ${shared} with the weeks of somebody else`);
    expect(shared).toBeGreaterThan(PLANS / 4);
  });

  it('lifts by the maxima that are hers', () => {
    let athletes = 0;
    let reloaded = 0;
    fc.assert(
      fc.property(lifting, (plan) => {
        const first = new Map<unknown, BuiltAthlete['weeks']>();
        for (const built of compilePlan(plan).athletes) {
          athletes += 1;
          // A week's reasons are made with its season, and stay where only loads are made anew.
          const reasons = built.weeks[0]?.reasons;
          reloaded += (first.get(reasons) ?? built.weeks) === built.weeks ? 0 : 1;
          first.set(reasons, built.weeks);
          expect(seen(built)).toEqual(seen(compilePlan({ ...plan }).athlete(built.athlete)));
        }
      }),
      { numRuns: PLANS },
    );
    tell(`alike: ${PLANS} plans, ${athletes} athletes, ${reloaded} with kilos of their own alone`);
    expect(reloaded).toBeGreaterThan(PLANS / 8);
  });

  it('is audited by what is compared, and by the mass only where drops are planned', () => {
    let asked = 0;
    fc.assert(
      fc.property(crowded, (plan) => {
        const { athletes, weeks } = compilePlan(plan);
        for (const built of athletes) {
          const read = new Set<string>();
          // The plan is a new one, so that nothing is known of anybody yet.
          auditAthlete({ ...plan }, { ...built, athlete: watched(built.athlete, read) }, weeks);
          expect([...read].filter((field) => !COMPARED.has(field))).toEqual(read.has('massGrams') ? ['massGrams'] : []);
          if (built.diagnostics.length > 0 || !read.has('massGrams')) continue;
          asked += 1;
          expect(hasDrops(built)).toBe(true);
        }
      }),
      { numRuns: PLANS },
    );
    tell(`alike: the mass of ${asked} athletes was asked for`);
  });
});

/** What the audit compares of two athletes, or tells of each. */
const COMPARED: ReadonlySet<string> = new Set([
  'id',
  'squad',
  'group',
  'sport',
  'levels',
  'now',
  'cleared',
  'lifts',
  'born',
  'limits',
  'away',
  'returning',
  'span',
] satisfies readonly (keyof Athlete)[]);

function watched(athlete: Athlete, read: Set<string>): Athlete {
  return new Proxy(athlete, {
    get: (target, field, receiver): unknown => {
      read.add(String(field));
      return Reflect.get(target, field, receiver);
    },
  });
}

const hasDrops = ({ weeks }: BuiltAthlete): boolean =>
  weeks.some(({ sessions }) =>
    sessions.some(({ lines }) => lines.some(({ exercise }) => BUILT_IN.drills.get(exercise)?.dropCm !== undefined)),
  );
