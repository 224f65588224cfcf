import { describe, expect, it } from 'vitest';
import { expectFinding, expectSilent, found } from './found.ts';
import { day, lift, squatMax, testOn } from './make-build.ts';
import type { SeasonSpec, WeekSpec } from './make-build.ts';

const RULE = 'test-stale';

const squats: WeekSpec = {
  sessions: [{ on: 1, lines: [lift('back-squat', 3, 5, { percent: 75, loadGrams: 75_000 })] }],
};
const empty: WeekSpec = { kind: 'empty', phase: 'closed' };

describe('test-stale', () => {
  const season = (on: number | undefined, weeks: readonly WeekSpec[] = [squats]): SeasonSpec => ({
    athlete: squatMax(100_000, on === undefined ? {} : { on }),
    weeks,
  });

  it('lets a maximum be under twelve weeks old', () => {
    expectSilent(RULE, season(day(1, 1) - 83));
    expectFinding(RULE, season(day(1, 1) - 84), 1);
  });

  it('wants a date', () => {
    expectFinding(RULE, season(undefined), 1);
  });

  it('says it once for a lift', () => {
    expect(found(RULE, season(day(1, 1) - 84, [squats, squats, squats]))).toHaveLength(1);
  });

  it('is renewed by a test in the plan', () => {
    const days = [{ day: day(1, 3), test: testOn(day(1, 3), ['back-squat']) }];
    expectSilent(RULE, { ...season(day(1, 1) - 83, [squats, squats]), days });
  });

  it('has nothing to say of lifts without a maximum', () => {
    expectSilent(RULE, {
      athlete: squatMax(100_000),
      weeks: [{ sessions: [{ on: 1, lines: [lift('back-squat', 3, 5)] }] }],
    });
  });

  it('counts nine tenths of a maximum after three weeks away', () => {
    const at = (kilos: number): WeekSpec => ({
      sessions: [{ on: 1, lines: [lift('back-squat', 3, 5, { percent: 75, loadGrams: kilos * 1000 })] }],
    });
    expectSilent(RULE, season(day(1, 0), [empty, empty, empty, at(67.5)]));
    expectFinding(RULE, season(day(1, 0), [empty, empty, empty, at(68)]), 4);
    expectSilent(RULE, season(day(1, 0), [empty, empty, at(75)]));
    const days = [{ day: day(4, 0), test: testOn(day(4, 0), ['back-squat']) }];
    expectSilent(RULE, { ...season(day(1, 0), [empty, empty, empty, at(75)]), days });
  });

  it('takes a maximum that was tested since, and says nothing of kilos without a share', () => {
    const full: WeekSpec = {
      sessions: [{ on: 1, lines: [lift('back-squat', 3, 5, { percent: 75, loadGrams: 75_000 })] }],
    };
    expectSilent(RULE, season(day(4, 0), [empty, empty, empty, full]));
    const bare: WeekSpec = { sessions: [{ on: 1, lines: [lift('back-squat', 3, 5, { loadGrams: 75_000 })] }] };
    expectSilent(RULE, season(day(1, 1) - 84, [bare]));
  });

  it('takes no maximum for tested since that is dated later than the kilos', () => {
    expectFinding(RULE, season(day(4, 4), [empty, empty, empty, { sessions: squats.sessions ?? [] }]), 4);
  });

  it('looks at the maximum of the lift itself before that of the lift which serves for it', () => {
    const boxSquats: WeekSpec = {
      sessions: [{ on: 1, lines: [lift('box-squat', 3, 5, { percent: 75, loadGrams: 75_000 })] }],
    };
    const old = day(1, 1) - 84;
    expectFinding(RULE, { athlete: squatMax(100_000, { lift: 'box-squat', on: old }), weeks: [boxSquats] }, 1);
    const own = squatMax(100_000, { lift: 'box-squat', on: old + 1 }).lifts;
    const both = new Map([...squatMax(100_000, { on: old }).lifts, ...own]);
    expectSilent(RULE, { athlete: { lifts: both }, weeks: [boxSquats] });
  });

  it('counts a test on the day of the session', () => {
    const days = [{ day: day(1, 1), test: testOn(day(1, 1), ['back-squat']) }];
    expectSilent(RULE, { ...season(day(1, 1) - 84), days });
  });
});
