import { describe, it } from 'vitest';
import { expectFinding, expectSilent } from './found.ts';
import { competition, day, heavy, lift } from './make-build.ts';
import type { Competition } from '../../../src/plan/types.ts';
import type { Weekday } from '../../../src/util/days.ts';

const RULE = 'lift-event-gap';

describe('lift-event-gap', () => {
  const season = (on: Weekday, prepare: Competition['prepare']) => ({
    plan: { competitions: [competition(day(1, 6), prepare)] },
    weeks: [{ sessions: [heavy(on)] }],
  });

  it('keeps four days free of heavy leg work before a peak', () => {
    expectSilent(RULE, season(0, 'peak'));
    expectSilent(RULE, season(1, 'peak'));
    expectFinding(RULE, season(2, 'peak'), 1);
  });

  it.each(['freshen', 'through'] as const)('keeps two days free of it before a match to %s', (prepare) => {
    expectSilent(RULE, season(2, prepare));
    expectSilent(RULE, season(3, prepare));
    expectFinding(RULE, season(4, prepare), 1);
  });

  it('keeps the day itself free of it', () => {
    expectFinding(RULE, season(6, 'through'), 1);
  });

  it('lets light lifting stand', () => {
    const light = { on: 5, lines: [lift('back-squat', 2, 5, { percent: 60 })] } as const;
    expectSilent(RULE, { ...season(5, 'peak'), weeks: [{ sessions: [light] }] });
  });
});
