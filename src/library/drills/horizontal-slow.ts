// Forward jumps with a deep dip or a stuck landing: long jumps, frog jumps, hops and single bounds, throws, the pit.
// Joined by ../drills.ts. A standing long jump lands harder than a vertical jump (D5), so at full length it isn't low.

import type { Drill } from '../types.ts';
import { EASY, EASY_EACH, HARD, HARD_EACH, LINKED, STEADY, family, only } from './family.ts';

const FORWARD_SLOW = { direction: only('horizontal'), cycle: 'slow' } as const;

const LONG_JUMP = family('long-jump', FORWARD_SLOW, [
  {
    id: 'short-jump-stick',
    name: 'Short forward jump and stick',
    lands: 'stick',
    tier: 'low',
    stage: 1,
    ...EASY,
    cue: 'A foot length forward, both feet at once, hold for two counts.',
    stop: 'You tip forward, or the knees fall in.',
  },
  {
    id: 'half-long-jump',
    name: 'Half-length long jump',
    lands: 'stick',
    tier: 'low',
    stage: 2,
    ...EASY,
    cue: 'Half of what you could, arms through, land softly and hold.',
    stop: 'The heels slide, or you need a step.',
  },
  {
    id: 'standing-long-jump',
    name: 'Standing long jump',
    tier: 'moderate',
    stage: 3,
    ...STEADY,
    cue: 'Swing, dip, push forward and up; feet ahead, land low and quiet.',
    stop: 'You fall back, or the landing jars.',
  },
  {
    id: 'single-leg-long-jump',
    name: 'Single-leg long jump',
    legs: 'each',
    tier: 'high',
    fromLevel: 'advanced',
    stage: 4,
    ...HARD_EACH,
    cue: 'Off one foot as far as you can hold, land on the same foot.',
    stop: 'The knee falls in, or you can’t hold the landing.',
  },
]);

const FROG = family('frog', FORWARD_SLOW, [
  {
    id: 'low-frog-jump',
    name: 'Low frog jump',
    tier: 'low',
    stage: 2,
    ...EASY,
    cue: 'From a half squat a short jump forward, settle, go again.',
    stop: 'The back rounds, or the knees fall in.',
  },
  {
    id: 'frog-jump',
    name: 'Frog jump',
    tier: 'moderate',
    stage: 3,
    ...STEADY,
    cue: 'Thighs near level, spring forward and up, land softly into the next.',
    stop: 'You sink deeper each time, or the heels slam.',
  },
  {
    id: 'long-frog-jump',
    name: 'Long frog jump',
    tier: 'moderate',
    fromLevel: 'intermediate',
    stage: 4,
    ...STEADY,
    restSeconds: 120,
    cue: 'As far as you can with the trunk up; no rest in the squat.',
    stop: 'The distance drops, or the back rounds.',
  },
]);

const STEP_BOUND = family('step-bound', { ...FORWARD_SLOW, legs: 'alternate', lands: 'stick' }, [
  {
    id: 'step-and-stick',
    name: 'Forward step and stick',
    tier: 'low',
    stage: 2,
    ...EASY,
    cue: 'A springy step forward onto one foot, hold for two counts, then the other.',
    stop: 'The knee falls in, or you hop to stay up.',
  },
  {
    id: 'bound-and-stick',
    name: 'Bound and stick',
    tier: 'moderate',
    fromLevel: 'intermediate',
    stage: 3,
    ...STEADY,
    cue: 'Push off one foot, land on the other, hold still, go again.',
    stop: 'You wobble for more than a count, or land on the heel.',
  },
  {
    id: 'long-bound-and-stick',
    name: 'Long bound and stick',
    tier: 'high',
    fromLevel: 'advanced',
    stage: 4,
    ...HARD,
    cue: 'As far as you can still hold; knee drive, flat and quiet landing.',
    stop: 'The hip drops on landing, or the landing jars.',
  },
]);

const HOP = family('hop', { ...FORWARD_SLOW, legs: 'each', lands: 'stick' }, [
  {
    id: 'hop-and-stick',
    name: 'Hop and stick',
    tier: 'moderate',
    stage: 2,
    ...EASY_EACH,
    cue: 'A short hop forward, same foot, hold for two counts.',
    stop: 'The knee falls in, or the other foot comes down.',
  },
  {
    id: 'double-hop-stick',
    name: 'Double hop and stick',
    contactsPerRep: 2,
    tier: 'moderate',
    fromLevel: 'intermediate',
    stage: 3,
    ...LINKED,
    cue: 'Two hops linked, same foot, hold the second.',
    stop: 'The first landing sinks, or you can’t hold the second.',
  },
  {
    id: 'triple-hop-stick',
    name: 'Triple hop and stick',
    contactsPerRep: 3,
    tier: 'high',
    fromLevel: 'advanced',
    stage: 4,
    ...LINKED,
    restSeconds: 150,
    cue: 'Three hops linked, long and level, hold the third.',
    stop: 'The hips drop, or the hops get shorter.',
  },
]);

const JUMP_SERIES = family('jump-series', FORWARD_SLOW, [
  {
    id: 'double-long-jump',
    name: 'Two long jumps',
    contactsPerRep: 2,
    tier: 'moderate',
    stage: 3,
    ...LINKED,
    cue: 'Two jumps linked at three quarters, both feet, hold the second.',
    stop: 'You stop between the jumps, or tip forward.',
  },
  {
    id: 'triple-long-jump',
    name: 'Three long jumps',
    contactsPerRep: 3,
    tier: 'moderate',
    fromLevel: 'intermediate',
    stage: 3,
    ...LINKED,
    cue: 'Three linked jumps, arms with each, hold the third.',
    stop: 'The landings get louder, or the jumps shorter.',
  },
  {
    id: 'five-long-jumps',
    name: 'Five long jumps',
    contactsPerRep: 5,
    tier: 'high',
    fromLevel: 'advanced',
    stage: 4,
    ...LINKED,
    restSeconds: 180,
    cue: 'Five linked jumps for distance, both feet together each time.',
    stop: 'The heels slam, or the last jumps fall off.',
  },
]);

export const HORIZONTAL_SLOW: readonly Drill[] = [...LONG_JUMP, ...FROG, ...STEP_BOUND, ...HOP, ...JUMP_SERIES];
