import { describe, expect, it } from 'vitest';
import { CHART_ROWS } from '../../published/library/load-chart-rows.ts';
import { expectFinding, expectSilent, found } from './found.ts';
import { lift, squatMax } from './make-build.ts';
import type { SeasonSpec } from './make-build.ts';

const RULE = 'load-reps';

describe('load-reps', () => {
  const season = (reps: number, percent: number) => ({
    weeks: [{ sessions: [{ on: 1, lines: [lift('back-squat', 3, reps, { percent })] } as const] }],
  });

  it.each(CHART_ROWS)('allows %i reps at %i per cent', (reps, percent) => {
    expectSilent(RULE, season(reps, percent));
    expectFinding(RULE, season(reps + 1, percent), 1);
    expectFinding(RULE, season(reps, percent + 0.5), 1);
  });

  it('says nothing under the lightest row of the chart', () => {
    expectSilent(RULE, season(20, 69));
  });

  it('takes the kilos where they are more than what is written', () => {
    const lines = [lift('back-squat', 3, 5, { percent: 80, loadGrams: 88_000 })];
    const spec = { athlete: squatMax(100_000), weeks: [{ sessions: [{ on: 1, lines } as const] }] };
    expect(found(RULE, spec)[0]?.params).toMatchObject({ percent: 88, found: 5, most: 4 });
  });

  it('works the share out from the lift’s own maximum before that of the lift which serves for it', () => {
    // A box squat goes by 85 % of the back squat where its own maximum isn't known.
    const lines = [lift('box-squat', 3, 5, { loadGrams: 100_000 })];
    const by = (lifts: NonNullable<SeasonSpec['athlete']>['lifts']): SeasonSpec => ({
      ...(lifts !== undefined && { athlete: { lifts } }),
      weeks: [{ sessions: [{ on: 1, lines }] }],
    });
    const own = squatMax(120_000, { lift: 'box-squat' }).lifts;
    expectFinding(RULE, by(squatMax(100_000).lifts), 1);
    expectSilent(RULE, by(new Map([...squatMax(100_000).lifts, ...own])));
    expectFinding(RULE, by(squatMax(110_000, { lift: 'box-squat' }).lifts), 1);
  });

  it('finds nothing in programmes that were carried out', () => {
    // J Sports Sci Med 2018;17:348, Table 1: squat 3x8x80, 4x5x85, 5x3x90, 3x2x95.
    const pairs = [
      [8, 80],
      [5, 85],
      [3, 90],
      [2, 95],
    ] as const;
    // Sports Med Open 2023, 9, s40798-023-00651-y, Table 4, the heaviest day of each week.
    const undulating = [
      [6, 70],
      [6, 75],
      [6, 77.5],
      [5, 80],
      [5, 82.5],
      [4, 85],
      [4, 87.5],
      [4, 85],
    ] as const;
    for (const [reps, percent] of [...pairs, ...undulating]) expectSilent(RULE, season(reps, percent));
  });
});
