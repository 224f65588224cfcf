import { describe, it } from 'vitest';
import { expectFinding, expectSilent } from './found.ts';
import { aged, jumps, loading } from './make-build.ts';
import type { SeasonSpec } from './make-build.ts';
import type { Athlete } from '../../../src/plan/types.ts';

const RULE = 'youth-ceiling';

describe('youth-ceiling', () => {
  // Johnson, Salzberg & Stevenson 2011, J Strength Cond Res 25(9):2623–2633; Michailidis 2014, Int J Sport Studies
  // 4(12):1455–1461: 50–60 jumps a session to begin with, rising to 100–120.
  const first: Partial<Athlete> = {
    now: { value: { contactsASession: 40, sessionsAWeek: 2 }, origin: { kind: 'default', basis: 'level' } },
  };
  const season = (age: number, contacts: number, change: Partial<Athlete> = {}): SeasonSpec => ({
    athlete: { ...aged(age), ...change },
    weeks: [loading(contacts)],
  });

  it('starts children with sixty a session', () => {
    expectSilent(RULE, season(13, 59, first));
    expectSilent(RULE, season(13, 60, first));
    expectFinding(RULE, season(13, 61, first), 1);
  });

  it('does so for the first four weeks that have jumps', () => {
    const weeks = (contacts: number) => [...[1, 2, 3].map(() => loading(60)), {}, loading(contacts), loading(100)];
    expectSilent(RULE, { athlete: { ...aged(13), ...first }, weeks: weeks(60) });
    expectFinding(RULE, { athlete: { ...aged(13), ...first }, weeks: weeks(61) }, 5);
  });

  it.each([13, 14, 15])('lets athletes of %i who jump already do a hundred', (age) => {
    expectSilent(RULE, season(age, 100));
    expectFinding(RULE, season(age, 101), 1);
  });

  it('leaves those of sixteen to their level', () => {
    expectSilent(RULE, season(16, 200));
    expectSilent(RULE, { weeks: [{ sessions: [jumps(1, 200)] }] });
  });

  it('starts those of fourteen with a hundred', () => {
    expectSilent(RULE, season(14, 100, first));
    expectFinding(RULE, season(14, 101, first), 1);
  });
});
