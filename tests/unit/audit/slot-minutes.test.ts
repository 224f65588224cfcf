import { describe, expect, it } from 'vitest';
import { expectFinding, expectSilent, found } from './found.ts';
import { drill, jumps, lift, place, slot } from './make-build.ts';
import type { SessionSpec } from './make-build.ts';

const RULE = 'slot-minutes';

describe('slot-minutes', () => {
  const inSlot = (slotMinutes: number, session: SessionSpec) => ({
    weeks: [{ sessions: [{ ...session, slot: slot(1, { minutes: slotMinutes }) }] }],
  });

  it('lets a session run over by a tenth', () => {
    expectSilent(RULE, inSlot(60, jumps(1, 40, { minutes: 60 })));
    expectSilent(RULE, inSlot(60, jumps(1, 40, { minutes: 66 })));
    expectFinding(RULE, inSlot(60, jumps(1, 40, { minutes: 67 })), 1);
  });

  it('does not believe minutes that cannot be kept', () => {
    // Twelve minutes of warm-up; five sets of five squats at four seconds a rep, three minutes between them.
    const session: SessionSpec = { on: 1, minutes: 10, lines: [drill('pogo', 1, 10), lift('back-squat', 5, 5)] };
    expectSilent(RULE, inSlot(24, session));
    expectFinding(RULE, inSlot(22, session), 1);
  });

  it('counts the rests of a pair once, with its first line', () => {
    const pair = [
      lift('back-squat', 5, 5, { order: 1, pairedWith: 2 }),
      drill('pogo', 5, 1, { order: 2, pairedWith: 1 }),
    ];
    const session: SessionSpec = { on: 1, minutes: 10, lines: pair };
    expectSilent(RULE, inSlot(24, session));
    expectFinding(RULE, inSlot(22, session), 1);
  });

  it('points at the slot where nothing was written by hand', () => {
    const said = found(RULE, inSlot(60, jumps(1, 40, { minutes: 90 })))[0];
    expect(said?.span).toEqual(place(3));
    expect(said?.params).toMatchObject({ found: 90, most: 66, slot: 60 });
  });
});
