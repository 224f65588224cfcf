// Sideways jumps off short contacts: line hops, side pogos, zigzags, side skips, hurdles, bounds. Joined by ../drills.ts.

import type { Drill } from '../types.ts';
import { EASY_EACH, HARD, HARD_EACH, LIGHT, STEADY, STEADY_EACH, family, only } from './family.ts';

const SIDE_FAST = { direction: only('lateral'), cycle: 'fast' } as const;

const LINE = family('line', SIDE_FAST, [
  {
    id: 'line-hop',
    name: 'Line hop',
    tier: 'low',
    stage: 3,
    ...LIGHT,
    cue: 'Side to side over a line, both feet together, light and even.',
    stop: 'The heels hit, or you land on the line.',
  },
  {
    id: 'quick-line-hop',
    name: 'Quick line hop',
    tier: 'low',
    stage: 3,
    ...LIGHT,
    cue: 'As quickly as you can, hips over the line, feet together.',
    stop: 'The feet come apart, or the rhythm breaks.',
  },
  {
    id: 'single-leg-line-hop',
    name: 'Single-leg line hop',
    legs: 'each',
    tier: 'moderate',
    fromLevel: 'intermediate',
    stage: 3,
    ...STEADY_EACH,
    cue: 'Side to side over the line on one foot, quick, level hips.',
    stop: 'The ankle rolls, or the heel hits.',
  },
]);

const SIDE_BOUNCE = family('side-bounce', SIDE_FAST, [
  {
    id: 'side-pogo',
    name: 'Side pogo',
    tier: 'low',
    stage: 3,
    ...LIGHT,
    cue: 'Pogo to the side a foot width at a time, and back, stiff ankles.',
    stop: 'The heels hit, or the trunk tips.',
  },
  {
    id: 'long-side-pogo',
    name: 'Long side pogo',
    tier: 'moderate',
    stage: 3,
    ...STEADY,
    cue: 'Further to the side each time, contacts as short as before. Both ways.',
    stop: 'The contacts get long, or the knees fall in.',
  },
  {
    id: 'single-leg-side-pogo',
    name: 'Single-leg side pogo',
    legs: 'each',
    tier: 'moderate',
    fromLevel: 'intermediate',
    stage: 4,
    ...EASY_EACH,
    restSeconds: 90,
    cue: 'Short side hops on one foot, off the floor at once. Both ways.',
    stop: 'The ankle rolls, or the hip drops.',
  },
]);

const ZIGZAG = family('zigzag', { direction: { vertical: 0, horizontal: 40, lateral: 60 }, cycle: 'fast' }, [
  {
    id: 'zigzag-hop',
    name: 'Zigzag hop',
    tier: 'low',
    stage: 3,
    ...LIGHT,
    cue: 'Both feet, left and right along a line, small and quick.',
    stop: 'The feet come apart, or the heels hit.',
  },
  {
    id: 'wide-zigzag-hop',
    name: 'Wide zigzag hop',
    tier: 'moderate',
    stage: 3,
    ...STEADY,
    cue: 'Wider to each side, push off both feet, short contacts.',
    stop: 'The knees fall in at the turn, or the contacts get long.',
  },
  {
    id: 'single-leg-zigzag-hop',
    name: 'Single-leg zigzag hop',
    legs: 'each',
    tier: 'high',
    fromLevel: 'advanced',
    stage: 4,
    ...HARD_EACH,
    cue: 'Left and right along a line on one foot, quick and level.',
    stop: 'The ankle rolls, or the knee falls in.',
  },
]);

const SKIP_SIDE = family('skip-side', { ...SIDE_FAST, legs: 'alternate' }, [
  {
    id: 'side-skip',
    name: 'Side skip',
    tier: 'low',
    stage: 3,
    ...LIGHT,
    cue: 'Skip to the side with swinging arms, light feet. Both ways.',
    stop: 'The heels hit, or the feet cross.',
  },
  {
    id: 'high-side-skip',
    name: 'High side skip',
    tier: 'low',
    stage: 3,
    ...LIGHT,
    restSeconds: 90,
    cue: 'Higher off the back foot, feet meet in the air. Both ways.',
    stop: 'The height drops, or you land heavily.',
  },
  {
    id: 'side-gallop',
    name: 'Side gallop for distance',
    tier: 'moderate',
    stage: 3,
    ...STEADY,
    cue: 'Push far to the side off the back foot, land soft on the lead. Both ways.',
    stop: 'The lead knee falls in, or the distance drops.',
  },
]);

const SIDE_HURDLE = family('side-hurdle', { ...SIDE_FAST, kit: ['hurdles'] }, [
  {
    id: 'low-hurdle-side-hop',
    name: 'Side hop over a low hurdle',
    tier: 'low',
    stage: 3,
    ...LIGHT,
    cue: 'Over a very low hurdle and back, both feet, quiet.',
    stop: 'A foot touches the hurdle, or the heels hit.',
  },
  {
    id: 'hurdle-side-hop',
    name: 'Hurdle side hop',
    tier: 'moderate',
    stage: 3,
    ...STEADY,
    cue: 'Knees up, over and back, off the floor at once.',
    stop: 'You need an extra hop, or the knees fall in.',
  },
  {
    id: 'single-leg-hurdle-side-hop',
    name: 'Single-leg hurdle side hop',
    legs: 'each',
    tier: 'high',
    fromLevel: 'advanced',
    stage: 4,
    ...HARD_EACH,
    cue: 'A very low hurdle, same foot over and back, level hips.',
    stop: 'The ankle rolls, or the other foot touches down.',
  },
]);

const SKATER_SERIES = family('skater-series', { ...SIDE_FAST, legs: 'alternate' }, [
  {
    id: 'quick-skater',
    name: 'Quick skater',
    tier: 'moderate',
    stage: 3,
    ...STEADY,
    cue: 'Short skaters side to side without a stop, low hips.',
    stop: 'The trunk swings, or the contacts get long.',
  },
  {
    id: 'lateral-bound-series',
    name: 'Lateral bounds in a row',
    tier: 'high',
    fromLevel: 'intermediate',
    stage: 4,
    ...HARD,
    cue: 'Far to each side, stop and go in one contact.',
    stop: 'The foot slides, or the bounds get shorter.',
  },
  {
    id: 'lateral-hop-series',
    name: 'Single-leg lateral hops in a row',
    legs: 'each',
    tier: 'high',
    fromLevel: 'advanced',
    stage: 4,
    ...HARD_EACH,
    cue: 'Three hops to one side, same foot, short contacts, and back.',
    stop: 'The ankle rolls, or the hops get shorter.',
  },
]);

export const LATERAL_FAST: readonly Drill[] = [
  ...LINE,
  ...SIDE_BOUNCE,
  ...ZIGZAG,
  ...SKIP_SIDE,
  ...SIDE_HURDLE,
  ...SKATER_SERIES,
];
