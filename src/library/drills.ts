// All drills of the library, family by family and each family from its easiest rung to its hardest. Read through
// Library (index.ts), where a plan's own drills are added to these. Tiers follow D1 to D5 and are common practice (C).

import { DROPS } from './drills/drops.ts';
import { HORIZONTAL_FAST } from './drills/horizontal-fast.ts';
import { HORIZONTAL_SLOW } from './drills/horizontal-slow.ts';
import { LANDINGS } from './drills/landings.ts';
import { LATERAL_FAST } from './drills/lateral-fast.ts';
import { LATERAL_SLOW } from './drills/lateral-slow.ts';
import { THROWS_AND_PIT } from './drills/throws-and-pit.ts';
import { VERTICAL_FAST } from './drills/vertical-fast.ts';
import { VERTICAL_SLOW } from './drills/vertical-slow.ts';
import { VERTICAL_TO } from './drills/vertical-to.ts';
import type { Drill } from './types.ts';

export const DRILLS: readonly Drill[] = [
  ...LANDINGS,
  ...VERTICAL_SLOW,
  ...VERTICAL_TO,
  ...VERTICAL_FAST,
  ...DROPS,
  ...HORIZONTAL_SLOW,
  ...THROWS_AND_PIT,
  ...HORIZONTAL_FAST,
  ...LATERAL_SLOW,
  ...LATERAL_FAST,
];
