// Sideways jumps with a dip or a stuck landing: side jumps, skaters, shuffles, over a box. Joined by ../drills.ts.

import type { Drill } from '../types.ts';
import { EASY, HARD, HARD_EACH, STEADY, STEADY_EACH, family, only } from './family.ts';

const SIDE_SLOW = { direction: only('lateral'), cycle: 'slow' } as const;

const SIDE_JUMP = family('side-jump', { ...SIDE_SLOW, lands: 'stick' }, [
  {
    id: 'side-jump-stick',
    name: 'Side jump and stick',
    tier: 'low',
    stage: 3,
    ...EASY,
    cue: 'A foot length to the side, both feet at once, hold. Both ways.',
    stop: 'One foot lands first, or the knees fall in.',
  },
  {
    id: 'long-side-jump-stick',
    name: 'Long side jump and stick',
    tier: 'moderate',
    stage: 3,
    ...STEADY,
    cue: 'Push off the far foot, land on both, trunk over the middle. Both ways.',
    stop: 'The trunk tips over the outer foot, or you need a step.',
  },
  {
    id: 'single-leg-side-jump-stick',
    name: 'Single-leg side jump and stick',
    legs: 'each',
    tier: 'moderate',
    fromLevel: 'intermediate',
    stage: 3,
    ...STEADY_EACH,
    cue: 'Hop to the side, same foot, hold with level hips. Both ways.',
    stop: 'The ankle rolls, or the knee falls in.',
  },
  {
    id: 'long-single-leg-side-jump',
    name: 'Long single-leg side jump',
    legs: 'each',
    tier: 'high',
    fromLevel: 'advanced',
    stage: 4,
    ...HARD_EACH,
    cue: 'As far to the side as you can hold, same foot, quiet landing. Both ways.',
    stop: 'The ankle rolls, or you can’t hold the landing.',
  },
]);

const SKATER = family('skater', { ...SIDE_SLOW, legs: 'alternate', lands: 'stick' }, [
  {
    id: 'skater-step',
    name: 'Skater step',
    tier: 'low',
    stage: 3,
    ...EASY,
    cue: 'A springy step to the side, hold on one foot for two counts, go back.',
    stop: 'The knee falls in, or the foot slides.',
  },
  {
    id: 'skater-stick',
    name: 'Skater and stick',
    tier: 'moderate',
    stage: 3,
    ...STEADY,
    cue: 'Push off sideways, land on the other foot, hips back, hold.',
    stop: 'The trunk tips outward, or the knee falls in.',
  },
  {
    id: 'lateral-bound',
    name: 'Lateral bound',
    tier: 'moderate',
    fromLevel: 'intermediate',
    stage: 3,
    ...STEADY,
    restSeconds: 120,
    cue: 'Bound far to the side, land on the outer foot, still for one count.',
    stop: 'The bounds get shorter, or the landing foot slides.',
  },
  {
    id: 'long-lateral-bound',
    name: 'Long lateral bound',
    tier: 'high',
    fromLevel: 'advanced',
    stage: 4,
    ...HARD,
    cue: 'As far as you can still stop dead, low hips, whole foot.',
    stop: 'You slide or hop on landing, or the knee falls in.',
  },
]);

const SHUFFLE = family('shuffle', SIDE_SLOW, [
  {
    id: 'shuffle-stick',
    name: 'Shuffle and stick',
    lands: 'stick',
    tier: 'low',
    stage: 3,
    ...EASY,
    cue: 'Two shuffle steps, a small jump to a stop on both feet, hold. Both ways.',
    stop: 'The feet cross, or the trunk runs past the feet.',
  },
  {
    id: 'shuffle-side-jump',
    name: 'Shuffle and side jump',
    lands: 'stick',
    tier: 'moderate',
    stage: 3,
    ...STEADY,
    cue: 'Two shuffle steps into one long side jump, land on both feet. Both ways.',
    stop: 'The knees fall in at the push, or you need a step.',
  },
  {
    id: 'crossover-jump',
    name: 'Crossover jump',
    lands: 'stick',
    tier: 'moderate',
    fromLevel: 'intermediate',
    stage: 4,
    ...STEADY,
    restSeconds: 120,
    cue: 'One crossover step, jump far to the side, land square on both feet. Both ways.',
    stop: 'You land turned, or the outer ankle rolls.',
  },
]);

const SIDE_BOX = family(
  'side-box',
  { direction: { vertical: 40, horizontal: 0, lateral: 60 }, cycle: 'slow', kit: ['boxes'] },
  [
    {
      id: 'side-box-push-off-20',
      name: 'Side push-off from a box, 20 cm',
      legs: 'alternate',
      boxCm: 20,
      tier: 'low',
      stage: 3,
      ...EASY,
      cue: 'One foot on the box, push up and across, land with the other foot on it.',
      stop: 'The foot on the box slips, or the box moves.',
    },
    {
      id: 'side-box-jump-30',
      name: 'Side box jump, 30 cm',
      lands: 'box',
      boxCm: 30,
      tier: 'moderate',
      stage: 3,
      ...STEADY,
      cue: 'Stand beside the box, jump up and across, whole feet, step down. Both ways.',
      stop: 'A foot lands on the edge, or you twist.',
    },
    {
      id: 'side-box-jump-45',
      name: 'Side box jump, 45 cm',
      lands: 'box',
      boxCm: 45,
      tier: 'moderate',
      fromLevel: 'intermediate',
      stage: 4,
      ...STEADY,
      restSeconds: 120,
      cue: 'Rise first, then across; land tall in the middle of the box, step down. Both ways.',
      stop: 'You land in a crouch, or near the edge.',
    },
  ],
);

export const LATERAL_SLOW: readonly Drill[] = [...SIDE_JUMP, ...SKATER, ...SHUFFLE, ...SIDE_BOX];
