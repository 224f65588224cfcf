import { describe, expect, it } from 'vitest';
import { expectFinding, expectSilent, found } from './found.ts';
import { competition, day, EVERYBODY, loading, place } from './make-build.ts';
import type { WeekSpec } from './make-build.ts';
import type { PhaseId } from '../../../src/library/types.ts';

const RULE = 'jumps-alone';

const weeks = (phase: PhaseId, count: number): WeekSpec[] =>
  Array.from({ length: count }, () => loading(100, { phase }));
const empty: WeekSpec = { kind: 'empty', phase: 'closed' };

describe('jumps-alone', () => {
  it('keeps a power block to five weeks', () => {
    expectSilent(RULE, { weeks: [...weeks('strength', 3), ...weeks('power', 5)] });
    expectFinding(RULE, { weeks: [...weeks('strength', 3), ...weeks('power', 6)] }, 9);
    expect(found(RULE, { weeks: [...weeks('strength', 3), ...weeks('power', 9)] })).toHaveLength(1);
  });

  it('wants strength before it where there are five weeks', () => {
    expectSilent(RULE, { weeks: weeks('power', 4) });
    expectFinding(RULE, { weeks: weeks('power', 5) }, 1);
    expectFinding(RULE, { weeks: [...weeks('hypertrophy', 3), ...weeks('power', 2)] }, 4);
    expectSilent(RULE, { weeks: [...weeks('strength-power', 3), ...weeks('power', 2)] });
  });

  it('begins anew behind a peak', () => {
    const plan = { competitions: [competition(day(5, 5), 'peak')] };
    const first = [...weeks('strength', 3), ...weeks('power', 2)];
    expectSilent(RULE, { plan, weeks: [...first, ...weeks('power', 4)] });
    expectFinding(RULE, { plan, weeks: [...first, ...weeks('power', 5)] }, 6);
  });

  it('counts weeks with training, and is not interrupted by an empty one', () => {
    expectSilent(RULE, { weeks: [...weeks('strength', 3), ...weeks('power', 3), empty, ...weeks('power', 2)] });
    expectFinding(RULE, { weeks: [...weeks('strength', 3), ...weeks('power', 3), empty, ...weeks('power', 3)] }, 10);
  });

  it('points at a pinned phase', () => {
    const range = { from: day(1, 0), until: day(5, 6) };
    const effects = [{ kind: 'phase', phase: 'power' }] as const;
    const pins = [{ range, who: EVERYBODY, effects, because: 'x', span: place(21) }];
    expect(found(RULE, { plan: { pins }, weeks: weeks('power', 5) })[0]?.span).toEqual(place(21));
  });

  it('counts no week of another phase into the block', () => {
    expectSilent(RULE, { weeks: [...weeks('strength', 3), ...weeks('power', 5), ...weeks('strength', 1)] });
  });
});
