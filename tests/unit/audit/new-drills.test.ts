import { describe, expect, it } from 'vitest';
import { expectFinding, expectSilent, found } from './found.ts';
import { drill } from './make-build.ts';
import type { WeekSpec } from './make-build.ts';

const RULE = 'new-drills';

const week = (...ids: string[]): WeekSpec => ({ sessions: [{ on: 1, lines: ids.map((id) => drill(id, 2, 5)) }] });
const known = ['pogo', 'small-jump', 'half-long-jump'];

describe('new-drills', () => {
  it('brings in two a week', () => {
    expectSilent(RULE, { weeks: [week(...known), week('pogo', 'tuck-jump')] });
    expectSilent(RULE, { weeks: [week(...known), week('tuck-jump', 'skater-step')] });
    expectFinding(RULE, { weeks: [week(...known), week('tuck-jump', 'skater-step', 'line-hop')] }, 2);
  });

  it('leaves the first week with jumps out', () => {
    expectSilent(RULE, { weeks: [{}, week('pogo', 'small-jump', 'tuck-jump', 'line-hop')] });
  });

  it('knows a drill that was done weeks before', () => {
    expectSilent(RULE, { weeks: [week(...known), week('tuck-jump'), week(...known)] });
  });

  it('does not count the warm-up', () => {
    const warm = ['line-hop', 'ankling', 'low-skip'].map((id) => drill(id, 1, 5, { part: 'prepare' }));
    expectSilent(RULE, { weeks: [week(...known), { sessions: [{ on: 1, lines: [...warm, drill('pogo', 2, 5)] }] }] });
  });

  it('names them', () => {
    const said = found(RULE, { weeks: [week('pogo'), week('tuck-jump', 'skater-step', 'line-hop')] })[0];
    expect(said?.params['drills']).toBe('tuck-jump, skater-step, line-hop');
  });
});
