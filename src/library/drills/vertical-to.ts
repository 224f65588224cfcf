// Upward jumps that go somewhere: onto a box, behind a step or a run-up, along a net. Joined by ../drills.ts.
// Landing on a box is softer than landing back on the floor, so a two-legged box jump is lower than its height looks.

import type { Drill } from '../types.ts';
import { EASY, HARD_EACH, STEADY, STEADY_EACH, family, only } from './family.ts';

const ONTO_BOX = { direction: only('vertical'), cycle: 'slow', lands: 'box', kit: ['boxes'] } as const;

const BOX_JUMP = family('box-jump', ONTO_BOX, [
  {
    id: 'box-jump-20',
    name: 'Box jump, 20 cm',
    boxCm: 20,
    tier: 'low',
    stage: 1,
    ...EASY,
    cue: 'Jump up, land flat and quiet on the box, step down.',
    stop: 'A toe catches the edge, or you land in a crouch.',
  },
  {
    id: 'box-jump-30',
    name: 'Box jump, 30 cm',
    boxCm: 30,
    tier: 'low',
    stage: 2,
    ...EASY,
    cue: 'Jump high rather than tuck; whole feet on the box; step down.',
    stop: 'A toe catches the edge, or you land in a crouch.',
  },
  {
    id: 'box-jump-45',
    name: 'Box jump, 45 cm',
    boxCm: 45,
    tier: 'moderate',
    stage: 3,
    ...STEADY,
    cue: 'Rise with the arms, land as tall as you took off, step down.',
    stop: 'You land lower than a half squat, or hesitate before the jump.',
  },
  {
    id: 'box-jump-60',
    name: 'Box jump, 60 cm',
    boxCm: 60,
    tier: 'moderate',
    fromLevel: 'intermediate',
    stage: 3,
    ...STEADY,
    restSeconds: 120,
    cue: 'Full arm swing, land quietly on both whole feet, step down.',
    stop: 'You land in a deep crouch, or hesitate before the jump.',
  },
]);

const SINGLE_LEG_BOX_JUMP = family('single-leg-box-jump', { ...ONTO_BOX, legs: 'each' }, [
  {
    id: 'single-leg-box-jump-20',
    name: 'Single-leg box jump, 20 cm',
    boxCm: 20,
    tier: 'high',
    fromLevel: 'intermediate',
    stage: 4,
    ...STEADY_EACH,
    cue: 'Off one foot, onto the same foot, hold; step down with the other.',
    stop: 'The knee falls in on landing, or you touch down with the other foot.',
  },
  {
    id: 'single-leg-box-jump-30',
    name: 'Single-leg box jump, 30 cm',
    boxCm: 30,
    tier: 'high',
    fromLevel: 'advanced',
    stage: 4,
    ...STEADY_EACH,
    restSeconds: 120,
    cue: 'Drive the free knee up, land on the whole foot, stand tall.',
    stop: 'The knee falls in on landing, or the foot nears the edge.',
  },
  {
    id: 'single-leg-box-jump-45',
    name: 'Single-leg box jump, 45 cm',
    boxCm: 45,
    tier: 'high',
    fromLevel: 'advanced',
    stage: 4,
    ...STEADY_EACH,
    restSeconds: 150,
    cue: 'Big swing of arms and free leg, quiet landing, step down.',
    stop: 'You crouch to reach the box, or hesitate before the jump.',
  },
]);

const BLOCK_JUMP = family('block-jump', { direction: { vertical: 70, horizontal: 0, lateral: 30 }, cycle: 'slow' }, [
  {
    id: 'side-step-block-jump',
    name: 'Side step and block jump',
    tier: 'low',
    stage: 3,
    ...EASY,
    cue: 'One step to the side, feet square, jump straight up with high hands.',
    stop: 'You drift sideways in the air, or land on one foot.',
  },
  {
    id: 'shuffle-block-jump',
    name: 'Shuffle and block jump',
    tier: 'moderate',
    stage: 3,
    ...STEADY,
    cue: 'Two shuffle steps, plant both feet, straight up, both feet down.',
    stop: 'You drift sideways in the air, or the knees fall in at the plant.',
  },
  {
    id: 'crossover-block-jump',
    name: 'Crossover and block jump',
    tier: 'moderate',
    fromLevel: 'intermediate',
    stage: 3,
    ...STEADY,
    restSeconds: 120,
    cue: 'Open, cross, close; stop the run with both feet and jump straight up.',
    stop: 'You can’t stop the run, or land turned.',
  },
]);

const APPROACH_JUMP = family(
  'approach-jump',
  { direction: { vertical: 80, horizontal: 20, lateral: 0 }, cycle: 'slow' },
  [
    {
      id: 'one-step-jump',
      name: 'One-step jump',
      tier: 'low',
      stage: 2,
      ...EASY,
      cue: 'One step in, feet together, arms through, jump up off both feet.',
      stop: 'You fly forward instead of up, or land heavily.',
    },
    {
      id: 'three-step-jump',
      name: 'Three-step jump',
      tier: 'moderate',
      stage: 3,
      ...STEADY,
      cue: 'Slow, quick, quicker; brake with both heels and turn the run into height.',
      stop: 'You fly forward instead of up, or the plant gets noisy.',
    },
    {
      id: 'one-foot-run-up-jump',
      name: 'Run-up jump off one foot',
      legs: 'each',
      tier: 'moderate',
      fromLevel: 'intermediate',
      stage: 3,
      ...STEADY_EACH,
      cue: 'Three steps, quick last one, drive the knee, land on both feet.',
      stop: 'The take-off knee buckles, or you land on one foot.',
    },
    {
      id: 'full-run-up-jump',
      name: 'Full run-up jump off one foot',
      legs: 'each',
      tier: 'high',
      fromLevel: 'advanced',
      stage: 4,
      ...HARD_EACH,
      cue: 'Fast run-up, flat and quick plant, up with knee and arms, land on both feet.',
      stop: 'The take-off knee buckles, or the run-up slows down.',
    },
  ],
);

export const VERTICAL_TO: readonly Drill[] = [...BOX_JUMP, ...SINGLE_LEG_BOX_JUMP, ...BLOCK_JUMP, ...APPROACH_JUMP];
