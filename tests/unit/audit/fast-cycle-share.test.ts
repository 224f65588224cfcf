import { describe, it } from 'vitest';
import { expectFinding, expectSilent } from './found.ts';
import { ALWAYS, changed, drill, place } from './make-build.ts';
import type { WeekSpec } from './make-build.ts';
import type { PhaseId } from '../../../src/library/types.ts';

const RULE = 'fast-cycle-share';

/** A week of a hundred contacts, so many of them fast. */
function week(fast: number, phase: PhaseId): WeekSpec {
  const lines = [drill('small-jump', 1, 100 - fast), ...(fast === 0 ? [] : [drill('pogo', 1, fast)])];
  return { phase, sessions: [{ on: 1, lines }] };
}

describe('fast-cycle-share', () => {
  it.each([
    ['foundation', 0, 20],
    ['hypertrophy', 0, 20],
    ['strength', 10, 30],
    ['strength-power', 25, 50],
    ['power', 35, 60],
    ['sharpening', 35, 60],
    ['maintenance', 30, 60],
    ['hold', 30, 60],
  ] as const)('keeps a week of %s within its band', (phase, least, most) => {
    expectSilent(RULE, { weeks: [week(least, phase)] });
    expectSilent(RULE, { weeks: [week(most, phase)] });
    expectFinding(RULE, { weeks: [week(most + 1, phase)] }, 1);
    if (least > 0) expectFinding(RULE, { weeks: [week(least - 1, phase)] }, 1);
  });

  it("asks for no least share in a novice's first four weeks", () => {
    const origin = { kind: 'default', basis: 'level' } as const;
    const athlete = { now: { value: { contactsASession: 40, sessionsAWeek: 2 }, origin } };
    const weeks = [1, 2, 3, 4].map(() => week(0, 'strength'));
    expectSilent(RULE, { athlete, weeks });
    expectFinding(RULE, { athlete, weeks: [...weeks, week(0, 'strength')] }, 5);
    expectFinding(RULE, { athlete, weeks: [week(31, 'strength')] }, 1);
    const beginner = { levels: [{ is: 'beginner' as const, span: place(0) }] };
    expectSilent(RULE, { athlete: beginner, now: [29, 2], weeks });
    expectFinding(RULE, { athlete: beginner, now: [30, 2], weeks }, 1);
  });

  it('asks for none of somebody who is held back', () => {
    const limits = [{ range: ALWAYS, avoid: [{ kind: 'cycle', id: 'fast' } as const], because: 'x', span: place(0) }];
    expectSilent(RULE, { athlete: { limits }, weeks: [week(0, 'strength')] });
    expectFinding(RULE, { athlete: { limits }, weeks: [week(31, 'strength')] }, 1);
  });

  it('takes the band of the plan', () => {
    expectFinding(RULE, { plan: changed(RULE, { most: 15 }), weeks: [week(16, 'strength')] }, 1);
    expectSilent(RULE, { plan: changed(RULE, { least: 0 }), weeks: [week(5, 'strength')] });
  });

  it('asks for no least where the plan has a most that is under it', () => {
    const plan = changed(RULE, { most: 20 });
    expectSilent(RULE, { plan, weeks: [week(20, 'power')] });
    expectSilent(RULE, { plan, weeks: [week(17, 'power')] });
    expectFinding(RULE, { plan, weeks: [week(21, 'power')] }, 1);
    expectFinding(RULE, { plan: changed(RULE, { most: 35 }), weeks: [week(34, 'power')] }, 1);
  });
});
