// Upward jumps off short contacts: bounces, hurdle hops, straddle hops, skips. Joined by ../drills.ts.

import type { Drill } from '../types.ts';
import { HARD, HARD_EACH, LIGHT, STEADY, STEADY_EACH, family, only } from './family.ts';

const UP_FAST = { direction: only('vertical'), cycle: 'fast' } as const;

const BOUNCE = family('bounce', UP_FAST, [
  {
    id: 'ankle-bounce',
    name: 'Ankle bounce',
    tier: 'low',
    stage: 1,
    ...LIGHT,
    cue: 'Bounce from the ankles, straight knees, the toes hardly leave the floor.',
    stop: 'The heels come down, or the calves tighten.',
  },
  {
    id: 'pogo',
    name: 'Pogo',
    tier: 'low',
    stage: 2,
    ...LIGHT,
    cue: 'Stiff ankles, toes up in the air, off the floor at once.',
    stop: 'The heels hit, or the rhythm slows down.',
  },
  {
    id: 'high-pogo',
    name: 'High pogo',
    tier: 'low',
    stage: 3,
    ...LIGHT,
    restSeconds: 90,
    cue: 'As high as a short contact allows; knees nearly straight.',
    stop: 'The knees bend more, or the contacts get long.',
  },
  {
    id: 'single-leg-pogo',
    name: 'Single-leg pogo',
    legs: 'each',
    tier: 'moderate',
    fromLevel: 'intermediate',
    stage: 3,
    ...STEADY_EACH,
    cue: 'Bounce on one foot, level hips, free foot beside the ankle.',
    stop: 'The heel hits, or the hip drops.',
  },
]);

const REBOUND = family('rebound', UP_FAST, [
  {
    id: 'rebound-jump',
    name: 'Rebound jump',
    tier: 'low',
    stage: 2,
    ...LIGHT,
    cue: 'Small jumps in a row, hardly any bend, quiet and quick.',
    stop: 'The contacts get long, or you wander off the spot.',
  },
  {
    id: 'rebound-jump-series',
    name: 'Rebound jumps for height',
    tier: 'moderate',
    stage: 3,
    ...STEADY,
    cue: 'Each jump high, each contact short, arms high throughout.',
    stop: 'The height drops, or the heels hit first.',
  },
  {
    id: 'hurdle-hop',
    name: 'Hurdle hop',
    kit: ['hurdles'],
    tier: 'moderate',
    stage: 3,
    ...STEADY,
    cue: 'Short contacts, knees up to the hurdle, land where you took off.',
    stop: 'Heels hit first, or the knees fall in.',
  },
  {
    id: 'high-hurdle-hop',
    name: 'High hurdle hop',
    kit: ['hurdles'],
    tier: 'high',
    fromLevel: 'intermediate',
    stage: 4,
    ...HARD,
    cue: 'The highest hurdle that keeps the contact short; no hop in between.',
    stop: 'You need an extra hop, touch a hurdle, or the heels hit.',
  },
  {
    id: 'single-leg-hurdle-hop',
    name: 'Single-leg hurdle hop',
    kit: ['hurdles'],
    legs: 'each',
    tier: 'high',
    fromLevel: 'advanced',
    stage: 4,
    ...HARD_EACH,
    cue: 'Low hurdles, same foot all along, free leg swings up with each hop.',
    stop: 'The knee falls in, or the other foot touches down.',
  },
]);

const STRADDLE = family('straddle', { direction: { vertical: 50, horizontal: 0, lateral: 50 }, cycle: 'fast' }, [
  {
    id: 'straddle-hop',
    name: 'Straddle hop',
    tier: 'low',
    stage: 3,
    ...LIGHT,
    cue: 'Feet out and in, on the balls of the feet, light as can be.',
    stop: 'The heels hit, or the knees fall in on the way out.',
  },
  {
    id: 'quick-straddle-hop',
    name: 'Quick straddle hop',
    tier: 'low',
    stage: 3,
    ...LIGHT,
    cue: 'Feet out and in as quickly as you can, head at one height.',
    stop: 'The rhythm breaks, or the head bobs.',
  },
  {
    id: 'star-jump',
    name: 'Star jump',
    tier: 'moderate',
    stage: 3,
    ...STEADY,
    cue: 'Jump high, arms and legs wide, feet together again before landing.',
    stop: 'You land wide, or the height is gone.',
  },
]);

const SKIP_UP = family(
  'skip-up',
  { direction: { vertical: 80, horizontal: 20, lateral: 0 }, cycle: 'fast', legs: 'alternate' },
  [
    {
      id: 'low-skip',
      name: 'Low skip',
      tier: 'low',
      stage: 2,
      ...LIGHT,
      cue: 'Easy skips on the balls of the feet, opposite arm and knee.',
      stop: 'The heels hit, or the trunk leans back.',
    },
    {
      id: 'skip-for-height',
      name: 'Skip for height',
      tier: 'low',
      stage: 3,
      ...LIGHT,
      cue: 'Knee up and stop it; rise off a straight leg.',
      stop: 'The take-off leg stays bent, or you land on the heel.',
    },
    {
      id: 'power-skip',
      name: 'Power skip',
      tier: 'moderate',
      stage: 3,
      ...STEADY,
      cue: 'As high as you can off each leg, arms with force, short contacts.',
      stop: 'The height drops, or the contacts get long.',
    },
  ],
);

export const VERTICAL_FAST: readonly Drill[] = [...BOUNCE, ...REBOUND, ...STRADDLE, ...SKIP_UP];
