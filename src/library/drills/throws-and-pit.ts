// Forward jumps with something beside them: a ball thrown on the way up, or sand to land in. Joined by ../drills.ts.
// Sand takes most of the landing away, so the pit lets a long jump be low.

import type { Drill } from '../types.ts';
import { EASY, HARD_EACH, LINKED, STEADY, STEADY_EACH, family, only } from './family.ts';

const THROW_JUMP = family(
  'throw-jump',
  { direction: { vertical: 30, horizontal: 70, lateral: 0 }, cycle: 'slow', kit: ['medicine-balls'] },
  [
    {
      id: 'chest-throw-hop',
      name: 'Chest throw with a small jump',
      tier: 'low',
      stage: 2,
      ...EASY,
      cue: 'Dip, push the ball away from the chest and let it pull you off the floor.',
      stop: 'The back arches, or you land on one foot.',
    },
    {
      id: 'chest-throw-jump',
      name: 'Chest throw with a long jump',
      tier: 'moderate',
      stage: 3,
      ...STEADY,
      cue: 'Legs first, then arms; throw far and land softly behind the ball.',
      stop: 'The throw gets shorter, or you stumble on landing.',
    },
    {
      id: 'scoop-throw-jump',
      name: 'Scoop throw with a long jump',
      tier: 'moderate',
      fromLevel: 'intermediate',
      stage: 3,
      ...STEADY,
      restSeconds: 120,
      cue: 'Ball between the knees, straight back, swing forward and up and jump after it.',
      stop: 'The back rounds in the dip, or you stumble on landing.',
    },
  ],
);

const PIT_JUMP = family('pit-jump', { direction: only('horizontal'), cycle: 'slow', lands: 'pit', kit: ['sand-pit'] }, [
  {
    id: 'pit-standing-jump',
    name: 'Standing long jump into the pit',
    tier: 'low',
    stage: 3,
    ...EASY,
    restSeconds: 90,
    cue: 'Both feet, arms through, heels far ahead into the sand.',
    stop: 'You fall back, or the sand is hard or uneven.',
  },
  {
    id: 'pit-three-step-jump',
    name: 'Three-step jump into the pit',
    legs: 'each',
    tier: 'moderate',
    fromLevel: 'intermediate',
    stage: 3,
    ...STEADY_EACH,
    cue: 'Three steps, flat plant, up and out off one foot, both heels to the sand.',
    stop: 'The plant gets heavy, or the take-off knee buckles.',
  },
  {
    id: 'pit-short-run-up-jump',
    name: 'Short run-up jump into the pit',
    legs: 'each',
    tier: 'high',
    fromLevel: 'advanced',
    stage: 4,
    ...HARD_EACH,
    cue: 'Seven fast steps, active plant, up before out, hold the flight.',
    stop: 'You miss the board, or the speed goes before the plant.',
  },
  {
    id: 'pit-standing-triple-jump',
    name: 'Standing triple jump into the pit',
    legs: 'alternate',
    contactsPerRep: 3,
    tier: 'high',
    fromLevel: 'advanced',
    stage: 4,
    ...LINKED,
    restSeconds: 180,
    cue: 'Even hop, step and jump; flat feet, tall trunk, sand for the last.',
    stop: 'A knee buckles in the step, or the parts get uneven.',
  },
]);

export const THROWS_AND_PIT: readonly Drill[] = [...THROW_JUMP, ...PIT_JUMP];
