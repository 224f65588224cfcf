import { describe, expect, it } from 'vitest';
import { expectFinding, expectSilent, found } from './found.ts';
import { competition, day, jumps } from './make-build.ts';
import type { Competition } from '../../../src/plan/types.ts';
import type { Weekday } from '../../../src/util/days.ts';

const RULE = 'event-gap';

describe('event-gap', () => {
  const season = (on: Weekday, prepare: Competition['prepare'], change: Partial<Competition> = {}) => ({
    plan: { competitions: [competition(day(1, 5), prepare, change)] },
    weeks: [{ sessions: [jumps(on, 40)] }],
  });

  it('keeps two days free before a peak', () => {
    expectSilent(RULE, season(1, 'peak'));
    expectSilent(RULE, season(2, 'peak'));
    expectFinding(RULE, season(3, 'peak'), 1);
    expectFinding(RULE, season(4, 'peak'), 1);
  });

  it.each(['freshen', 'through'] as const)('keeps one day free before a match to %s', (prepare) => {
    expectSilent(RULE, season(3, prepare));
    expectFinding(RULE, season(4, prepare), 1);
  });

  it('keeps every day of a competition free', () => {
    const range = { from: day(1, 3), until: day(1, 5) };
    expectFinding(RULE, season(5, 'through', { range }), 1);
    expectSilent(RULE, season(6, 'through', { range }));
  });

  it('lets a primer stand there', () => {
    const primer = jumps(4, 20, { kind: 'primer' });
    expectSilent(RULE, { ...season(4, 'peak'), weeks: [{ sessions: [primer] }] });
  });

  it('is about the athletes who compete', () => {
    expectSilent(RULE, season(4, 'peak', { who: { kind: 'some', squads: ['others'], athletes: [] } }));
  });

  it('says how far ahead the session lies', () => {
    expect(found(RULE, season(4, 'peak'))[0]?.params).toMatchObject({ found: 1, wanted: 2, competition: 'Cup' });
  });
});
