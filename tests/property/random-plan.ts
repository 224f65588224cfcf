// Random plans, as plain as a season can be and as odd: few slots or many, long closures, children, limits, returns,
// pins. Everything drawn is a plan a coach could write without an error in it.

import fc from 'fast-check';
import type {
  Athlete,
  Away,
  Closure,
  Competition,
  Kit,
  Limit,
  LiftMax,
  Pin,
  PinEffect,
  Plan,
  Practice,
  ReturnStage,
  Slot,
  TestDay,
  TrainingPlace,
} from '../../src/plan/types.ts';
import type { KitId, Level } from '../../src/library/types.ts';
import { DEFAULT_NOW } from '../../src/library/levels.ts';
import { isoDate } from '../../src/util/days.ts';
import type { Day } from '../../src/util/days.ts';
import { ALWAYS, athlete, day, EVERYBODY, HERE, plan } from '../unit/schedule/make-plan.ts';

const MONDAY = day('2027-01-04');
const MOST_WEEKS = 26;

const KIT_IDS: readonly KitId[] = [
  'hurdles',
  'racks',
  'bars',
  'benches',
  'mats',
  'bands',
  'cones',
  'pull-up-bars',
  'trap-bars',
];

const kit: fc.Arbitrary<Kit> = fc
  .record({
    counts: fc
      .array(fc.tuple(fc.constantFrom(...KIT_IDS), fc.integer({ min: 1, max: 8 })))
      .map((pairs) => new Map(pairs)),
    boxesCm: fc.subarray([20, 30, 45, 60]),
    barsGrams: fc.subarray([15_000, 20_000]),
    smallestPlateGrams: fc.constantFrom(500, 1250, 2500),
    dumbbellsGrams: fc.subarray([10_000, 15_000, 20_000]),
    kettlebellsGrams: fc.constant([]),
  })
  .map((drawn) => ({ ...drawn, counts: withHeights(drawn.counts, drawn.boxesCm, drawn.barsGrams) }));

function withHeights(
  counts: ReadonlyMap<KitId, number>,
  boxes: readonly number[],
  bars: readonly number[],
): ReadonlyMap<KitId, number> {
  const all = new Map(counts);
  if (boxes.length > 0) all.set('boxes', boxes.length);
  if (bars.length > 0) all.set('bars', bars.length);
  return all;
}

const place = (id: string): fc.Arbitrary<TrainingPlace> => kit.map((drawn) => ({ id, kit: drawn, span: HERE }));

const slots: fc.Arbitrary<readonly Slot[]> = fc
  .tuple(
    place('hall'),
    fc.uniqueArray(
      fc.record({
        day: fc.constantFrom(0, 1, 2, 3, 4, 5, 6),
        minutes: fc.integer({ min: 20, max: 120 }),
        use: fc.constantFrom('jumps', 'lifts', 'both', 'both', 'both'),
      }),
      { minLength: 1, maxLength: 5, selector: (one) => one.day },
    ),
  )
  .map(([hall, drawn]) =>
    drawn
      .toSorted((a, b) => a.day - b.day)
      .map((one): Slot => ({ ...one, id: `slot-${one.day}`, place: hall, range: ALWAYS, who: EVERYBODY, span: HERE })),
  );

const within = (weeks: number): fc.Arbitrary<Day> => fc.integer({ min: MONDAY, max: MONDAY + weeks * 7 - 1 });

const range = (weeks: number, longest: number) =>
  fc.tuple(within(weeks), fc.integer({ min: 0, max: longest })).map(([from, days]) => ({ from, until: from + days }));

const competition = (weeks: number): fc.Arbitrary<Competition> =>
  fc.record({
    name: fc.constant('Event'),
    range: range(weeks, 2),
    prepare: fc.constantFrom('peak', 'freshen', 'through'),
    jumps: fc.integer({ min: 0, max: 90 }),
    who: fc.constant(EVERYBODY),
    span: fc.constant(HERE),
  });

const absence = (weeks: number): fc.Arbitrary<Away> =>
  fc.record({
    range: range(weeks, 40),
    because: fc.constant('away'),
    trained: fc.constantFrom('none', 'some', 'full'),
    span: fc.constant(HERE),
  });

const closure = (weeks: number): fc.Arbitrary<Closure> => absence(weeks).map((one) => ({ ...one, who: EVERYBODY }));

const practice: fc.Arbitrary<Practice> = fc.record({
  day: fc.constantFrom(0, 1, 2, 3, 4, 5, 6),
  jumps: fc.integer({ min: 0, max: 120 }),
  range: range(MOST_WEEKS, 180),
  who: fc.constant(EVERYBODY),
  span: fc.constant(HERE),
});

const testDay = (weeks: number): fc.Arbitrary<TestDay> =>
  fc.record({
    day: within(weeks),
    what: fc.constant(['countermovement-jump']),
    contacts: fc.integer({ min: 0, max: 20 }),
    who: fc.constant(EVERYBODY),
    span: fc.constant(HERE),
  });

const effect: fc.Arbitrary<PinEffect> = fc.oneof(
  fc.constant<PinEffect>({ kind: 'rest' }),
  fc.constantFrom<PinEffect>({ kind: 'week-kind', weekKind: 'deload' }, { kind: 'week-kind', weekKind: 'load' }),
  fc.constantFrom<PinEffect>(
    { kind: 'phase', phase: 'strength' },
    { kind: 'phase', phase: 'power' },
    { kind: 'phase', phase: 'maintenance' },
    { kind: 'phase', phase: 'transition' },
  ),
);

const pin = (weeks: number): fc.Arbitrary<Pin> =>
  fc.tuple(range(weeks, 14), effect).map(([when, one]) => ({
    range: one.kind === 'rest' ? { from: when.from, until: when.from } : when,
    who: EVERYBODY,
    effects: [one],
    because: 'camp',
    span: HERE,
  }));

const limit = (weeks: number): fc.Arbitrary<Limit> =>
  fc
    .record({
      range: range(weeks, 60),
      avoid: fc.subarray<Limit['avoid'][number]>([
        { kind: 'drops' },
        { kind: 'single-leg' },
        { kind: 'direction', id: 'lateral' },
        { kind: 'tier', id: 'high' },
        { kind: 'pattern', id: 'squat' },
        { kind: 'lift', id: 'back-squat' },
      ]),
      contacts: fc.option(fc.integer({ min: 0, max: 80 }), { nil: undefined }),
    })
    .map(({ contacts, ...rest }) => ({
      ...rest,
      because: 'knee',
      span: HERE,
      ...(contacts === undefined ? {} : { contactsASession: contacts }),
    }));

const returning = (weeks: number): fc.Arbitrary<readonly ReturnStage[]> =>
  fc
    .tuple(fc.integer({ min: 1, max: 4 }), within(weeks))
    .map(([stage, since]) => [{ stage, of: 4, since, signed: 'physio', span: HERE }]);

const lift = (id: string): fc.Arbitrary<LiftMax> =>
  fc.record({
    lift: fc.constant(id),
    grams: fc.integer({ min: 20, max: 180 }).map((kilos) => kilos * 1000),
    estimated: fc.boolean(),
    on: fc.integer({ min: MONDAY - 120, max: MONDAY }),
    span: fc.constant(HERE),
  });

const lifts: fc.Arbitrary<ReadonlyMap<string, LiftMax>> = fc
  .tuple(lift('back-squat'), lift('romanian-deadlift'), lift('bench-press'), fc.subarray([0, 1, 2]))
  .map((drawn) => new Map(drawn[3].map((at) => drawn[at as 0 | 1 | 2]).map((max) => [max.lift, max])));

const person = (weeks: number): fc.Arbitrary<Athlete> =>
  fc
    .record({
      level: fc.constantFrom<Level>('beginner', 'intermediate', 'advanced'),
      contacts: fc.option(fc.integer({ min: 10, max: 130 }), { nil: undefined }),
      goal: fc.option(fc.integer({ min: 20, max: 160 }), { nil: undefined }),
      age: fc.option(fc.integer({ min: 8, max: 40 }), { nil: undefined }),
      massKilos: fc.option(fc.integer({ min: 30, max: 130 }), { nil: undefined }),
      lifts,
      cleared: fc.subarray(['drops', 'single-leg-high', 'drop-strength', 'loads', 'drop-jump-30']),
      limits: fc.array(limit(weeks), { maxLength: 1 }),
      returning: fc.oneof({ weight: 5, arbitrary: fc.constant([]) }, { weight: 1, arbitrary: returning(weeks) }),
      away: fc.array(absence(weeks), { maxLength: 2 }),
    })
    .map((drawn) => asAthlete(drawn));

interface Drawn {
  readonly level: Level;
  readonly contacts: number | undefined;
  readonly goal: number | undefined;
  readonly age: number | undefined;
  readonly massKilos: number | undefined;
  readonly lifts: ReadonlyMap<string, LiftMax>;
  readonly cleared: readonly string[];
  readonly limits: readonly Limit[];
  readonly returning: readonly ReturnStage[];
  readonly away: readonly Away[];
}

function asAthlete(drawn: Drawn): Athlete {
  const written = { kind: 'written', span: HERE } as const;
  const born = drawn.age === undefined ? undefined : day(`${2027 - drawn.age}-06-15`);
  return athlete(drawn.level, drawn.contacts ?? DEFAULT_NOW[drawn.level].contactsASession, {
    lifts: drawn.lifts,
    cleared: new Set(drawn.cleared),
    limits: drawn.limits,
    returning: drawn.returning,
    away: drawn.away,
    ...(drawn.goal === undefined ? {} : { goal: { value: drawn.goal, origin: written } }),
    ...(born === undefined ? {} : { born: { earliest: born, latest: born } }),
    ...(drawn.massKilos === undefined ? {} : { massGrams: drawn.massKilos * 1000 }),
  });
}

/** Any plan of one to three athletes and up to half a year. */
export const randomPlan: fc.Arbitrary<Plan> = fc
  .integer({ min: 1, max: MOST_WEEKS })
  .chain((weeks) =>
    fc.record({
      weeks: fc.constant(weeks),
      sport: fc.constantFrom('general', 'volleyball', 'handball', 'long-jump', 'high-jump'),
      inSeason: fc.option(range(weeks, 70), { nil: undefined, freq: 2 }),
      slots,
      competitions: fc.array(competition(weeks), { maxLength: 4 }),
      closures: fc.array(closure(weeks), { maxLength: 2 }),
      practice: fc.array(practice, { maxLength: 3 }),
      tests: fc.array(testDay(weeks), { maxLength: 2 }),
      pins: fc.array(pin(weeks), { maxLength: 2 }),
      athletes: fc.array(person(weeks), { minLength: 1, maxLength: 3 }),
    }),
  )
  .map(({ weeks, sport, inSeason, athletes, competitions, ...rest }) => {
    const base = plan({ starts: isoDate(MONDAY), ends: isoDate(MONDAY + weeks * 7 - 1) }, rest);
    const firstSlot = rest.slots[0];
    return {
      ...base,
      season: { ...base.season, sport, inSeason: inSeason === undefined ? [] : [{ ...inSeason, span: HERE }] },
      places: new Map(firstSlot === undefined ? [] : [[firstSlot.place.id, firstSlot.place]]),
      competitions: competitions.toSorted((a, b) => a.range.from - b.range.from),
      athletes: athletes.map((one, index) => ({ ...one, id: `athlete-${index + 1}`, name: `Athlete ${index + 1}` })),
    };
  });
