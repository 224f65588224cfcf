// Days that can't be held as pinned: the lines that stand against one are a smallest set, taking out each of them helps,
// and what is said to work does.

import { describe, expect, it } from 'vitest';
import type { Pin, Plan, ProgrammeDay } from '../../../src/plan/types.ts';
import { dayConflict } from '../../../src/schedule/conflicts/day-conflict.ts';
import { without } from '../../../src/schedule/conflicts/facts.ts';
import type { Season } from '../../../src/schedule/conflicts/facts.ts';
import { chooseContacts } from '../../../src/schedule/contacts.ts';
import { scheduleDays } from '../../../src/schedule/days.ts';
import { seasonTerms } from '../../../src/schedule/season-terms.ts';
import type { Span } from '../../../src/source/types.ts';
import { weekdayOf } from '../../../src/util/days.ts';
import type { Weekday } from '../../../src/util/days.ts';
import { day } from '../date.ts';
import { athlete, EVERYBODY, peak, plan, slot } from './make-plan.ts';

const at = (start: number): Span => ({ file: 'season.yaml', start, end: start + 1 });

const [TUESDAY, WEDNESDAY, THURSDAY, SATURDAY] = [1, 2, 3, 5] as const;
const WEEK = '2027-01-18';
const THE_THURSDAY = day('2027-01-21');

const onDays = (days: readonly Weekday[], week = WEEK): Pin => ({
  range: { from: day(week), until: day(week) + 6 },
  who: EVERYBODY,
  effects: [{ kind: 'on', days }],
  because: 'late shift',
  span: at(900),
});

const thursday = { from: THE_THURSDAY, until: THE_THURSDAY };

const rest: Pin = { range: thursday, who: EVERYBODY, effects: [{ kind: 'rest' }], because: 'travel', span: at(100) };

function season(pin: Pin, change: Partial<Plan> = {}, who: Parameters<typeof athlete>[2] = {}): Season {
  const pins = [...(change.pins ?? []), pin];
  const of = plan({ starts: '2027-01-04', ends: '2027-03-28' }, { competitions: [], ...change, pins });
  return { plan: of, athlete: athlete('intermediate', 80, who), asOf: undefined };
}

function codes({ plan: of, athlete: who }: Season): readonly string[] {
  const terms = seasonTerms(of, who, undefined);
  const { grid, phases, kinds } = terms;
  const contacts = chooseContacts(of, terms, undefined);
  return scheduleDays(of, { grid, phases, kinds: kinds.value, contacts }).diagnostics.map(({ code }) => code);
}

const written = (weekday: Weekday): ProgrammeDay => ({
  day: weekday,
  lines: [{ exercise: { kind: 'drill', id: 'pogo' }, sets: 5, reps: 10, span: at(200) }],
  span: at(200),
});

const programme = (...weekdays: readonly Weekday[]): Plan['uses'][number] => ({
  programme: { id: 'camp', weeks: [{ week: 1, days: weekdays.map(written) }], span: at(201) },
  from: day(WEEK),
  who: EVERYBODY,
  span: at(110),
});

const pinThursday = onDays([THURSDAY]);

const cases: readonly (readonly [name: string, season: Season, against: readonly number[]])[] = [
  ['a rest', season(pinThursday, { pins: [rest] }), [100]],
  [
    'a closure',
    season(pinThursday, {
      closures: [{ range: thursday, because: 'ice', trained: 'none', who: EVERYBODY, span: at(120) }],
    }),
    [120],
  ],
  [
    'an absence',
    season(pinThursday, {}, { away: [{ range: thursday, because: 'exams', trained: 'none', span: at(130) }] }),
    [130],
  ],
  [
    'a test',
    season(pinThursday, {
      tests: [{ day: THE_THURSDAY, what: ['countermovement-jump'], contacts: 10, who: EVERYBODY, span: at(140) }],
    }),
    [140],
  ],
  [
    'a match the day before',
    season(pinThursday, { competitions: [peak('2027-01-20', { prepare: 'through', span: at(150) })] }),
    [150],
  ],
  ['a programme', season(pinThursday, { uses: [programme(TUESDAY)] }), [110]],
];

describe('a pinned day that a line stands against', () => {
  it.each(cases)('%s', (_, one, against) => {
    expect(codes(one)).toHaveLength(1);
    const { facts } = dayConflict(one, pinThursday, THE_THURSDAY);
    expect(facts.map(({ span }) => span.start)).toEqual(against);
  });

  it.each(cases)('is held without any one of: %s', (_, one) => {
    const { facts, eachIsEnough } = dayConflict(one, pinThursday, THE_THURSDAY);
    expect(eachIsEnough).toBe(true);
    for (const { item } of facts) expect(codes(without(one, new Set([item])))).toEqual([]);
  });

  it.each(cases)('can be exchanged for the days that are said: %s', (_, one) => {
    const { instead } = dayConflict(one, pinThursday, THE_THURSDAY);
    for (const other of instead) {
      const moved = onDays([weekdayOf(other)]);
      const pins = one.plan.pins.map((pin) => (pin === pinThursday ? moved : pin));
      expect(codes({ ...one, plan: { ...one.plan, pins } })).toEqual([]);
    }
  });

  it('is held with the waiver that is said', () => {
    const [, one] = cases[4] ?? [];
    if (one === undefined) throw new Error('no such case');
    const { waivers } = dayConflict(one, pinThursday, THE_THURSDAY);
    expect(waivers).toEqual(['after-event']);
    const range = { from: day(WEEK), until: day(WEEK) + 6 };
    const waiver = { rule: 'after-event', range, who: EVERYBODY, because: 'camp', span: at(1) } as const;
    expect(codes({ ...one, plan: { ...one.plan, waivers: [waiver] } })).toEqual([]);
  });
});

describe('days that no line of the plan opens', () => {
  it('have nothing against them, and others to name', () => {
    const pin = onDays([WEDNESDAY]);
    const { facts, instead } = dayConflict(season(pin), pin, day('2027-01-20'));
    expect(facts).toEqual([]);
    expect(instead.map(weekdayOf)).toEqual([TUESDAY, THURSDAY, SATURDAY]);
  });
});

describe('two days of one pin that are too close', () => {
  const slots = [slot(TUESDAY), slot(WEDNESDAY), slot(SATURDAY)];
  const pin = onDays([TUESDAY, WEDNESDAY]);
  const one = season(pin, { slots });

  it('stand against each other', () => {
    expect(codes(one)).toEqual(['schedule/pinned-day-not-held']);
    const unmet = day('2027-01-20');
    const { facts, instead, waivers } = dayConflict(one, pin, unmet);
    expect(facts.map(({ span }) => span.start)).toEqual([900]);
    expect(facts.map(({ item }) => (item as Pin).effects)).toEqual([[{ kind: 'on', days: [TUESDAY] }]]);
    expect(instead.map(weekdayOf)).toEqual([SATURDAY]);
    expect(waivers).toEqual(['session-spacing']);
  });

  it('can be held apart, alone, or with the waiver', () => {
    const withPin = (days: readonly Weekday[]): Season => season(onDays(days), { slots });
    expect(codes(withPin([TUESDAY, SATURDAY]))).toEqual([]);
    expect(codes(withPin([WEDNESDAY]))).toEqual([]);
    const range = { from: day(WEEK), until: day(WEEK) + 6 };
    const waiver = { rule: 'session-spacing', range, who: EVERYBODY, because: 'camp', span: at(1) } as const;
    expect(codes({ ...one, plan: { ...one.plan, waivers: [waiver] } })).toEqual([]);
  });
});
