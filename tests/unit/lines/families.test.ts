// The families that phases are usually built of are families of the library; and how a set of them is chosen.

import { expect, test } from 'vitest';
import { usualFamilies } from '../../../src/library/families.ts';
import { BUILT_IN } from '../../../src/library/index.ts';
import { PHASES } from '../../../src/library/phases.ts';
import { chooseFamilies } from '../../../src/schedule/lines/family-choice.ts';
import type { FamilyOption } from '../../../src/schedule/lines/family-choice.ts';

test.each(PHASES.filter((row) => row.directions !== undefined))('$id names families that there are', ({ id }) => {
  expect(usualFamilies(id).length).toBeGreaterThanOrEqual(4);
  for (const family of usualFamilies(id)) expect(BUILT_IN.families.has(family)).toBe(true);
});

const UP = { vertical: 100, horizontal: 0, lateral: 0 };
const FORWARD = { vertical: 0, horizontal: 100, lateral: 0 };
const option = (family: string, change: Partial<FamilyOption> = {}): FamilyOption => ({
  family,
  direction: UP,
  fast: false,
  drop: false,
  high: false,
  onlyHigh: false,
  cost: 0,
  ...change,
});

const SLOW = [option('jump'), option('box'), option('leap', { direction: FORWARD })];
const DROP = option('drop', { fast: true, drop: true, high: true });
const AIM = {
  directions: { vertical: 60, horizontal: 40, lateral: 0 },
  fast: { from: 25, to: 50 },
  highMost: 30,
} as const;

test('drops alone are no fast work for a block: a few of them stand on some of its days', () => {
  const quick = option('quick', { fast: true, cost: 15 });
  expect(chooseFamilies([...SLOW, DROP, quick], AIM)).toEqual(expect.arrayContaining(['drop', 'quick']));
  expect(chooseFamilies([...SLOW, DROP, quick], { ...AIM, fast: { from: 10, to: 50 } })).not.toContain('quick');
});

test('what others of the squad do beside it is taken where it serves as well', () => {
  const options = [...SLOW, option('hop'), option('bound', { direction: FORWARD })];
  const aim = { ...AIM, fast: { from: 0, to: 50 }, highMost: 0 };
  const sets = [
    ['jump', 'box', 'leap', 'bound'],
    ['jump', 'box', 'hop', 'bound'],
    ['box', 'leap', 'hop', 'bound'],
  ];
  for (const set of sets) expect(chooseFamilies(options, { ...aim, beside: new Set(set) })).toEqual(set);
});
