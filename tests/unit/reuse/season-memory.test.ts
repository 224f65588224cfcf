// Whose season is compiled again with a save, and how many are kept. That a kept season is the one a build from scratch
// gives is asked in tests/property/reuse.test.ts.

import { describe, expect, test } from 'vitest';
import { compilePlan } from '../../../src/compile.ts';
import { problem } from '../../../src/diagnostics/problem.ts';
import type { Diagnostic } from '../../../src/diagnostics/types.ts';
import type { Athlete, Plan } from '../../../src/plan/types.ts';
import { createSeasonMemory } from '../../../src/reuse/season-memory.ts';
import type { SeasonMemory } from '../../../src/reuse/season-memory.ts';
import type { Span } from '../../../src/source/types.ts';
import { day } from '../../unit/date.ts';
import { athlete, HERE, peak, plan } from '../schedule/make-plan.ts';

const person = (id: string, change: Partial<Athlete> = {}): Athlete =>
  athlete('intermediate', 70, { id, name: id.toUpperCase(), massGrams: 70_000, ...change });

const squad = (...athletes: readonly Athlete[]): Plan =>
  plan({ starts: '2027-01-04', ends: '2027-02-28' }, { competitions: [peak('2027-02-27')], athletes });

/** Ids of whom a round compiles. */
function compiledBy(memory: SeasonMemory<unknown>, one: Plan, hangsOn?: unknown): readonly string[] {
  const ids: string[] = [];
  const round = memory.open(
    compilePlan(one),
    (built) => {
      ids.push(built.athlete.id);
    },
    hangsOn,
  );
  for (const each of one.athletes) expect(round.season(each).athlete).toBe(each);
  return ids;
}

const START = squad(person('a', { squad: 'x' }), person('b', { squad: 'x' }), person('c', { squad: 'y' }));
const edited = (id: string, change: Partial<Athlete>): Plan => ({
  ...START,
  athletes: START.athletes.map((one) => (one.id === id ? { ...one, ...change } : one)),
});
const AWAY = {
  range: { from: day('2027-01-11'), until: day('2027-01-17') },
  because: 'flu',
  trained: 'none',
  span: HERE,
} as const;
const ROW = { day: day('2027-01-05'), athlete: 'b', kind: 'session', contacts: 50, span: HERE } as const;

describe('a save', () => {
  const season = { ...START.season, title: 'Another' };
  test.each<{ name: string; after: Plan; compiles: readonly string[] }>([
    { name: 'that says the same', after: { ...START }, compiles: [] },
    { name: 'that moves every line', after: edited('a', { span: { ...HERE, start: 9, end: 10 } }), compiles: [] },
    {
      name: 'of one mass, which changes no choice of the squad',
      after: edited('a', { massGrams: 71_000 }),
      compiles: ['a'],
    },
    { name: 'of an absence, which frees a station', after: edited('a', { away: [AWAY] }), compiles: ['a', 'b'] },
    {
      name: 'of a clearance, which parts two that were alike',
      after: edited('a', { cleared: new Set(['drops']) }),
      compiles: ['a', 'b'],
    },
    { name: 'of a squad', after: edited('c', { squad: 'x' }), compiles: ['a', 'b', 'c'] },
    { name: 'of somebody who goes', after: { ...START, athletes: START.athletes.slice(1) }, compiles: ['b'] },
    { name: 'of what all share', after: { ...START, season }, compiles: ['a', 'b', 'c'] },
    {
      name: 'of the record, which moves the day that is planned on',
      after: { ...START, record: { done: [ROW], tests: [] } },
      compiles: ['a', 'b', 'c'],
    },
  ])('$name compiles $compiles', ({ after, compiles }) => {
    const memory = createSeasonMemory<unknown>();
    expect(compiledBy(memory, START)).toEqual(['a', 'b', 'c']);
    expect(compiledBy(memory, after)).toEqual(compiles);
    expect(compiledBy(memory, after)).toEqual([]);
  });

  test('of a row of the record compiles its athlete where the day stays', () => {
    const later = { ...ROW, day: day('2027-01-07'), athlete: 'c' };
    const before = { ...START, record: { done: [ROW, later], tests: [] } };
    const after = { ...START, record: { done: [{ ...ROW, contacts: 60 }, later], tests: [] } };
    const memory = createSeasonMemory<unknown>();
    compiledBy(memory, before);
    expect(compiledBy(memory, after)).toEqual(['b']);
  });

  test('with another selection compiles everybody', () => {
    const memory = createSeasonMemory<unknown>();
    compiledBy(memory, START, { from: 1 });
    expect(compiledBy(memory, START, { from: 2 })).toEqual(['a', 'b', 'c']);
  });

  test('behind one that took somebody away finds the others', () => {
    const memory = createSeasonMemory<unknown>();
    compiledBy(memory, START);
    compiledBy(memory, { ...START, athletes: START.athletes.slice(0, 2) });
    expect(compiledBy(memory, START)).toEqual(['c']);
  });
});

test.each([
  { room: 3, keepsEverybody: true },
  { room: 2, keepsEverybody: false },
])('that some of three athletes are left out is known where there is room for $room', ({ room, keepsEverybody }) => {
  const round = createSeasonMemory<unknown>(room).open(compilePlan(START), () => undefined);
  expect(round.keepsEverybody).toBe(keepsEverybody);
});

test('no more are kept than may be; the others are compiled each time', () => {
  const memory = createSeasonMemory<unknown>(2);
  expect(compiledBy(memory, START)).toEqual(['a', 'b', 'c']);
  expect(compiledBy(memory, START)).toEqual(['c']);
  expect(compiledBy(memory, START)).toEqual(['c']);
});

describe('what was found', () => {
  const own = { ...HERE, start: 5, end: 6 };
  const elsewhere = { ...HERE, start: 900, end: 901 };
  const before = edited('a', { span: own });

  /** The first athlete's findings after a save, where one finding points to a place before it. */
  function findingsAfter(place: Span, after: Plan): readonly Diagnostic[] {
    const memory = createSeasonMemory<unknown>();
    const build = compilePlan(before);
    const [first] = build.athletes;
    if (first === undefined) throw new Error('nobody');
    memory.open(build, () => {}).keep({ ...first, diagnostics: [problem('schedule/pin-idle', { span: place })] });
    const [athlete] = after.athletes;
    if (athlete === undefined) throw new Error('nobody');
    return memory.open(compilePlan(after), () => {}).season(athlete).diagnostics;
  }

  test('goes with the athlete where only the athlete has moved', () => {
    const after = edited('a', { span: { ...own, start: 50, end: 51 } });
    expect(findingsAfter(own, after).map(({ span }) => span?.start)).toEqual([50]);
  });

  test('goes with the rest of the plan where only that has moved', () => {
    const slots = before.slots.map((one) => ({ ...one, span: { ...HERE, start: 70, end: 71 } }));
    const at = { ...HERE, file: 'slots.yaml' };
    const placed = { ...before, slots: before.slots.map((one) => ({ ...one, span: at })) };
    const memory = createSeasonMemory<unknown>();
    const build = compilePlan(placed);
    const [first] = build.athletes;
    if (first === undefined) throw new Error('nobody');
    memory.open(build, () => {}).keep({ ...first, diagnostics: [problem('schedule/pin-idle', { span: at })] });
    const round = memory.open(compilePlan({ ...placed, slots }), () => {});
    expect(round.season(first.athlete).diagnostics.map(({ span }) => span?.start)).toEqual([70]);
  });

  test('of a place that is no part of what the season hangs on is not kept', () => {
    expect(findingsAfter(own, before)).toHaveLength(1);
    expect(findingsAfter(elsewhere, before)).toEqual([]);
  });
});
