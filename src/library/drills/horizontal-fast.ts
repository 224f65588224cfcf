// Forward jumps off short contacts: travelling bounces, skips, straight-leg runs, bounds and hops in series.
// Joined by ../drills.ts. Bounds are given as distance; no metres for one contact are published (D7), so each drill
// says its own, and its reps are the contacts of one run.

import type { Drill } from '../types.ts';
import { HARD, HARD_RUN, LIGHT, RUN, STEADY, STEADY_EACH, family, only } from './family.ts';

const FORWARD_FAST = { direction: only('horizontal'), cycle: 'fast' } as const;

const TRAVEL_BOUNCE = family('travel-bounce', FORWARD_FAST, [
  {
    id: 'travel-pogo',
    name: 'Travelling pogo',
    tier: 'low',
    stage: 2,
    ...LIGHT,
    cue: 'Pogo forward a foot length at a time, stiff ankles, tall.',
    stop: 'The heels hit, or the trunk leans forward.',
  },
  {
    id: 'long-travel-pogo',
    name: 'Long travelling pogo',
    tier: 'moderate',
    stage: 3,
    ...STEADY,
    cue: 'Push further forward each time, contacts as short as before.',
    stop: 'The contacts get long, or the knees bend more.',
  },
  {
    id: 'single-leg-travel-pogo',
    name: 'Single-leg travelling pogo',
    legs: 'each',
    tier: 'moderate',
    fromLevel: 'intermediate',
    stage: 3,
    ...STEADY_EACH,
    cue: 'Short quick hops forward on one foot, level hips.',
    stop: 'The heel hits, or the hip drops.',
  },
]);

const STRAIGHT_LEG = family('straight-leg', { ...FORWARD_FAST, legs: 'alternate' }, [
  {
    id: 'ankling',
    name: 'Ankling',
    tier: 'low',
    stage: 2,
    ...LIGHT,
    cue: 'Small quick steps from the ankle, straight knees, tall.',
    stop: 'The heels hit, or the shins tighten.',
  },
  {
    id: 'straight-leg-prance',
    name: 'Straight-leg prance',
    tier: 'low',
    stage: 3,
    ...LIGHT,
    cue: 'Straight legs, toes up, strike the floor under the hips.',
    stop: 'The foot lands ahead of you, or the trunk leans back.',
  },
  {
    id: 'straight-leg-bound',
    name: 'Straight-leg bound',
    metresPerContact: 1,
    tier: 'moderate',
    fromLevel: 'intermediate',
    stage: 3,
    ...RUN,
    cue: 'Sweep the straight leg back under you and fly to the next.',
    stop: 'A pull at the back of the thigh, or the contacts get long.',
  },
]);

const FRONT_BACK = family('front-back', FORWARD_FAST, [
  {
    id: 'front-back-hop',
    name: 'Front-and-back hop',
    tier: 'low',
    stage: 2,
    ...LIGHT,
    cue: 'Over a line and back, both feet, quiet on the balls of the feet.',
    stop: 'The heels hit, or you land on the line.',
  },
  {
    id: 'quick-front-back-hop',
    name: 'Quick front-and-back hop',
    tier: 'low',
    stage: 3,
    ...LIGHT,
    cue: 'As quickly as you can with both feet together, hips still.',
    stop: 'The feet come apart, or the rhythm breaks.',
  },
  {
    id: 'single-leg-front-back-hop',
    name: 'Single-leg front-and-back hop',
    legs: 'each',
    tier: 'moderate',
    fromLevel: 'intermediate',
    stage: 3,
    ...STEADY_EACH,
    cue: 'Over the line and back on one foot, short contacts, level hips.',
    stop: 'The hip drops, or the heel hits.',
  },
]);

const SKIP_OUT = family('skip-out', { ...FORWARD_FAST, legs: 'alternate' }, [
  {
    id: 'travel-skip',
    name: 'Travelling skip',
    tier: 'low',
    stage: 2,
    ...LIGHT,
    cue: 'Easy skips forward, opposite arm and knee, light feet.',
    stop: 'The heels hit, or the rhythm breaks.',
  },
  {
    id: 'skip-for-distance',
    name: 'Skip for distance',
    tier: 'low',
    stage: 3,
    ...LIGHT,
    restSeconds: 90,
    cue: 'Push the floor back, longer skips at the same rhythm.',
    stop: 'The foot lands far ahead of you, or the skips get shorter.',
  },
  {
    id: 'power-skip-for-distance',
    name: 'Power skip for distance',
    tier: 'moderate',
    stage: 3,
    ...STEADY,
    cue: 'As far as you can off each foot, knee drive, short contacts.',
    stop: 'The contacts get long, or the distance drops.',
  },
]);

const BOUND = family('bound', { ...FORWARD_FAST, legs: 'alternate' }, [
  {
    id: 'short-bound',
    name: 'Short bound',
    metresPerContact: 1,
    tier: 'moderate',
    stage: 3,
    ...RUN,
    cue: 'Springy running steps, a little longer each, flat and quiet feet.',
    stop: 'The heel strikes first, or the hips sink.',
  },
  {
    id: 'alternate-bound',
    name: 'Alternate bound',
    metresPerContact: 2,
    tier: 'high',
    fromLevel: 'intermediate',
    stage: 4,
    ...HARD_RUN,
    cue: 'Drive the knee, hang in the air, claw the floor back under you.',
    stop: 'The hips sink, or the bounds get shorter.',
  },
  {
    id: 'speed-bound',
    name: 'Speed bound',
    metresPerContact: 2,
    tier: 'high',
    fromLevel: 'advanced',
    stage: 4,
    ...HARD_RUN,
    restSeconds: 180,
    cue: 'A short run-in, then bound as far and as fast as you can.',
    stop: 'The speed drops, or the landings get heavy.',
  },
]);

const HOP_SERIES = family('hop-series', { ...FORWARD_FAST, legs: 'each' }, [
  {
    id: 'short-hop-series',
    name: 'Short hops in a row',
    tier: 'moderate',
    fromLevel: 'intermediate',
    stage: 3,
    ...STEADY_EACH,
    cue: 'Five short hops, same foot, quick and level.',
    stop: 'The knee falls in, or the hip drops.',
  },
  {
    id: 'long-hop-series',
    name: 'Long hops in a row',
    metresPerContact: 1,
    tier: 'high',
    fromLevel: 'advanced',
    stage: 4,
    ...HARD_RUN,
    reps: { from: 5, to: 8 },
    cue: 'Cycle the leg through, land flat under the hips, long and even.',
    stop: 'The knee buckles, or the hops get shorter.',
  },
  {
    id: 'speed-hop-series',
    name: 'Speed hops',
    metresPerContact: 2,
    tier: 'high',
    fromLevel: 'advanced',
    stage: 4,
    ...HARD_RUN,
    reps: { from: 5, to: 8 },
    restSeconds: 180,
    cue: 'A short run-in, then hop on one foot as fast as you can stay tall.',
    stop: 'The speed drops, or the landing jars.',
  },
]);

const FORWARD_HURDLE = family('forward-hurdle', { ...FORWARD_FAST, kit: ['hurdles'] }, [
  {
    id: 'low-hurdle-step',
    name: 'Step over low hurdles',
    legs: 'alternate',
    tier: 'low',
    stage: 2,
    ...LIGHT,
    cue: 'Quick steps over very low hurdles, toes up, tall.',
    stop: 'A foot touches a hurdle, or the heels hit.',
  },
  {
    id: 'forward-hurdle-jump',
    name: 'Forward hurdle jump',
    tier: 'moderate',
    stage: 3,
    ...STEADY,
    cue: 'Low hurdles a stride apart, both feet, forward and off at once.',
    stop: 'You stop between hurdles, or the heels hit.',
  },
  {
    id: 'long-hurdle-jump',
    name: 'Long hurdle jump',
    tier: 'high',
    fromLevel: 'advanced',
    stage: 4,
    ...HARD,
    cue: 'Hurdles far apart, both feet, drive forward off short contacts.',
    stop: 'You need an extra hop, or land short of the next.',
  },
]);

export const HORIZONTAL_FAST: readonly Drill[] = [
  ...TRAVEL_BOUNCE,
  ...STRAIGHT_LEG,
  ...FRONT_BACK,
  ...SKIP_OUT,
  ...BOUND,
  ...HOP_SERIES,
  ...FORWARD_HURDLE,
];
