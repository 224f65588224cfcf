import { describe, expect, it } from 'vitest';
import { expectFinding, expectSilent, found } from './found.ts';
import { competition, day, heavy, jumps } from './make-build.ts';
import type { SessionSpec } from './make-build.ts';
import type { Day } from '../../../src/util/days.ts';

const RULE = 'congested-week';

function season(matches: readonly Day[], sessions: readonly SessionSpec[]) {
  return { plan: { competitions: matches.map((on) => competition(on, 'through')) }, weeks: [{ sessions }, {}] };
}

describe('congested-week', () => {
  it('has no jump session among three match days in seven', () => {
    expectSilent(RULE, season([day(1, 0), day(1, 6)], [jumps(3, 40)]));
    expectSilent(RULE, season([day(1, 0), day(1, 1), day(2, 0)], [jumps(3, 40)]));
    expectFinding(RULE, season([day(1, 0), day(1, 1), day(1, 6)], [jumps(3, 40)]), 1);
  });

  it('counts every day of a tournament', () => {
    const cup = competition(day(1, 0), 'through', { range: { from: day(1, 0), until: day(1, 1) } });
    const plan = { competitions: [cup, competition(day(1, 5), 'through')] };
    expectFinding(RULE, { plan, weeks: [{ sessions: [jumps(3, 40)] }] }, 1);
  });

  it('leaves the days around the stretch alone, and lets a primer stand in it', () => {
    const matches = [day(1, 3), day(1, 5), day(2, 2)];
    expectSilent(RULE, season(matches, [jumps(1, 40)]));
    expectSilent(RULE, season(matches, [jumps(4, 20, { kind: 'primer' })]));
  });

  it('has one lift session in it', () => {
    const matches = [day(1, 0), day(1, 3), day(1, 6)];
    expectSilent(RULE, season(matches, [heavy(1)]));
    expectFinding(RULE, season(matches, [heavy(1), heavy(4)]), 1);
    expect(found(RULE, season(matches, [heavy(1), heavy(4)]))[0]?.params).toMatchObject({ lifts: 2, most: 1 });
  });

  it('holds its first and its last match day', () => {
    const matches = [day(1, 0), day(1, 2), day(1, 4)];
    expectFinding(RULE, season(matches, [jumps(0, 40)]), 1);
    expectFinding(RULE, season(matches, [jumps(4, 40)]), 1);
    expectSilent(RULE, season(matches, [jumps(5, 40)]));
  });
});
