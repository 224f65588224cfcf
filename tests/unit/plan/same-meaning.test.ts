// Two parts of plans that say the same, and two that don't: places never count, where a value comes from does.

import { describe, expect, test } from 'vitest';
import { fileSystem } from '../../../src/host/files.ts';
import { readDocuments } from '../../../src/language/read-documents.ts';
import { loadPlan } from '../../../src/plan/load-plan.ts';
import { athleteLikeness, eachPlace, likenessOf } from '../../../src/plan/same-meaning.ts';
import type { Athlete } from '../../../src/plan/types.ts';
import type { Span } from '../../../src/source/types.ts';

const at = (start: number, file = 'season.yaml'): Span => ({ file, start, end: start + 1 });

describe('likenessOf', () => {
  test.each([
    { name: 'numbers', before: 5, after: 5 },
    { name: 'nothing', before: undefined, after: undefined },
    { name: 'keys in another order', before: { a: 1, b: [2] }, after: { b: [2], a: 1 } },
    { name: 'maps and sets', before: new Map([['a', new Set([1, 2])]]), after: new Map([['a', new Set([1, 2])]]) },
    { name: 'places', before: { span: at(3), days: [at(4)] }, after: { span: at(3), days: [at(4)] } },
  ])('$name are the same', ({ before, after }) => {
    expect(likenessOf(before, after)).toBe('same');
  });

  test.each([
    { before: at(3), after: at(4) },
    { before: at(3), after: at(3, 'more.yaml') },
    { before: { a: 1, spans: new Map([['a', [at(1)]]]) }, after: { a: 1, spans: new Map([['a', [at(9)]]]) } },
  ])('what stands elsewhere has moved', ({ before, after }) => {
    expect(likenessOf(before, after)).toBe('moved');
  });

  test.each([
    { name: 'a number', before: { a: 1 }, after: { a: 2 } },
    { name: 'a key more', before: { a: 1 }, after: { a: 1, b: 2 } },
    { name: 'a key less', before: { a: 1, b: 2 }, after: { a: 1 } },
    { name: 'another key', before: { a: 1 }, after: { b: 1 } },
    { name: 'a key that is there with nothing', before: { a: undefined }, after: { b: undefined } },
    { name: 'an item more', before: [1], after: [1, 2] },
    { name: 'another order', before: [1, 2], after: [2, 1] },
    { name: 'a list for a group', before: [], after: {} },
    { name: 'a group for a list', before: {}, after: [] },
    { name: 'a set for a list', before: [1], after: new Set([1]) },
    { name: 'a map for a group', before: {}, after: new Map() },
    { name: 'a member of a set', before: new Set([1]), after: new Set([2]) },
    { name: 'a value of a map', before: new Map([['a', 1]]), after: new Map([['a', 2]]) },
    { name: 'a key of a map', before: new Map([['a', 1]]), after: new Map([['b', 1]]) },
    { name: 'no place', before: { span: at(1) }, after: { span: 5 } },
    {
      name: 'a default for what was written',
      before: { value: 1, origin: { kind: 'written', span: at(1) } },
      after: { value: 1, origin: { kind: 'default', basis: 'C' } },
    },
  ])('$name differs', ({ before, after }) => {
    expect(likenessOf(before, after)).toBe('differs');
  });
});

test('eachPlace gives every place beside the other, those in shared objects too', () => {
  const shared = { span: at(7) };
  const pairs: (readonly [number, number])[] = [];
  eachPlace([shared, { span: at(1) }], [shared, { span: at(2) }], (was, is) => {
    pairs.push([was.start, is.start]);
  });
  expect(pairs).toEqual([
    [7, 7],
    [1, 2],
  ]);
});

test('an athlete is told from each of two others, whoever was asked about before', () => {
  const [before] = athletes();
  const [same] = athletes();
  if (before === undefined || same === undefined) throw new Error('nobody is in the plan');
  const heavier = { ...before, massGrams: 90_000 };
  expect(athleteLikeness(before, same)).toBe('same');
  expect(athleteLikeness(heavier, same)).toBe('differs');
  expect(athleteLikeness(before, same)).toBe('same');
});

function athletes(): readonly Athlete[] {
  const { value } = readDocuments('examples/four-weeks', fileSystem);
  return loadPlan(value).value?.athletes ?? [];
}
