import { describe, expect, it } from 'vitest';
import { expectFinding, expectSilent, found } from './found.ts';
import { drill } from './make-build.ts';
import { BUILT_IN } from '../../../src/library/index.ts';

const RULE = 'drop-clearance';

describe('drop-clearance', () => {
  const season = (id: string, cleared: readonly string[] = []) => ({
    athlete: { cleared: new Set(cleared) },
    weeks: [{ sessions: [{ on: 1, lines: [drill(id, 2, 5)] } as const] }],
  });

  it('wants drops cleared', () => {
    expectFinding(RULE, season('drop-jump-20'), 1);
    expectFinding(RULE, season('depth-landing-20', ['single-leg-high']), 1);
    expectSilent(RULE, season('drop-jump-20', ['drops']));
    expectSilent(RULE, season('drop-jump-20', ['drop-jump-20']));
  });

  it('wants single-leg drills of the high tier cleared', () => {
    const hard = [...BUILT_IN.drills.values()].filter((one) => one.tier === 'high' && one.legs !== 'both');
    expect(hard.length).toBeGreaterThan(0);
    for (const { id } of hard) {
      expectFinding(RULE, season(id), 1);
      expectSilent(RULE, season(id, ['single-leg-high', 'drops']));
      expect(found(RULE, season(id, ['drops']))[0]?.params['wanted']).toBe('single-leg-high');
    }
  });

  it('asks nothing of easier drills, nor of hard ones on both legs', () => {
    expectSilent(RULE, season('single-leg-pogo'));
    expectSilent(RULE, season('high-hurdle-hop'));
  });
});
