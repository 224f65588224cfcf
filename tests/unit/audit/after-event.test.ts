import { describe, expect, it } from 'vitest';
import { expectFinding, expectSilent, found } from './found.ts';
import { changed, competition, day, jumps } from './make-build.ts';
import type { Weekday } from '../../../src/util/days.ts';

const RULE = 'after-event';

describe('after-event', () => {
  const season = (on: Weekday, until: Weekday = 1) => ({
    plan: { competitions: [competition(day(1, 1), 'through', { range: { from: day(1, 1), until: day(1, until) } })] },
    weeks: [{ sessions: [jumps(on, 40)] }],
  });

  it('keeps the day behind a match free', () => {
    expectSilent(RULE, season(4));
    expectSilent(RULE, season(3));
    expectFinding(RULE, season(2), 1);
  });

  it('counts from each day of a tournament', () => {
    expectSilent(RULE, season(5, 3));
    expectFinding(RULE, season(4, 3), 1);
  });

  it('looks over the end of a week', () => {
    const plan = { competitions: [competition(day(1, 6), 'through')] };
    expectFinding(RULE, { plan, weeks: [{}, { sessions: [jumps(0, 40)] }] }, 2);
  });

  it('is about those who played', () => {
    const who = { kind: 'some', squads: [], athletes: ['bo'] } as const;
    const plan = { competitions: [competition(day(1, 1), 'through', { who })] };
    expectSilent(RULE, { plan, weeks: [{ sessions: [jumps(2, 40)] }] });
  });

  it('takes more days from the plan', () => {
    const spec = season(3);
    expectFinding(RULE, { ...spec, plan: { ...spec.plan, ...changed(RULE, { 'free-days': 2 }) } }, 1);
    expect(found(RULE, season(2))[0]?.params).toMatchObject({ found: 1, wanted: 1 });
  });
});
