// Jumps with a load and pulls from the floor or the hang. Joined by ../lifts.ts. A jump squat is loaded by at most a
// small share of the back squat (P11, P: 0 to 30 %), so that share stands for the whole of its maximum; the pulls take
// less of the clean than many would (C).

import type { Lift } from '../types.ts';
import { QUICK_REPS, pattern } from './pattern.ts';

const LOADED_JUMP = pattern(
  'loaded-jump',
  { lower: true, role: 'main', fromPhase: 'strength-power', fromLevel: 'intermediate', eccentricSeconds: 1 },
  [
    {
      id: 'trap-bar-jump',
      name: 'Trap-bar jump',
      kit: ['trap-bars'],
      loading: 'trap-bar',
      maxOf: 'trap-bar-deadlift',
      maxShare: 25,
      reps: { from: 2, to: 5 },
      stage: 4,
      cue: 'Arms long, a short dip, jump, land softly, reset each rep.',
      stop: 'The landing gets loud, or the jump lower.',
    },
    {
      id: 'jump-squat',
      name: 'Jump squat',
      kit: ['racks', 'bars'],
      loading: 'bar',
      maxOf: 'back-squat',
      maxShare: 30,
      reps: { from: 2, to: 5 },
      stage: 4,
      cue: 'Pull the bar into the back, dip, jump, land softly, reset each rep.',
      stop: 'The bar leaves the back, or the landing gets loud.',
    },
    {
      id: 'dumbbell-jump',
      name: 'Dumbbell jump',
      kit: ['dumbbells'],
      loading: 'dumbbells',
      reps: { from: 2, to: 5 },
      stage: 4,
      cue: 'Light dumbbells, arms long, dip and jump, land softly, reset.',
      stop: 'The dumbbells swing, or the landing gets loud.',
    },
    {
      id: 'kettlebell-jump',
      name: 'Kettlebell jump',
      kit: ['kettlebells'],
      loading: 'kettlebell',
      reps: { from: 2, to: 5 },
      stage: 4,
      cue: 'One light bell between the legs, dip and jump, land softly, reset.',
      stop: 'The bell pulls you forward, or the landing gets loud.',
    },
  ],
);

const PULL = pattern(
  'pull-from-floor',
  { lower: true, role: 'main', fromPhase: 'strength', fromLevel: 'intermediate', eccentricSeconds: 1 },
  [
    {
      id: 'power-clean',
      name: 'Power clean',
      kit: ['bars'],
      loading: 'bar',
      maxOf: 'power-clean',
      fromLevel: 'advanced',
      reps: QUICK_REPS,
      stage: 4,
      cue: 'Bar close, push the floor, jump and shrug, quick elbows.',
      stop: 'The back rounds off the floor, or you catch it with wide feet.',
    },
    {
      id: 'hang-high-pull',
      name: 'Hang high pull',
      kit: ['bars'],
      loading: 'bar',
      maxOf: 'power-clean',
      maxShare: 75,
      reps: { from: 2, to: 5 },
      stage: 4,
      cue: 'From above the knee, jump the bar up, elbows high and outside.',
      stop: 'The arms pull before the hips, or the back rounds.',
    },
    {
      id: 'hang-power-clean',
      name: 'Hang power clean',
      kit: ['bars'],
      loading: 'bar',
      maxOf: 'power-clean',
      maxShare: 85,
      fromLevel: 'advanced',
      reps: QUICK_REPS,
      stage: 4,
      cue: 'From above the knee, jump and shrug, quick elbows, catch in a quarter bend.',
      stop: 'The bar swings out, or you catch it with wide feet.',
    },
    {
      id: 'clean-pull',
      name: 'Clean pull',
      kit: ['bars'],
      loading: 'bar',
      maxOf: 'power-clean',
      maxShare: 90,
      reps: { from: 2, to: 5 },
      stage: 4,
      cue: 'Slow off the floor, fast past the knee, tall with a shrug.',
      stop: 'The hips shoot up first, or the back rounds.',
    },
    {
      id: 'dumbbell-snatch',
      name: 'Dumbbell snatch',
      kit: ['dumbbells'],
      loading: 'dumbbells',
      each: true,
      reps: { from: 2, to: 5 },
      stage: 4,
      cue: 'Dumbbell between the feet, jump it up in one line to a long arm.',
      stop: 'The arm presses the last part, or the back rounds.',
    },
  ],
);

export const JUMPS_AND_PULLS: readonly Lift[] = [...LOADED_JUMP, ...PULL];
