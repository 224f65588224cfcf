// Landings: learning to stop, on two feet and on one, on the floor, on a pad, from a box. Joined by ../drills.ts.
// Landings from a height are drops to every rule about drops. The forces behind their tiers: D3 and D5.

import type { Drill } from '../types.ts';
import { EASY, EASY_EACH, HARD, STEADY, STEADY_EACH, family, only } from './family.ts';

const LANDING = family('landing', { direction: only('vertical'), cycle: 'none', lands: 'stick' }, [
  {
    id: 'snap-down',
    name: 'Snap-down',
    tier: 'low',
    stage: 1,
    ...EASY,
    cue: 'From tiptoe drop into a half squat and freeze, hips back, knees over the toes.',
    stop: 'You land with a thud, or you need a step to hold it.',
  },
  {
    id: 'jump-and-stick',
    name: 'Jump and stick',
    cycle: 'slow',
    tier: 'low',
    stage: 1,
    ...EASY,
    cue: 'A small jump, land softly on both feet, hold for two counts.',
    stop: 'The feet shuffle after landing, or the knees fall in.',
  },
  {
    id: 'single-leg-snap-down',
    name: 'Single-leg snap-down',
    legs: 'each',
    tier: 'moderate',
    stage: 2,
    ...EASY_EACH,
    cue: 'From tiptoe drop onto one foot and freeze, hips level.',
    stop: 'The hip drops, or the other foot comes down to save you.',
  },
  {
    id: 'single-leg-jump-and-stick',
    name: 'Single-leg jump and stick',
    legs: 'each',
    cycle: 'slow',
    tier: 'moderate',
    fromLevel: 'intermediate',
    stage: 3,
    ...STEADY_EACH,
    cue: 'Hop up, land on the same foot, hold for two counts with a quiet trunk.',
    stop: 'You wobble for more than a count, or the knee falls in.',
  },
]);

const PAD_LANDING = family(
  'pad-landing',
  { direction: only('vertical'), cycle: 'none', lands: 'stick', kit: ['balance-pads'], unstable: true },
  [
    {
      id: 'pad-snap-down',
      name: 'Snap-down on a pad',
      tier: 'low',
      stage: 2,
      ...EASY,
      cue: 'Stand on the pad, drop into a half squat, freeze with both feet flat.',
      stop: 'A foot slides or rolls on the pad.',
    },
    {
      id: 'pad-single-leg-snap-down',
      name: 'Single-leg snap-down on a pad',
      legs: 'each',
      tier: 'moderate',
      stage: 3,
      ...EASY_EACH,
      cue: 'Drop onto one foot on the pad and stay tall over it.',
      stop: 'The ankle rolls, or the hip drops.',
    },
    {
      id: 'pad-hop-and-stick',
      name: 'Hop to a pad and stick',
      legs: 'each',
      cycle: 'slow',
      tier: 'moderate',
      fromLevel: 'intermediate',
      stage: 3,
      ...EASY_EACH,
      cue: 'A short hop onto the pad, land flat, hold for two counts.',
      stop: 'The pad slips, or you land on its edge.',
    },
  ],
);

const DEPTH_LANDING = family(
  'depth-landing',
  { direction: only('vertical'), cycle: 'none', lands: 'stick', kit: ['boxes'] },
  [
    {
      id: 'depth-landing-20',
      name: 'Depth landing, 20 cm',
      dropCm: 20,
      tier: 'moderate',
      stage: 3,
      ...STEADY,
      cue: 'Step off, don’t jump off; land on both feet and freeze.',
      stop: 'The landing is loud, or the heels crash down.',
    },
    {
      id: 'depth-landing-30',
      name: 'Depth landing, 30 cm',
      dropCm: 30,
      tier: 'moderate',
      stage: 3,
      ...STEADY,
      cue: 'Step off level, meet the floor with soft ankles, freeze in a half squat.',
      stop: 'You sink deeper than a half squat, or the knees fall in.',
    },
    {
      id: 'depth-landing-40',
      name: 'Depth landing, 40 cm',
      dropCm: 40,
      tier: 'high',
      fromLevel: 'intermediate',
      stage: 4,
      ...HARD,
      cue: 'Step off level, brace before the floor comes, one quiet landing.',
      stop: 'The trunk folds, or the landing gets louder.',
    },
    {
      id: 'depth-landing-50',
      name: 'Depth landing, 50 cm',
      dropCm: 50,
      tier: 'high',
      fromLevel: 'advanced',
      stage: 4,
      ...HARD,
      cue: 'Step off level, legs ready early, stop dead in a half squat.',
      stop: 'Any landing that isn’t quiet and even on both feet.',
    },
  ],
);

export const LANDINGS: readonly Drill[] = [...LANDING, ...PAD_LANDING, ...DEPTH_LANDING];
