import { describe, it } from 'vitest';
import { expectFinding, expectSilent } from './found.ts';
import { aged, competition, day, heavy, jumps, testOn } from './make-build.ts';
import type { SeasonSpec } from './make-build.ts';

const RULE = 'rest-day';

/** Six days with something on them; sunday is free. */
const busy: SeasonSpec = {
  athlete: aged(15),
  weeks: [{ sessions: [jumps(1, 20), heavy(2)] }],
  plan: { competitions: [competition(day(1, 5), 'through')] },
  days: [
    { day: day(1, 0), practiceJumps: 10 },
    { day: day(1, 3), practiceJumps: 10 },
    { day: day(1, 4), test: testOn(day(1, 4), ['back-squat']) },
  ],
};
const full = (change: Partial<SeasonSpec> = {}): SeasonSpec => ({
  ...busy,
  days: [...(busy.days ?? []), { day: day(1, 6), practiceJumps: 1 }],
  ...change,
});

describe('rest-day', () => {
  it('wants one free day a week under sixteen', () => {
    expectSilent(RULE, busy);
    expectFinding(RULE, full(), 1);
  });

  it('leaves older athletes alone, and those whose birth is not written', () => {
    expectSilent(RULE, full({ athlete: aged(16) }));
    expectSilent(RULE, full({ athlete: {} }));
  });
});
