import { describe, expect, it } from 'vitest';
import { expectFinding, expectSilent, found } from './found.ts';
import { drill, place } from './make-build.ts';
import type { Level } from '../../../src/library/types.ts';
import type { Weekday } from '../../../src/util/days.ts';

const RULE = 'drop-count';

describe('drop-count', () => {
  const drops = (on: Weekday, count: number) => ({ on, lines: [drill('drop-jump-20', 1, count)] });
  const season = (level: Level, counts: readonly number[]) => ({
    athlete: { levels: [{ is: level, span: place(0) }] },
    weeks: [{ sessions: counts.map((count, index) => drops((index * 2) as Weekday, count)) }],
  });

  it.each([
    ['beginner', 20],
    ['intermediate', 30],
    ['advanced', 40],
  ] as const)('holds the sessions of %s athletes', (level, most) => {
    expectSilent(RULE, season(level, [most - 1]));
    expectSilent(RULE, season(level, [most]));
    expectFinding(RULE, season(level, [most + 1]), 1);
  });

  it('holds a week to twice that', () => {
    expectSilent(RULE, season('intermediate', [30, 30]));
    expectFinding(RULE, season('intermediate', [30, 30, 1]), 1);
    expect(found(RULE, season('intermediate', [30, 30, 1]))[0]?.params).toMatchObject({ found: 61, most: 60 });
  });

  it('counts a drop on each leg twice, and no other jumps', () => {
    const lines = [drill('single-leg-pogo', 1, 16, { dropCm: 20 }), drill('pogo', 5, 10)];
    expect(found(RULE, { weeks: [{ sessions: [{ on: 1, lines }] }] })[0]?.params['found']).toBe(32);
  });
});
