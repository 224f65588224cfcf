import { describe, it } from 'vitest';
import { expectFinding, expectSilent } from './found.ts';
import { drill, squatMax } from './make-build.ts';
import type { Athlete } from '../../../src/plan/types.ts';

const RULE = 'drop-strength';

describe('drop-strength', () => {
  const season = (dropCm: number, athlete: Partial<Athlete>) => ({
    athlete,
    weeks: [{ sessions: [{ on: 1, lines: [drill('drop-jump-45', 2, 5, { dropCm })] } as const] }],
  });
  const strong = (kilos: number) => ({ massGrams: 70_000, ...squatMax(kilos * 1000) });

  it('asks for 1.2 times body mass over thirty centimetres', () => {
    expectSilent(RULE, season(30, {}));
    expectSilent(RULE, season(31, strong(84)));
    expectFinding(RULE, season(31, strong(83.9)), 1, 'warning');
    expectFinding(RULE, season(45, strong(83.9)), 1, 'warning');
  });

  it('asks for 1.5 times body mass over forty-five', () => {
    expectSilent(RULE, season(46, strong(105)));
    expectFinding(RULE, season(46, strong(104.9)), 1, 'error');
  });

  it('takes what is not written for not shown', () => {
    expectFinding(RULE, season(40, { massGrams: 70_000 }), 1);
    expectFinding(RULE, season(40, squatMax(200_000)), 1);
  });

  it('takes a full squat, and no half squat', () => {
    expectSilent(RULE, season(40, { massGrams: 70_000, ...squatMax(90_000, { lift: 'front-squat' }) }));
    expectFinding(RULE, season(40, { massGrams: 70_000, ...squatMax(150_000, { lift: 'half-squat' }) }), 1);
  });

  it('takes a clearance that says an equal was shown', () => {
    expectSilent(RULE, season(60, { cleared: new Set(['drop-strength']) }));
  });
});
