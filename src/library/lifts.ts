// All lifts of the library, pattern by pattern, in order of preference within a pattern. Read through Library
// (index.ts), where a plan's own lifts are added to these. A maximum serves another lift only where its row says so.

import { CALF_AND_HAMSTRING } from './lifts/calf-and-hamstring.ts';
import { HINGES } from './lifts/hinges.ts';
import { JUMPS_AND_PULLS } from './lifts/jumps-and-pulls.ts';
import { SINGLE_LEG } from './lifts/single-leg.ts';
import { SQUATS } from './lifts/squats.ts';
import { TRUNK } from './lifts/trunk.ts';
import { UPPER } from './lifts/upper.ts';
import type { Lift } from './types.ts';

export const LIFTS: readonly Lift[] = [
  ...SQUATS,
  ...HINGES,
  ...SINGLE_LEG,
  ...CALF_AND_HAMSTRING,
  ...JUMPS_AND_PULLS,
  ...UPPER,
  ...TRUNK,
];
