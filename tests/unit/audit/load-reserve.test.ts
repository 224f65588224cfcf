import { describe, it } from 'vitest';
import { expectFinding, expectSilent } from './found.ts';
import { changed, lift } from './make-build.ts';

const RULE = 'load-reserve';

describe('load-reserve', () => {
  const season = (reps: number, percent: number) => ({
    weeks: [{ sessions: [{ on: 1, lines: [lift('back-squat', 3, reps, { percent })] } as const] }],
  });

  it('leaves one rep on the chart', () => {
    expectSilent(RULE, season(6, 80));
    expectSilent(RULE, season(7, 80));
    expectFinding(RULE, season(8, 80), 1);
  });

  it('leaves sets over the chart to the rule on reps', () => {
    expectSilent(RULE, season(9, 80));
  });

  it('takes a larger reserve from the plan', () => {
    expectFinding(RULE, { plan: changed(RULE, { least: 2 }), ...season(7, 80) }, 1);
  });
});
