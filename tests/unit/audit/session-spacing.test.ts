import { describe, expect, it } from 'vitest';
import { expectFinding, expectSilent, found } from './found.ts';
import { changed, drill, jumps, place } from './make-build.ts';

const RULE = 'session-spacing';

describe('session-spacing', () => {
  it('wants two days from one jump session to the next', () => {
    expectSilent(RULE, { weeks: [{ sessions: [jumps(1, 40), jumps(4, 40)] }] });
    expectSilent(RULE, { weeks: [{ sessions: [jumps(1, 40), jumps(3, 40)] }] });
    expectFinding(RULE, { weeks: [{ sessions: [jumps(1, 40), jumps(2, 40)] }] }, 1);
  });

  it('finds two on one day', () => {
    expectFinding(RULE, { weeks: [{ sessions: [jumps(1, 40), jumps(1, 40)] }] }, 1);
  });

  it('looks over the end of a week', () => {
    expectFinding(RULE, { weeks: [{ sessions: [jumps(6, 40)] }, { sessions: [jumps(0, 40)] }] }, 2);
  });

  it('takes a primer for a jump session, and a session of lifts for none', () => {
    expectFinding(RULE, { weeks: [{ sessions: [jumps(1, 40), jumps(2, 20, { kind: 'primer' })] }] }, 1);
    expectSilent(RULE, { weeks: [{ sessions: [jumps(1, 40), jumps(2, 0, { lifts: true })] }] });
  });

  it('takes a stricter number from the plan', () => {
    expectFinding(RULE, { plan: changed(RULE, { apart: 3 }), weeks: [{ sessions: [jumps(1, 40), jumps(3, 40)] }] }, 1);
  });

  it('points at whichever session was written by hand', () => {
    const lines = [drill('small-jump', 4, 5, { origin: { kind: 'written', span: place(91) } })];
    const weeks = [{ sessions: [{ on: 1, lines } as const, jumps(2, 40)] }];
    expect(found(RULE, { weeks })[0]?.span).toEqual(place(91));
  });
});
