// What a coach saves, one time after the other: an edit or several of a plan, lines put in above that say nothing, or
// another day to plan on. Called by reuse.test.ts.

import fc from 'fast-check';
import type { Athlete, DoneRow, Limit, Plan, RuleChange, Slot, Waiver, Who } from '../../src/plan/types.ts';
import type { Day, Weekday } from '../../src/util/days.ts';
import { inSport, SPORTS } from './random-plan.ts';
import { ALWAYS, HERE } from '../unit/schedule/make-plan.ts';

export interface Saved {
  readonly plan: Plan;
  /** Lines without meaning above each file. */
  readonly linesAbove: readonly [number, number, number];
  readonly asOf?: Day;
}

/** What an edit takes by chance: which item, and what it is to say. */
interface Drawn {
  readonly at: number;
  readonly other: number;
  readonly value: number;
}

type Edit = (saved: Saved, drawn: Drawn) => Saved;

const WRITTEN = { kind: 'written', span: HERE } as const;
const SQUADS = [undefined, 'blues', 'reds'] as const;
const LEVELS = ['beginner', 'intermediate', 'advanced'] as const;
const CLEARED = ['drops', 'single-leg-high', 'drop-strength', 'loads', 'drop-jump-30'] as const;
const WAIVED = [
  'session-ceiling',
  'slot-minutes',
  'weekly-rise',
  'deload-rhythm',
  'budget',
  'session-spacing',
] as const;

function pick<T>(items: readonly T[], at: number): T {
  const item = items[at % items.length];
  if (item === undefined && items.length === 0) throw new Error('nothing to pick from');
  return item as T;
}

const ofPlan =
  (change: (plan: Plan, drawn: Drawn) => Partial<Plan>): Edit =>
  (saved, drawn) => ({ ...saved, plan: { ...saved.plan, ...change(saved.plan, drawn) } });

/** Without one where there are any, or with one more. */
function toggled<T>(items: readonly T[], { at, value }: Drawn, make: () => T): readonly T[] {
  return items.length > 0 && value % 2 === 0 ? items.toSpliced(at % items.length, 1) : [...items, make()];
}

const ofAthlete = (change: (athlete: Athlete, drawn: Drawn, plan: Plan) => Athlete): Edit =>
  ofPlan((plan, drawn) => {
    const index = drawn.at % plan.athletes.length;
    return { athletes: plan.athletes.with(index, change(pick(plan.athletes, index), drawn, plan)) };
  });

function without<T extends object, K extends keyof T>(value: T, key: K): Omit<T, K> {
  const { [key]: _, ...rest } = value;
  return rest;
}

const weeksIn = ({ season }: Plan): number => Math.floor((season.ends - season.starts + 1) / 7);

function rangeIn(plan: Plan, { other, value }: Drawn): { readonly from: Day; readonly until: Day } {
  const from = plan.season.starts + 7 * (other % weeksIn(plan));
  return { from, until: Math.min(from + (value % 20), plan.season.ends) };
}

const someOf = ({ athletes }: Plan, { other, value }: Drawn): Who =>
  value % 3 === 0
    ? { kind: 'everybody' }
    : value % 3 === 1
      ? { kind: 'some', squads: [other % 2 === 0 ? 'blues' : 'reds'], athletes: [] }
      : { kind: 'some', squads: [], athletes: [pick(athletes, other).id] };

const limitIn = (plan: Plan, drawn: Drawn): Limit => ({
  range: rangeIn(plan, drawn),
  avoid: drawn.value % 2 === 0 ? [] : [{ kind: 'drops' }],
  contactsASession: 20 + (drawn.value % 40),
  because: 'knee',
  span: HERE,
});

const inOrder = (rows: readonly DoneRow[]): Plan['record'] => ({
  done: rows.toSorted((a, b) => a.day - b.day || (a.athlete < b.athlete ? -1 : 1)),
  tests: [],
});

const rowOf = (plan: Plan, { at, other, value }: Drawn): DoneRow => ({
  day: plan.season.starts + (other % 40),
  athlete: pick(plan.athletes, at).id,
  kind: 'session',
  ...(value % 4 !== 0 && { contacts: value % 130 }),
  ...(value % 3 === 0 && { pain: value % 9 }),
  span: HERE,
});

/** By name, so that what was saved can be told. */
const EDITS: Readonly<Record<string, Edit>> = {
  mass: ofAthlete((athlete, { value }) => ({ ...athlete, massGrams: (30 + (value % 100)) * 1000 })),
  'no mass': ofAthlete((athlete) => without(athlete, 'massGrams')),
  level: ofAthlete((athlete, { value }) => ({ ...athlete, levels: [{ is: pick(LEVELS, value), span: HERE }] })),
  name: ofAthlete((athlete, { value }) => ({ ...athlete, name: `Somebody ${String(value)}` })),
  cleared: ofAthlete((athlete, { value }) => ({
    ...athlete,
    cleared: new Set([...athlete.cleared].toSpliced(0, 1).concat(pick(CLEARED, value))),
  })),
  now: ofAthlete((athlete, { value }) => ({
    ...athlete,
    now: { value: { contactsASession: 20 + (value % 90), sessionsAWeek: 2 }, origin: WRITTEN },
  })),
  'now written down as it is': ofAthlete((athlete) => ({ ...athlete, now: { ...athlete.now, origin: WRITTEN } })),
  maximum: ofAthlete((athlete, { value }) => {
    const max = { lift: 'back-squat', grams: (30 + (value % 150)) * 1000, estimated: false, span: HERE };
    return { ...athlete, lifts: new Map([...athlete.lifts, [max.lift, max]]) };
  }),
  limit: ofAthlete((athlete, drawn, plan) => ({
    ...athlete,
    now: { ...athlete.now, origin: WRITTEN },
    limits: athlete.limits.length > 0 ? [] : [limitIn(plan, drawn)],
  })),
  away: ofAthlete((athlete, drawn, plan) => ({
    ...athlete,
    away:
      athlete.away.length > 0
        ? []
        : [{ range: rangeIn(plan, drawn), because: 'away', trained: 'none' as const, span: HERE }],
  })),
  squad: ofAthlete((athlete, { value }) => {
    const squad = pick(SQUADS, value);
    return squad === undefined ? without(athlete, 'squad') : { ...athlete, squad };
  }),
  sport: ofAthlete((athlete, { value }) =>
    value % 4 === 0
      ? without(athlete, 'sport')
      : { ...athlete, sport: { value: pick(SPORTS, value), origin: WRITTEN } },
  ),
  'sport of the season': ofPlan(({ season }, { value }) => ({ season: inSport(season, pick(SPORTS, value)) })),
  'athlete added': ofPlan(({ athletes }, { at }) => {
    const id = `athlete-${String(athletes.length + 1)}-new`;
    return { athletes: [...athletes, { ...pick(athletes, at), id, name: `Newcomer ${id}` }] };
  }),
  'athlete removed': ofPlan(({ athletes, record }, { at }) => {
    if (athletes.length === 1) return {};
    const gone = pick(athletes, at);
    return {
      athletes: athletes.filter((one) => one !== gone),
      record: { ...record, done: record.done.filter(({ athlete }) => athlete !== gone.id) },
    };
  }),
  slot: ofPlan(({ slots }, { at, value }) => ({
    slots: slots.with(at % slots.length, { ...pick(slots, at), minutes: 20 + (value % 100) }),
  })),
  'slot added': ofPlan((plan, drawn) => {
    const { slots } = plan;
    const free = [0, 1, 2, 3, 4, 5, 6].filter((day) => !slots.some((one) => one.day === day));
    if (free.length === 0) return { slots: slots.slice(1) };
    const day = pick(free, drawn.at) as Weekday;
    const first: Slot = { ...pick(slots, 0), id: `slot-${String(day)}`, day, range: ALWAYS, who: someOf(plan, drawn) };
    return { slots: [...slots, first].toSorted((a, b) => a.day - b.day) };
  }),
  kit: ofPlan(({ places, slots }, { value }) => {
    const [id, hall] = pick([...places], 0);
    const counts = new Map([...hall.kit.counts, ['hurdles', 1 + (value % 8)], ['racks', 1 + (value % 2)]] as const);
    const changed = { ...hall, kit: { ...hall.kit, counts } };
    return { places: new Map([[id, changed]]), slots: slots.map((slot) => ({ ...slot, place: changed })) };
  }),
  closure: ofPlan((plan, drawn) => ({
    closures: toggled(plan.closures, drawn, () => ({
      range: rangeIn(plan, drawn),
      because: 'shut',
      trained: 'none' as const,
      who: someOf(plan, drawn),
      span: HERE,
    })),
  })),
  practice: ofPlan((plan, drawn) => ({
    practice: toggled(plan.practice, drawn, () => ({
      day: (drawn.other % 7) as Weekday,
      jumps: drawn.value % 120,
      range: rangeIn(plan, drawn),
      who: someOf(plan, drawn),
      span: HERE,
    })),
  })),
  competition: ofPlan(({ competitions }, { at, value }) =>
    competitions.length === 0
      ? {}
      : {
          competitions: competitions.with(at % competitions.length, {
            ...pick(competitions, at),
            jumps: value % 90,
          }),
        },
  ),
  pin: ofPlan((plan, drawn) => ({
    pins: toggled(plan.pins, drawn, () => ({
      range: rangeIn(plan, drawn),
      who: someOf(plan, drawn),
      effects: [{ kind: 'contacts' as const, contactsAWeek: 5 * (drawn.value % 50) }],
      because: 'camp',
      span: HERE,
    })),
  })),
  waiver: ofPlan((plan, drawn) => ({
    waivers: toggled(plan.waivers, drawn, (): Waiver => ({
      rule: pick(WAIVED, drawn.other),
      range: { from: plan.season.starts, until: plan.season.ends },
      who: someOf(plan, drawn),
      because: 'so',
      decided: 'the coach',
      span: HERE,
    })),
  })),
  rule: ofPlan((plan, drawn) => ({
    ruleChanges: toggled(plan.ruleChanges, drawn, (): RuleChange => ({
      rule: 'session-ceiling',
      parameters: new Map([['beginner', 30 + (drawn.value % 60)]]),
      range: rangeIn(plan, drawn),
      who: someOf(plan, drawn),
      because: 'so',
      span: HERE,
    })),
  })),
  title: ofPlan(({ season }, { value }) => ({ season: { ...season, title: `Season ${String(value)}` } })),
  'row of the record': ofPlan((plan, drawn) => ({
    record: inOrder(toggled(plan.record.done, drawn, () => rowOf(plan, drawn))),
  })),
  'number of the record': ofPlan(({ record }, { at, value }) =>
    record.done.length === 0
      ? {}
      : {
          record: inOrder(
            record.done.with(at % record.done.length, {
              ...pick(record.done, at),
              contacts: value % 130,
              pain: value % 7,
            }),
          ),
        },
  ),
  'lines above': (saved, { at, value }) => ({
    ...saved,
    linesAbove: saved.linesAbove.with(at % 3, value % 4) as [number, number, number],
  }),
  'day planned on': (saved, { value }) => ({ ...saved, asOf: saved.plan.season.starts + (value % 60) }),
};

export interface Save {
  readonly names: readonly string[];
  readonly apply: (saved: Saved) => Saved;
}

const oneEdit = (names: readonly string[]): fc.Arbitrary<Save> =>
  fc
    .record({
      name: fc.constantFrom(...names),
      drawn: fc.record({ at: fc.nat(1000), other: fc.nat(1000), value: fc.nat(1000) }),
    })
    .map(({ name, drawn }) => ({ names: [name], apply: (saved) => EDITS[name]?.(saved, drawn) ?? saved }));

/** Mostly one edit, sometimes several; of any kind, or of those that are named. */
export const randomSave = (names: readonly string[] = Object.keys(EDITS)): fc.Arbitrary<Save> =>
  fc
    .oneof(
      { weight: 3, arbitrary: fc.array(oneEdit(names), { minLength: 1, maxLength: 1 }) },
      { weight: 1, arbitrary: fc.array(oneEdit(names), { minLength: 2, maxLength: 4 }) },
    )
    .map((edits) => ({
      names: edits.flatMap((edit) => edit.names),
      apply: (saved) => edits.reduce((before, { apply }) => apply(before), saved),
    }));
