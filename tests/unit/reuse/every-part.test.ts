// Nothing of a plan may be edited without whoever's season hangs on it being compiled anew: one number of each part that all
// share, and each field of an athlete. A part that is new has to be named here.

import { expect, test } from 'vitest';
import { compilePlan } from '../../../src/compile.ts';
import type { Athlete, Plan, Programme, WrittenLine } from '../../../src/plan/types.ts';
import { createSeasonMemory } from '../../../src/reuse/season-memory.ts';
import { day } from '../../unit/date.ts';
import { athlete, EVERYBODY, HALL, HERE, peak, plan, slot } from '../schedule/make-plan.ts';

const person = (id: string, change: Partial<Athlete> = {}): Athlete =>
  athlete('intermediate', 70, { id, name: id.toUpperCase(), massGrams: 70_000, squad: id, ...change });

const PLAN = plan(
  { starts: '2027-01-04', ends: '2027-02-28' },
  { competitions: [peak('2027-02-27')], athletes: [person('a'), person('b')] },
);

/** Ids of those whose season is compiled behind a save. */
function compiledAnew(before: Plan, after: Plan): readonly string[] {
  const memory = createSeasonMemory<unknown>();
  const ids: string[] = [];
  for (const one of [before, after]) {
    ids.length = 0;
    const round = memory.open(compilePlan(one), ({ athlete: { id } }) => ids.push(id));
    for (const each of one.athletes) round.season(each);
  }
  return ids;
}

const week = (from: string) => ({ from: day(from), until: day(from) + 6 });
const item = { range: week('2027-01-18'), who: EVERYBODY, because: 'so', span: HERE } as const;
const line = (sets: number): WrittenLine => ({
  exercise: { kind: 'drill', id: 'pogo' },
  sets,
  reps: 5,
  span: HERE,
});
const programme = (sets: number): Programme => ({
  id: 'camp',
  weeks: [{ week: 1, days: [{ day: 1, lines: [line(sets)], span: HERE }] }],
  span: HERE,
});

/** A part as it is and with one number edited. */
type Parts = { readonly [Part in keyof Plan]: readonly [Plan[Part], Plan[Part]] };

const PARTS: Omit<Parts, 'athletes' | 'record' | 'files'> = {
  season: [PLAN.season, { ...PLAN.season, ends: PLAN.season.ends - 1 }],
  library: [
    PLAN.library,
    {
      ...PLAN.library,
      drills: new Map([...PLAN.library.drills].map(([id, one]) => [id, { ...one, restSeconds: one.restSeconds + 1 }])),
    },
  ],
  places: [
    PLAN.places,
    new Map([['hall', { ...HALL, kit: { ...HALL.kit, smallestPlateGrams: HALL.kit.smallestPlateGrams + 1 } }]]),
  ],
  slots: [PLAN.slots, [slot(1, { minutes: 41 }), ...PLAN.slots.slice(1)]],
  competitions: [[peak('2027-02-27')], [peak('2027-02-27', { jumps: 10 })]],
  closures: [[{ ...item, trained: 'none' }], [{ ...item, trained: 'some' }]],
  practice: [[{ ...item, day: 2, jumps: 40 }], [{ ...item, day: 2, jumps: 50 }]],
  tests: [
    [{ day: day('2027-01-19'), what: ['countermovement-jump'], contacts: 5, who: EVERYBODY, span: HERE }],
    [{ day: day('2027-01-19'), what: ['countermovement-jump'], contacts: 6, who: EVERYBODY, span: HERE }],
  ],
  squads: [new Map(), new Map([['a', { id: 'a', span: HERE }]])],
  ruleChanges: [
    [{ ...item, rule: 'session-ceiling', parameters: new Map([['intermediate', 60]]) }],
    [{ ...item, rule: 'session-ceiling', parameters: new Map([['intermediate', 61]]) }],
  ],
  pins: [
    [{ ...item, effects: [{ kind: 'contacts', contactsAWeek: 50 }] }],
    [{ ...item, effects: [{ kind: 'contacts', contactsAWeek: 55 }] }],
  ],
  always: [[{ ...item, part: 'jumps', lines: [line(2)] }], [{ ...item, part: 'jumps', lines: [line(3)] }]],
  waivers: [[{ ...item, rule: 'budget' }], [{ ...item, rule: 'budget', range: week('2027-01-25') }]],
  programmes: [new Map([['camp', programme(2)]]), new Map([['camp', programme(3)]])],
  uses: [
    [{ programme: programme(2), from: day('2027-01-18'), who: EVERYBODY, span: HERE }],
    [{ programme: programme(2), from: day('2027-01-25'), who: EVERYBODY, span: HERE }],
  ],
};

test.each(Object.entries(PARTS))('one number of %s compiles everybody', (part, [before, after]) => {
  const plans = [before, after].map((value): Plan => ({ ...PLAN, [part]: value }));
  const [one = PLAN, other = PLAN] = plans;
  expect(compiledAnew(one, { ...one })).toEqual([]);
  expect(compiledAnew(one, other)).toEqual(['a', 'b']);
});

const WRITTEN = { kind: 'written', span: HERE } as const;
const DEFAULT = { kind: 'default', basis: 'usual' } as const;
const stage = { stage: 1, of: 3, since: day('2027-01-04'), signed: 'physio', span: HERE };

type Fields = { readonly [Field in keyof Required<Athlete>]: Athlete[Field] };

const FIELDS: Omit<Fields, 'id' | 'span'> = {
  name: 'Somebody',
  squad: 'z',
  group: 'blue',
  sport: { value: 'high-jump', origin: WRITTEN },
  born: { earliest: day('2010-06-01'), latest: day('2010-06-01') },
  sex: 'female',
  massGrams: 71_000,
  levels: [{ is: 'beginner', span: HERE }],
  levelOrigin: DEFAULT,
  now: { value: { contactsASession: 71, sessionsAWeek: 2 }, origin: WRITTEN },
  goal: { value: 75, origin: WRITTEN },
  lifts: new Map([['back-squat', { lift: 'back-squat', grams: 100_000, estimated: false, span: HERE }]]),
  cleared: new Set(['drops']),
  limits: [{ range: week('2027-01-18'), avoid: [], contactsASession: 40, because: 'knee', span: HERE }],
  returning: [stage],
  away: [{ range: week('2027-01-18'), because: 'flu', trained: 'none', span: HERE }],
};

test.each(Object.entries(FIELDS))('%s of an athlete compiles that athlete alone', (field, value) => {
  const [first = person('a'), ...others] = PLAN.athletes;
  const after = { ...PLAN, athletes: [{ ...first, [field]: value }, ...others] };
  expect(compiledAnew(PLAN, after)).toEqual(['a']);
});

test('how a value came to be is part of it', () => {
  const [first = person('a'), ...others] = PLAN.athletes;
  const after = { ...PLAN, athletes: [{ ...first, now: { ...first.now, origin: DEFAULT } }, ...others] };
  expect(compiledAnew(PLAN, after)).toEqual(['a']);
});

const RESULT = {
  day: day('2027-01-05'),
  athlete: 'a',
  test: 'countermovement-jump',
  trial: 1,
  value: 30,
  unit: 'cm',
  method: 'mat',
  span: HERE,
} as const;

test('one number of a test on record compiles its athlete', () => {
  const recorded = (value: number): Plan => ({ ...PLAN, record: { done: [], tests: [{ ...RESULT, value }] } });
  expect(compiledAnew(recorded(30), { ...recorded(30) })).toEqual([]);
  expect(compiledAnew(recorded(30), recorded(31))).toEqual(['a']);
});

/** Whoever is away shares no station: what the others take from them is what the squad does side by side. */
const away: Pick<Athlete, 'away'> = {
  away: [{ range: week('2027-01-04'), because: 'flu', trained: 'none', span: HERE }],
};
const squad = (...others: readonly Partial<Athlete>[]): Plan => ({
  ...PLAN,
  athletes: [
    person('a', { squad: 'x' }),
    ...others.map((change, at) => person(`b${String(at)}`, { squad: 'x', ...away, ...change })),
  ],
});

test('one more in a squad compiles the others, though they share no station', () => {
  expect(compiledAnew(squad({}), squad({}, {}))).toContain('a');
});

test('a member who may do less compiles the others, though they share no station and are as many as before', () => {
  const less = { levels: [{ is: 'beginner', span: HERE }] } as const;
  expect(compiledAnew(squad({}), squad(less))).toContain('a');
});
