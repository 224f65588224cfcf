import { describe, it } from 'vitest';
import { expectFinding, expectSilent } from './found.ts';
import { day, heavy, jumps, testOn } from './make-build.ts';
import type { Weekday } from '../../../src/util/days.ts';

const RULE = 'test-fresh';

describe('test-fresh', () => {
  const season = (on: Weekday) => ({
    weeks: [{ sessions: [heavy(on)] }],
    days: [{ day: day(1, 3), test: testOn(day(1, 3), ['countermovement-jump']) }],
  });

  it('keeps heavy leg work two days from a test', () => {
    expectSilent(RULE, season(0));
    expectSilent(RULE, season(1));
    expectFinding(RULE, season(2), 1);
    expectFinding(RULE, season(3), 1);
    expectSilent(RULE, season(4));
  });

  it('lets light sessions stand', () => {
    expectSilent(RULE, { ...season(2), weeks: [{ sessions: [jumps(2, 40)] }] });
  });
});
