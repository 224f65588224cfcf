// Random plans, as plain as a season can be and as odd: one squad or two, few slots or many, long closures, children,
// limits, returns, levels that go up, pins, waivers, changed rules. Everything drawn is a plan a coach could write
// without an error in it. What is written by hand and what is recorded is laid on by withProgramme and withRecord.

import fc from 'fast-check';
import type {
  Athlete,
  Away,
  Closure,
  Competition,
  DoneRow,
  Kit,
  LevelStep,
  Limit,
  LiftMax,
  Pin,
  PinEffect,
  Plan,
  Practice,
  ProgrammeUse,
  ReturnStage,
  RuleChange,
  Slot,
  TestDay,
  TrainingPlace,
  Waiver,
  Who,
} from '../../src/plan/types.ts';
import { getRule, RULE_IDS } from '../../src/library/rules.ts';
import type { RuleId } from '../../src/library/rules.ts';
import { BUILT_IN } from '../../src/library/index.ts';
import type { KitId, Level } from '../../src/library/types.ts';
import { findSport } from '../../src/library/sports.ts';
import { DEFAULT_NOW } from '../../src/library/levels.ts';
import { isoDate } from '../../src/util/days.ts';
import type { Day, Weekday } from '../../src/util/days.ts';
import { day } from '../unit/date.ts';
import { ALWAYS, athlete, EVERYBODY, HERE, plan } from '../unit/schedule/make-plan.ts';

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

export const SPORTS = ['general', 'volleyball', 'handball', 'long-jump', 'high-jump'] as const;

/** A season of that sport. */
export function inSport(season: Plan['season'], sport: string): Plan['season'] {
  const { directions: _, ...rest } = season;
  const directions = findSport(sport)?.directions;
  return { ...rest, sport, ...(directions !== undefined && { directions }) };
}

const SQUADS = ['blues', 'reds'] as const;

/** Whom an item is for: mostly everybody. */
const who: fc.Arbitrary<Who> = fc.oneof(
  { weight: 4, arbitrary: fc.constant<Who>(EVERYBODY) },
  {
    weight: 1,
    arbitrary: fc.record({
      kind: fc.constant('some' as const),
      squads: fc.subarray<string>([...SQUADS], { minLength: 1 }),
      athletes: fc.constant([]),
    }),
  },
  {
    weight: 1,
    arbitrary: fc.record({
      kind: fc.constant('some' as const),
      squads: fc.constant([]),
      athletes: fc.subarray(['athlete-1', 'athlete-2', 'athlete-3'], { minLength: 1 }),
    }),
  },
);

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
  fc
    .record({
      name: fc.constant('Event'),
      range: range(weeks, 2),
      prepare: fc.constantFrom('peak', 'freshen', 'through'),
      jumps: fc.option(fc.integer({ min: 0, max: 90 }), { nil: undefined }),
      who,
      span: fc.constant(HERE),
    })
    .map(({ jumps, ...rest }) => ({ ...rest, ...(jumps !== undefined && { jumps }) }));

const absence = (weeks: number): fc.Arbitrary<Away> =>
  fc.record({
    range: range(weeks, 40),
    because: fc.constant('away'),
    trained: fc.constantFrom('none', 'some', 'full'),
    span: fc.constant(HERE),
  });

const closure = (weeks: number): fc.Arbitrary<Closure> =>
  fc
    .tuple(absence(weeks), who, fc.boolean())
    .map(([one, whose, everywhere]) => ({ ...one, who: whose, ...(everywhere ? {} : { places: ['hall'] }) }));

const practice: fc.Arbitrary<Practice> = fc.record({
  day: fc.constantFrom(0, 1, 2, 3, 4, 5, 6),
  jumps: fc.integer({ min: 0, max: 120 }),
  range: range(MOST_WEEKS, 180),
  who,
  span: fc.constant(HERE),
});

const testDay = (weeks: number): fc.Arbitrary<TestDay> =>
  fc.record({
    day: within(weeks),
    what: fc.constant(['countermovement-jump']),
    contacts: fc.integer({ min: 0, max: 20 }),
    who,
    span: fc.constant(HERE),
  });

const effect: fc.Arbitrary<PinEffect> = fc.oneof(
  fc.integer({ min: 0, max: 60 }).map((steps): PinEffect => ({ kind: 'contacts', contactsAWeek: steps * 5 })),
  fc
    .uniqueArray(fc.constantFrom<Weekday>(0, 1, 2, 3, 4, 5, 6), { minLength: 1, maxLength: 3 })
    .map((days): PinEffect => ({ kind: 'on', days: days.toSorted((a, b) => a - b) })),
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
  fc.tuple(range(weeks, 14), effect, who).map(([when, one, whose]) => ({
    range: one.kind === 'rest' ? { from: when.from, until: when.from } : when,
    who: whose,
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
      week: fc.option(fc.integer({ min: 0, max: 200 }), { nil: undefined, freq: 2 }),
    })
    .map(({ contacts, week, ...rest }) => ({
      ...rest,
      because: 'knee',
      span: HERE,
      ...(contacts === undefined ? {} : { contactsASession: contacts }),
      ...(week === undefined ? {} : { contactsAWeek: week }),
    }));

/** Changes a coach makes: numbers that loosen a rule that may be waived, and numbers that tighten any. */
const CHANGES: readonly (readonly [rule: RuleId, parameter: string, least: number, most: number])[] = [
  ['weekly-rise', 'most', 0, 25],
  ['weekly-rise', 'contacts', 0, 20],
  ['session-rise', 'most', 0, 40],
  ['session-rise', 'contacts', 0, 25],
  ['session-ceiling', 'beginner', 30, 120],
  ['session-ceiling', 'in-season-intermediate', 30, 100],
  ['budget', 'jumps-a-week', 50, 400],
  ['deload-depth', 'most', 30, 80],
  ['deload-rhythm', 'loading-weeks', 2, 5],
  ['deload-rhythm', 'between', 1, 3],
  ['taper-cut', 'first', 30, 70],
  ['taper-cut', 'last', 30, 60],
  ['return-ramp', 'first', 20, 50],
  ['return-ramp', 'second', 50, 70],
  ['session-spacing', 'apart', 1, 4],
  ['event-gap', 'match', 0, 3],
  ['after-event', 'free-days', 0, 2],
  ['lift-spacing', 'apart', 1, 3],
  ['session-frequency', 'advanced-most', 1, 4],
  ['youth-ceiling', 'most', 60, 100],
];

const ruleChange: fc.Arbitrary<RuleChange> = fc
  .tuple(fc.constantFrom(...CHANGES), range(MOST_WEEKS, 120), who)
  .chain(([[rule, parameter, least, most], when, whose]) =>
    fc.integer({ min: least, max: most }).map((value) => ({
      rule,
      parameters: new Map([[parameter, value]]),
      range: when,
      who: whose,
      because: 'so',
      span: HERE,
    })),
  );

const WAIVABLE = RULE_IDS.filter((rule) => getRule(rule).waivable);

const waiver: fc.Arbitrary<Waiver> = fc
  .record({ rule: fc.constantFrom(...WAIVABLE), range: range(MOST_WEEKS, 40), who })
  .map((one) => ({ ...one, because: 'so', decided: 'the coach', span: HERE }));

/** Stages as they were signed; there may be setbacks. */
const returning = (weeks: number): fc.Arbitrary<readonly ReturnStage[]> =>
  fc
    .uniqueArray(fc.tuple(fc.integer({ min: 1, max: 4 }), within(weeks)), {
      minLength: 1,
      maxLength: 3,
      selector: ([, since]) => since,
    })
    .map((stages) =>
      stages
        .toSorted(([, a], [, b]) => a - b)
        .map(([stage, since]) => ({ stage, of: 4, since, signed: 'physio', span: HERE })),
    );

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
      squad: fc.constantFrom(undefined, ...SQUADS),
      sport: fc.option(fc.constantFrom(...SPORTS), { nil: undefined, freq: 2 }),
      next: fc.option(within(weeks), { nil: undefined, freq: 2 }),
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
  readonly squad: string | undefined;
  readonly sport: string | undefined;
  /** First day at the next level. */
  readonly next: Day | undefined;
}

const LEVELS: readonly Level[] = ['beginner', 'intermediate', 'advanced'];

function levelsOf({ level, next }: Drawn): readonly LevelStep[] {
  const higher = LEVELS[LEVELS.indexOf(level) + 1];
  const first = { is: level, span: HERE };
  return higher === undefined || next === undefined ? [first] : [first, { is: higher, from: next, span: HERE }];
}

function asAthlete(drawn: Drawn): Athlete {
  const written = { kind: 'written', span: HERE } as const;
  const born = drawn.age === undefined ? undefined : day(`${2027 - drawn.age}-06-15`);
  return athlete(drawn.level, drawn.contacts ?? DEFAULT_NOW[drawn.level].contactsASession, {
    lifts: drawn.lifts,
    cleared: new Set(drawn.cleared),
    limits: drawn.limits,
    ...(drawn.contacts === undefined
      ? { now: { value: DEFAULT_NOW[drawn.level], origin: { kind: 'default', basis: 'C' } } }
      : {}),
    returning: drawn.returning,
    away: drawn.away,
    levels: levelsOf(drawn),
    ...(drawn.squad === undefined ? {} : { squad: drawn.squad }),
    ...(drawn.sport === undefined ? {} : { sport: { value: drawn.sport, origin: written } }),
    ...(drawn.goal === undefined ? {} : { goal: { value: drawn.goal, origin: written } }),
    ...(born === undefined ? {} : { born: { earliest: born, latest: born } }),
    ...(drawn.massKilos === undefined ? {} : { massGrams: drawn.massKilos * 1000 }),
  });
}

/** What is built in takes pages where a failing plan is shown. */
export const LIBRARY = { ...BUILT_IN, [fc.toStringMethod]: () => 'BUILT_IN' };

/** Any plan of one to three athletes and up to half a year. */
export const randomPlan: fc.Arbitrary<Plan> = fc
  .integer({ min: 1, max: MOST_WEEKS })
  .chain((weeks) =>
    fc.record({
      weeks: fc.constant(weeks),
      sport: fc.constantFrom(...SPORTS),
      inSeason: fc.option(range(weeks, 70), { nil: undefined, freq: 2 }),
      slots,
      competitions: fc.array(competition(weeks), { maxLength: 4 }),
      closures: fc.array(closure(weeks), { maxLength: 2 }),
      practice: fc.array(practice, { maxLength: 3 }),
      tests: fc.array(testDay(weeks), { maxLength: 2 }),
      pins: fc.array(pin(weeks), { maxLength: 2 }),
      ruleChanges: fc.oneof(
        { weight: 2, arbitrary: fc.constant([]) },
        { weight: 1, arbitrary: fc.array(ruleChange, { maxLength: 2 }) },
      ),
      waivers: fc.oneof(
        { weight: 2, arbitrary: fc.constant([]) },
        { weight: 1, arbitrary: fc.array(waiver, { maxLength: 2 }) },
      ),
      athletes: fc.array(person(weeks), { minLength: 1, maxLength: 3 }),
    }),
  )
  .map(({ weeks, sport, inSeason, athletes, competitions, ...rest }) => {
    const base = plan({ starts: isoDate(MONDAY), ends: isoDate(MONDAY + weeks * 7 - 1) }, rest);
    const firstSlot = rest.slots[0];
    return {
      ...base,
      library: LIBRARY,
      season: inSport({ ...base.season, inSeason: inSeason === undefined ? [] : [{ ...inSeason, span: HERE }] }, sport),
      squads: new Map(SQUADS.map((id) => [id, { id, span: HERE }])),
      places: new Map(firstSlot === undefined ? [] : [[firstSlot.place.id, firstSlot.place]]),
      competitions: competitions.toSorted((a, b) => a.range.from - b.range.from),
      athletes: athletes.map((one, index) => ({ ...one, id: `athlete-${index + 1}`, name: `Athlete ${index + 1}` })),
    };
  });

/** A few weeks of drills and lifts written by hand: nobody says that they keep any rule. */
const use: fc.Arbitrary<ProgrammeUse> = fc
  .record({
    from: within(MOST_WEEKS),
    weeks: fc.integer({ min: 1, max: 3 }),
    days: fc.uniqueArray(fc.constantFrom<Weekday>(0, 1, 2, 3, 4, 5, 6), { minLength: 1, maxLength: 3 }),
    sets: fc.integer({ min: 1, max: 6 }),
    drill: fc.constantFrom('countermovement-jump', 'tuck-jump', 'line-hop'),
    lifts: fc.boolean(),
    who,
  })
  .map(({ from, weeks, days, sets, drill, lifts: lifting, who: whose }) => {
    const jumps = { exercise: { kind: 'drill' as const, id: drill }, sets, reps: 5, span: HERE };
    const squat = { exercise: { kind: 'lift' as const, id: 'back-squat' }, sets: 3, reps: 5, percent: 70, span: HERE };
    const lines = lifting ? [jumps, squat] : [jumps];
    const numbers = Array.from({ length: weeks }, (_, index) => index + 1);
    const programme = {
      id: 'by-hand',
      weeks: numbers.map((week) => ({
        week,
        days: days.toSorted((a, b) => a - b).map((one) => ({ day: one, lines, span: HERE })),
      })),
      span: HERE,
    };
    return { programme, from, who: whose, span: HERE };
  });

/** A plan some weeks of which are written by hand. */
export const withProgramme = (plans: fc.Arbitrary<Plan>): fc.Arbitrary<Plan> =>
  fc
    .tuple(plans, use)
    .map(([drawn, one]) => ({ ...drawn, programmes: new Map([[one.programme.id, one.programme]]), uses: [one] }));

const recordRows = fc.array(
  fc.record({
    day: fc.integer({ min: 0, max: 90 }),
    who: fc.nat(3),
    contacts: fc.option(fc.constantFrom(0, 0, 40, 65, 80, 120, 200), { nil: undefined }),
    pain: fc.option(fc.constantFrom(0, 2, 4, 5, 6, 9), { nil: undefined, freq: 2 }),
  }),
  { minLength: 1, maxLength: 30 },
);

/** A plan of whose first weeks it is known what was done, and what hurt the morning after. */
export const withRecord = (plans: fc.Arbitrary<Plan>): fc.Arbitrary<Plan> =>
  fc.tuple(plans, recordRows).map(([drawn, rows]) => {
    const done = rows.map(({ day: at, who: whose, contacts, pain }): DoneRow => {
      const athlete = drawn.athletes[whose % drawn.athletes.length];
      if (athlete === undefined) throw new Error('a plan without athletes');
      return {
        day: drawn.season.starts + at,
        athlete: athlete.id,
        kind: 'session',
        ...(contacts !== undefined && { contacts }),
        ...(pain !== undefined && { pain }),
        span: athlete.span,
      };
    });
    return { ...drawn, record: { done: done.toSorted((a, b) => a.day - b.day), tests: [] } };
  });
