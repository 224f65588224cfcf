// Trials gathered: what may be worked out together, and times that belong to a jump.

import { describe, expect, it } from 'vitest';
import { groupTrials, withTimes } from '../../../src/record/trials.ts';
import type { Trial } from '../../../src/record/trials.ts';

const drop = (trial: number, change: Partial<Trial> = {}): Trial => ({
  athlete: 'mira',
  day: 20_000,
  test: 'drop-jump',
  trial,
  value: 35,
  unit: 'cm',
  method: 'mat',
  arms: false,
  ...change,
});

const contact = (trial: number, change: Partial<Trial> = {}): Trial =>
  drop(trial, { test: 'contact-time', value: 200, unit: 'ms', ...change });

describe('times on record', () => {
  it('go with the jump of their trial, in seconds', () => {
    const joined = withTimes([drop(1), drop(2), contact(1), contact(2, { value: 0.19, unit: 's' })]);
    expect(joined.map(({ test, contactSeconds }) => [test, contactSeconds])).toEqual([
      ['drop-jump', 0.2],
      ['drop-jump', 0.19],
    ]);
  });

  it('go with a counter-movement jump where they are those to the take-off', () => {
    const jump = drop(1, { test: 'countermovement-jump' });
    expect(withTimes([jump, drop(1, { test: 'take-off-time', value: 0.8, unit: 's' })])).toEqual([
      { ...jump, takeOffSeconds: 0.8 },
    ]);
  });

  it.each([
    ['trial', { trial: 2 }],
    ['day', { day: 20_001 }],
    ['athlete', { athlete: 'oda' }],
    ['method', { method: 'plate' }],
    ['use of the arms', { arms: true }],
    ['unit', { unit: 'cm' }],
  ] as const)('of another %s stay by themselves', (_, change) => {
    const joined = withTimes([drop(1), contact(1, change)]);
    expect(joined).toHaveLength(2);
    expect(joined[0]?.contactSeconds).toBeUndefined();
  });

  it('go with no force, which has no height to divide', () => {
    const force = drop(1, { test: 'countermovement-jump', value: 1800, unit: 'N' });
    expect(withTimes([force, drop(1, { test: 'take-off-time', value: 0.8, unit: 's' })])).toHaveLength(2);
  });

  it('are never a jump', () => {
    expect(groupTrials([contact(1), contact(1, { value: 0.2, unit: 's' })])).toEqual([]);
  });
});

describe('a trial in another unit of its kind', () => {
  const values = (trial: Partial<Trial> & Pick<Trial, 'test'>): readonly (number | undefined)[] =>
    groupTrials([{ value: 1, unit: 'cm', ...trial }]).flatMap(({ values: found }) => found.map((one) => round(one)));
  const round = (value: number): number => Math.round(value * 1000) / 1000;

  it.each([
    ['countermovement-jump', 31, 'cm', 0.31],
    ['countermovement-jump', 0.31, 'm', 0.31],
    ['countermovement-jump', 12, 'in', 0.305],
    ['squat-jump', 500, 'ms', 0.306],
    ['squat-jump', 0.5, 's', 0.306],
    ['isometric-pull', 1500, 'N', 1500],
    ['isometric-pull', 150, 'kg', 1470.998],
    ['isometric-pull', 330, 'lb', 1467.913],
  ])('%s, %d %s', (test, value, unit, found) => {
    expect(values({ test, value, unit })).toEqual([found]);
  });

  it.each([
    ['countermovement-jump', 31, 'm'],
    ['countermovement-jump', 0.31, 'cm'],
    ['countermovement-jump', 31, 'kg'],
    ['squat-jump', 1.2, 's'],
  ])('is left out where nobody jumps so: %s, %d %s', (test, value, unit) => {
    expect(values({ test, value, unit })).toEqual([]);
  });
});
