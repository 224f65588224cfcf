// The names an editor can offer for drills, lifts and tests: those of the built-in library. A plan may add its own, so
// they are offered and not enforced here; names are bound in the plan.

import { BUILT_IN } from '../library/index.ts';

export const DRILL_NAMES: readonly string[] = [...BUILT_IN.drills.keys()].sort();

export const LIFT_NAMES: readonly string[] = [...BUILT_IN.lifts.keys()].sort();

export const EXERCISE_NAMES: readonly string[] = [...DRILL_NAMES, ...LIFT_NAMES].sort();

/** Tests that are neither a drill nor a lift of the library. */
export const TEST_NAMES: readonly string[] = [
  'drop-jump',
  'jump-and-reach',
  'repeated-jumps',
  'isometric-pull',
  'sprint',
];
