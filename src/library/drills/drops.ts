// Drop jumps: off a box and straight up, or straight forward. Joined by ../drills.ts. The rungs are the heights, each
// gated by age, mass, strength, clearance and level, which are rules. A rep counts as one contact, as trials count it.

import type { Drill, Level } from '../types.ts';
import { HARD, family, only } from './family.ts';

function dropJump(dropCm: number, fromLevel: Level, cue: string) {
  return {
    id: `drop-jump-${dropCm}`,
    name: `Drop jump, ${dropCm} cm`,
    dropCm,
    tier: 'high',
    fromLevel,
    stage: 4,
    ...HARD,
    cue,
    stop: 'Heels hit first, you sink on the floor, or the jump gets lower.',
  } as const;
}

const DROP = family('drop', { direction: only('vertical'), cycle: 'fast', kit: ['boxes'] }, [
  dropJump(20, 'beginner', 'Step off, bounce off the floor like a ball, jump straight up.'),
  dropJump(30, 'beginner', 'Step off level; the floor is hot: off it at once, and high.'),
  dropJump(40, 'intermediate', 'Legs ready before the floor comes; short contact, high jump.'),
  dropJump(45, 'advanced', 'Stiff ankles, short contact, jump as high as off the lower box.'),
  dropJump(50, 'advanced', 'Only as high a box as keeps the contact short; jump straight up.'),
  dropJump(60, 'advanced', 'Brace early, leave the floor at once; a high jump or a lower box.'),
]);

function dropBroadJump(dropCm: number, fromLevel: Level, cue: string) {
  return {
    id: `drop-long-jump-${dropCm}`,
    name: `Drop and long jump, ${dropCm} cm`,
    dropCm,
    tier: 'high',
    fromLevel,
    stage: 4,
    ...HARD,
    cue,
    stop: 'You sink on the floor before jumping, or the second landing is loud.',
  } as const;
}

const DROP_LONG_JUMP = family('drop-long-jump', { direction: only('horizontal'), cycle: 'fast', kit: ['boxes'] }, [
  dropBroadJump(20, 'intermediate', 'Step off, push the floor back at once, land softly on both feet.'),
  dropBroadJump(30, 'intermediate', 'Step off, leave the floor forward and up, hold the landing.'),
  dropBroadJump(40, 'advanced', 'Brace early, short contact, long jump, quiet landing.'),
]);

export const DROPS: readonly Drill[] = [...DROP, ...DROP_LONG_JUMP];
