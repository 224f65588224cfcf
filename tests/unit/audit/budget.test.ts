import { describe, it } from 'vitest';
import { expectFinding, expectSilent } from './found.ts';
import { ALWAYS, changed, day, jumps, loading, place } from './make-build.ts';
import type { SeasonSpec } from './make-build.ts';

const RULE = 'budget';

describe('budget', () => {
  const days = [
    { day: day(1, 0), practiceJumps: 60 },
    { day: day(1, 5), matchJumps: 40 },
  ];
  const season = (contacts: number, change: Partial<SeasonSpec> = {}): SeasonSpec => ({
    plan: changed(RULE, { 'jumps-a-week': 300 }),
    weeks: [loading(contacts)],
    days,
    ...change,
  });

  it('is silent until the coach sets a number', () => {
    expectSilent(RULE, season(5000, { plan: {} }));
  });

  it('adds up all jumping of the week', () => {
    expectSilent(RULE, season(199));
    expectSilent(RULE, season(200));
    expectFinding(RULE, season(201), 1);
  });

  it('is graver for an athlete with a limit in force', () => {
    const limits = (until: number) => [{ range: { from: day(1, 0), until }, avoid: [], because: 'x', span: place(0) }];
    expectFinding(RULE, season(201, { athlete: { limits: limits(day(1, 0)) } }), 1, 'error');
    expectFinding(
      RULE,
      { ...season(201), weeks: [{}, loading(301)], athlete: { limits: limits(day(1, 6)) } },
      2,
      'warning',
    );
  });

  it('is graver for an athlete on a stage of a return', () => {
    const returning = [{ stage: 2, of: 4, since: ALWAYS.from, signed: 'physio', span: place(0) }];
    expectFinding(RULE, { ...season(0), athlete: { returning }, weeks: [{ sessions: [jumps(1, 201)] }] }, 1, 'error');
  });
});
