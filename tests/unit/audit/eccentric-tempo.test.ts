import { describe, expect, it } from 'vitest';
import { expectFinding, expectSilent } from './found.ts';
import { lift } from './make-build.ts';
import { BUILT_IN } from '../../../src/library/index.ts';

const RULE = 'eccentric-tempo';

describe('eccentric-tempo', () => {
  const season = (id: string, tempo?: string) => {
    const line = lift(id, 3, 5, tempo === undefined ? {} : { tempo });
    return { weeks: [{ sessions: [{ on: 1, lines: [line] } as const] }] };
  };

  it('lowers no leg lift for more than five seconds', () => {
    expectSilent(RULE, season('back-squat', '4-0-1'));
    expectSilent(RULE, season('back-squat', '5-0-1'));
    expectFinding(RULE, season('back-squat', '5.5-0-1'), 1);
    expectFinding(RULE, season('back-squat', '6'), 1);
  });

  it('leaves the upper body alone, and a tempo without a number', () => {
    expectSilent(RULE, season('bench-press', '8-0-1'));
    expectSilent(RULE, season('back-squat', 'fast up'));
  });

  it('is kept by every lift of the library', () => {
    for (const [id, row] of BUILT_IN.lifts) {
      expect(row.eccentricSeconds).toBeLessThanOrEqual(5);
      expectSilent(RULE, season(id));
    }
  });
});
