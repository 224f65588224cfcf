import { describe, it } from 'vitest';
import { expectFinding, expectSilent } from './found.ts';
import { changed, jumps, place } from './make-build.ts';
import type { WeekSpec } from './make-build.ts';
import type { Level } from '../../../src/library/types.ts';

const RULE = 'session-frequency';

function season(count: number, level: Level, change: Partial<WeekSpec> = {}) {
  const sessions = ([0, 2, 4, 5, 6] as const).slice(0, count).map((on) => jumps(on, 20));
  return { athlete: { levels: [{ is: level, span: place(0) }] }, weeks: [{ sessions, ...change }] };
}

describe('session-frequency', () => {
  it.each([
    ['beginner', 3],
    ['intermediate', 3],
    ['advanced', 4],
  ] as const)('holds %s athletes', (level, most) => {
    expectSilent(RULE, season(1, level));
    expectSilent(RULE, season(most, level));
    expectFinding(RULE, season(most + 1, level), 1);
  });

  it('wants as many as the plan asks for, but none in season', () => {
    const plan = changed(RULE, { 'intermediate-least': 2 });
    expectSilent(RULE, { plan, ...season(2, 'intermediate') });
    expectFinding(RULE, { plan, ...season(1, 'intermediate') }, 1);
    expectSilent(RULE, { plan, ...season(1, 'intermediate', { phase: 'maintenance' }) });
  });

  it('has nothing to say of weeks with nothing to plan', () => {
    const plan = changed(RULE, { 'intermediate-least': 2 });
    expectSilent(RULE, { plan, ...season(0, 'intermediate') });
    expectSilent(RULE, { plan, ...season(1, 'intermediate', { kind: 'empty', phase: 'closed' }) });
    expectSilent(RULE, { plan, ...season(1, 'intermediate', { kind: 'transition', phase: 'transition' }) });
  });
});
