import { describe, expect, it } from 'vitest';
import { expectFinding, expectSilent, found } from './found.ts';
import { changed, drill, jumps } from './make-build.ts';
import type { PhaseId } from '../../../src/library/types.ts';

const RULE = 'high-tier-share';

/** A week of a hundred contacts, so many of them of the high tier. */
function week(high: number, phase: PhaseId) {
  const hard = high === 0 ? [] : [drill('high-hurdle-hop', 1, high)];
  return { weeks: [{ phase, sessions: [{ on: 1, lines: [drill('small-jump', 1, 100 - high), ...hard] } as const] }] };
}

describe('high-tier-share', () => {
  it.each([
    ['foundation', 0],
    ['hypertrophy', 0],
    ['strength', 10],
    ['strength-power', 25],
    ['power', 35],
    ['sharpening', 35],
    ['maintenance', 20],
    ['hold', 20],
  ] as const)('holds a week of %s', (phase, most) => {
    expectSilent(RULE, week(Math.max(0, most - 1), phase));
    expectSilent(RULE, week(most, phase));
    expectFinding(RULE, week(most + 1, phase), 1);
  });

  it('takes the share of the plan in place of the phase', () => {
    expectFinding(RULE, { plan: changed(RULE, { most: 5 }), ...week(6, 'power') }, 1);
  });

  it('leaves primers out', () => {
    const primer = { on: 4, kind: 'primer', lines: [drill('high-hurdle-hop', 4, 5)] } as const;
    expectSilent(RULE, { weeks: [{ phase: 'power', sessions: [jumps(1, 40), primer] }] });
  });

  it('says how many of how many', () => {
    expect(found(RULE, week(11, 'strength'))[0]?.params).toMatchObject({
      high: 11,
      contacts: 100,
      found: 11,
      most: 10,
    });
  });
});
