// The names an editor can offer for drills, lifts and tests: those of the built-in library. A plan may add its own, so
// they are offered and not enforced here; names are bound in the plan.

import { BUILT_IN } from '../library/index.ts';
import { nameOf } from './words.ts';

const DRILL_NAMES: readonly string[] = [...BUILT_IN.drills.keys()].sort();

const LIFT_NAMES: readonly string[] = [...BUILT_IN.lifts.keys()].sort();

const EXERCISE_NAMES: readonly string[] = [...DRILL_NAMES, ...LIFT_NAMES].sort();

/** Tests that are neither a drill nor a lift of the library. */
export const TEST_NAMES: readonly string[] = [
  'drop-jump',
  'jump-and-reach',
  'repeated-jumps',
  'isometric-pull',
  'sprint',
];

/** Times that are measured with a jump; on record as rows of their own, of the same athlete, day, trial and way. */
export const JUMP_TIME_NAMES: readonly string[] = ['contact-time', 'take-off-time'];

export const drillName = nameOf('a drill', DRILL_NAMES, 'drill-name');
export const liftName = nameOf('a lift', LIFT_NAMES, 'lift-name');
export const exerciseName = nameOf('a drill or lift', EXERCISE_NAMES, 'exercise-name');
export const testedName = nameOf('a drill, lift or test', [...EXERCISE_NAMES, ...TEST_NAMES].sort(), 'tested-name');
