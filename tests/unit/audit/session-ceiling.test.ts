import { describe, expect, it } from 'vitest';
import { expectFinding, expectSilent, found } from './found.ts';
import { day, drill, jumps, place } from './make-build.ts';
import type { Athlete } from '../../../src/plan/types.ts';
import type { Level, PhaseId } from '../../../src/library/types.ts';

const RULE = 'session-ceiling';

function session(contacts: number, level: Level = 'intermediate', phase: PhaseId = 'power') {
  const athlete: Partial<Athlete> = { levels: [{ is: level, span: place(0) }] };
  return { athlete, weeks: [{ phase, sessions: [jumps(1, contacts)] }] };
}

describe('session-ceiling', () => {
  // Potach & Chu, ch. 18 in Haff & Triplett (eds), Essentials of Strength Training and Conditioning, 4th ed., 2016, read
  // in secondary texts: 80–100, 100–120 and 120–140 contacts a session.
  it.each([
    ['beginner', 100],
    ['intermediate', 120],
    ['advanced', 140],
  ] as const)('holds %s athletes to the top of their band', (level, most) => {
    expectSilent(RULE, session(most - 1, level));
    expectSilent(RULE, session(most, level));
    expectFinding(RULE, session(most + 1, level), 1);
  });

  // Common practice, no source.
  it.each([
    ['beginner', 60],
    ['intermediate', 80],
    ['advanced', 100],
  ] as const)('holds %s athletes to less in season', (level, most) => {
    for (const phase of ['maintenance', 'sharpening'] as const) {
      expectSilent(RULE, session(most, level, phase));
      expectFinding(RULE, session(most + 1, level, phase), 1);
    }
  });

  it('leaves a hold at the ceiling of the level', () => {
    expectSilent(RULE, session(120, 'intermediate', 'hold'));
  });

  it('points at the line that was written by hand', () => {
    const line = drill('small-jump', 1, 130, { origin: { kind: 'written', span: place(77) } });
    expect(found(RULE, { weeks: [{ sessions: [{ on: 1, lines: [line] }] }] })[0]?.span).toEqual(place(77));
  });

  it('adds the contacts up from the lines, whatever the session says', () => {
    const understated = jumps(1, 130, { contacts: 100 });
    expect(found(RULE, { weeks: [{ sessions: [understated] }] })[0]?.params['found']).toBe(130);
  });

  it('counts a level from the day it is signed off', () => {
    const levels = (from: number) => [
      { is: 'beginner' as const, span: place(0) },
      { is: 'intermediate' as const, from, span: place(0) },
    ];
    const weeks = [{ sessions: [jumps(1, 110)] }];
    expectSilent(RULE, { athlete: { levels: levels(day(1, 1)) }, weeks });
    expectFinding(RULE, { athlete: { levels: levels(day(1, 2)) }, weeks }, 1);
  });
});
