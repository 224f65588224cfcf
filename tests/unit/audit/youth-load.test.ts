import { describe, it } from 'vitest';
import { expectFinding, expectSilent } from './found.ts';
import { aged, lift, squatMax } from './make-build.ts';
import type { SeasonSpec } from './make-build.ts';
import type { BuiltLine } from '../../../src/build/types.ts';

const RULE = 'youth-load';

describe('youth-load', () => {
  const season = (age: number, line: BuiltLine, cleared: readonly string[] = []): SeasonSpec => ({
    athlete: { ...aged(age), ...squatMax(100_000), cleared: new Set(cleared) },
    weeks: [{ sessions: [{ on: 1, lines: [line] }] }],
  });
  const squat = (percent: number, reps = 3): BuiltLine => lift('back-squat', 3, reps, { percent });

  // Common practice, no source.
  it('keeps lifters under sixteen to eighty per cent', () => {
    expectSilent(RULE, season(15, squat(79)));
    expectSilent(RULE, season(15, squat(80)));
    expectFinding(RULE, season(15, squat(80.5)), 1);
    expectSilent(RULE, season(16, squat(95)));
  });

  it('lets them go to eighty-five once cleared', () => {
    expectSilent(RULE, season(15, squat(85), ['loads']));
    expectFinding(RULE, season(15, squat(85.5), ['loads']), 1);
  });

  it('works the share out from the kilos', () => {
    expectFinding(RULE, season(15, lift('back-squat', 3, 3, { loadGrams: 81_000 })), 1);
  });

  it('lets nobody young lift kilos that are written without a maximum', () => {
    const bare = (age: number, line: BuiltLine): SeasonSpec => ({
      athlete: aged(age),
      weeks: [{ sessions: [{ on: 1, lines: [line] }] }],
    });
    expectFinding(RULE, bare(15, lift('back-squat', 2, 10, { loadGrams: 20_000 })), 1);
    expectSilent(RULE, bare(16, lift('back-squat', 2, 10, { loadGrams: 20_000 })));
    expectSilent(RULE, bare(15, lift('back-squat', 2, 10, { reserve: 4 })));
    expectSilent(RULE, bare(15, lift('goblet-squat', 2, 10, { loadGrams: 8000 })));
  });

  // The chart has 8 reps at 80 % and 7 at 83 %: NSCA (S).
  it('reads reps in reserve as the share of the load chart', () => {
    const bare = (line: BuiltLine): SeasonSpec => ({
      athlete: aged(13),
      weeks: [{ sessions: [{ on: 1, lines: [line] }] }],
    });
    expectSilent(RULE, bare(lift('back-squat', 3, 5, { reserve: 3 })));
    expectFinding(RULE, bare(lift('back-squat', 3, 5, { reserve: 2 })), 1);
    expectFinding(RULE, bare(lift('goblet-squat', 3, 2, { reserve: 0 })), 1);
    expectSilent(RULE, bare(lift('back-squat', 3, 12, { reserve: 3 })));
    expectSilent(RULE, bare(lift('push-up', 3, 5, { reserve: 0 })));
    // A single is one whatever is said of its weight.
    expectFinding(RULE, bare(lift('back-squat', 3, 1)), 1);
    expectFinding(RULE, bare(lift('back-squat', 3, 1, { reserve: 9 })), 1);
  });

  it('has no single reps under a load', () => {
    expectSilent(RULE, season(15, squat(70, 2)));
    expectFinding(RULE, season(15, squat(70, 1)), 1);
    expectSilent(RULE, season(15, lift('nordic-hamstring', 3, 1)));
  });
});
