import { describe, expect, it } from 'vitest';
import { expectFinding, expectSilent, found } from './found.ts';
import { changed, competition, day, drill, jumps } from './make-build.ts';
import type { SessionSpec } from './make-build.ts';

const RULE = 'fast-spacing';

const drops: SessionSpec = { on: 1, lines: [drill('drop-jump-20', 2, 5)] };

describe('fast-spacing', () => {
  it('wants two free days before the next jump session', () => {
    expectSilent(RULE, { weeks: [{ sessions: [drops, jumps(5, 40)] }] });
    expectSilent(RULE, { weeks: [{ sessions: [drops, jumps(4, 40)] }] });
    expectFinding(RULE, { weeks: [{ sessions: [drops, jumps(3, 40)] }] }, 1);
  });

  it('wants them before a match', () => {
    const plan = (weekday: 3 | 4) => ({ competitions: [competition(day(1, weekday), 'through')] });
    expectSilent(RULE, { plan: plan(4), weeks: [{ sessions: [drops] }] });
    expectFinding(RULE, { plan: plan(3), weeks: [{ sessions: [drops] }] }, 1);
  });

  it('wants them before a practice of sixty jumps or more', () => {
    const weeks = [{ sessions: [drops] }];
    expectSilent(RULE, { weeks, days: [{ day: day(1, 2), practiceJumps: 59 }] });
    expectFinding(RULE, { weeks, days: [{ day: day(1, 2), practiceJumps: 60 }] }, 1);
  });

  it('counts fast drills of the high tier, landings from a height, and nothing slower or easier', () => {
    const behind = (id: string) => ({
      weeks: [{ sessions: [{ on: 1, lines: [drill(id, 2, 5)] } as const, jumps(3, 40)] }],
    });
    expectFinding(RULE, behind('high-hurdle-hop'), 1);
    expectFinding(RULE, behind('depth-landing-20'), 1);
    expectSilent(RULE, behind('pogo'));
  });

  it('says what comes too soon', () => {
    const said = found(RULE, { weeks: [{ sessions: [drops, jumps(2, 40)] }] })[0];
    expect(said?.params).toMatchObject({ next: '2027-01-06', what: 'session', found: 0, wanted: 2 });
  });

  it('takes the numbers of the plan', () => {
    expectFinding(RULE, { plan: changed(RULE, { 'free-days': 3 }), weeks: [{ sessions: [drops, jumps(4, 40)] }] }, 1);
  });
});
