// Groups keep the order in which things came, whatever their keys are.

import { expect, test } from 'vitest';
import { addTo, grouped, groupsByKey } from '../../../src/util/grouped.ts';

const JUMPS = ['pogo', 'tuck jump', 'bound', 'pogo 2', 'bound 2'];

test('what has one key stands together, where the first of it stood', () => {
  expect(grouped(JUMPS, (name) => name.charAt(0))).toEqual([['pogo', 'pogo 2'], ['tuck jump'], ['bound', 'bound 2']]);
  expect(grouped([], String)).toEqual([]);
});

test('keys are told apart as a map tells them, so that no two of them are taken for one', () => {
  const first = {};
  expect([...groupsByKey([1, '1', 1], (one) => one).entries()]).toEqual([
    [1, [1, 1]],
    ['1', ['1']],
  ]);
  expect(grouped([first, {}, first], (one) => one)).toEqual([[first, first], [{}]]);
  expect(groupsByKey(['a', 'b'], () => undefined).get(undefined)).toEqual(['a', 'b']);
});

test('an item is added behind those that are there', () => {
  const groups = new Map([['low', [5]]]);
  addTo(groups, 'low', 10);
  addTo(groups, 'high', 40);
  expect([...groups]).toEqual([
    ['low', [5, 10]],
    ['high', [40]],
  ]);
});
