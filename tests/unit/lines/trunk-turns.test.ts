// The trunk lift changes from block to block of a path and stays within one; the coach's word and a limit come before it,
// and every other pattern keeps the order of the library.

import { describe, expect, test } from 'vitest';
import { BUILT_IN } from '../../../src/library/index.ts';
import { inTurn } from '../../../src/library/lifting.ts';
import { PHASES } from '../../../src/library/phases.ts';
import type { PhaseId } from '../../../src/library/types.ts';
import type { Athlete, Plan } from '../../../src/plan/types.ts';
import { athlete, JUMPING_PHASES, limit, makeLines, pin } from './make-lines.ts';

const TRUNK = [...BUILT_IN.lifts.values()].filter(({ pattern }) => pattern === 'trunk');

const ofPhase = (phase: PhaseId): string => inTurn(TRUNK, phase)[0]?.id ?? '';

/** Trunk lifts of a block of three weeks with two sessions each, one for each session. */
function done(phase: PhaseId, who: Athlete, change: Partial<Plan> = {}): readonly string[] {
  const session = { contacts: 60, lifts: true };
  const week = { phase, sessions: [session, session] };
  return makeLines(who, [week, week, week], change)
    .value.flat()
    .flatMap(({ lines }) => lines.flatMap(({ part, exercise }) => (part === 'trunk' ? [exercise] : [])));
}

const WHO = athlete('intermediate');

describe('the trunk lift of a phase', () => {
  test.each(JUMPING_PHASES)('is one throughout %s, and needs nothing', (phase) => {
    const first = ofPhase(phase);
    expect(done(phase, WHO)).toEqual(Array.from({ length: 6 }, () => first));
    const lift = BUILT_IN.lifts.get(first);
    expect(lift).toMatchObject({ pattern: 'trunk', loading: 'body', stage: 1 });
    expect(lift?.kit).toEqual([]);
  });

  test('is another one in the next block of a path, and nothing new from power on', () => {
    const path = ['foundation', 'hypertrophy', 'strength', 'strength-power', 'power'] as const;
    const lifts = path.map(ofPhase);
    for (const [index, lift] of lifts.entries()) expect(lift).not.toBe(lifts[index - 1]);
    // From strength to power where the path has nothing between.
    expect(ofPhase('power')).not.toBe(ofPhase('strength'));
    for (const late of ['sharpening', 'hold', 'maintenance'] as const) expect(ofPhase(late)).toBe(ofPhase('power'));
  });

  test('gives way to the next of the library where a limit bars it, and to what the coach keeps or swaps', () => {
    const first = ofPhase('power');
    const next = TRUNK.find(({ id }) => id !== first)?.id ?? '';
    const limited = athlete('intermediate', { limits: [limit([{ kind: 'lift', id: first }])] });
    expect(new Set(done('power', limited))).toEqual(new Set([next]));
    const kept = [pin([{ kind: 'keep', exercises: ['bird-dog'] }])];
    expect(new Set(done('power', WHO, { pins: kept }))).toEqual(new Set(['bird-dog']));
    const swapped = [pin([{ kind: 'swap', swaps: new Map([[first, 'bird-dog']]) }])];
    expect(new Set(done('power', WHO, { pins: swapped }))).toEqual(new Set(['bird-dog']));
  });
});

test('other patterns keep their order in every phase', () => {
  const others = [...BUILT_IN.lifts.values()].filter(({ pattern }) => pattern !== 'trunk');
  for (const { id } of PHASES) expect(inTurn(others, id)).toEqual(others);
});
