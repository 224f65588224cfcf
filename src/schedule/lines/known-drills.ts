// The drills an athlete has done this season, and how many of this week are new. Everything in the first week with jumps
// counts as familiar: the plan doesn't know what came before, and a season has to start with something.

import type { Drill } from '../../library/types.ts';

export interface KnownDrills {
  readonly has: (drill: Drill) => boolean;
  /** Equal for athletes who know the same drills. */
  readonly number: () => number;
  /** New drills of the running week. */
  readonly newThisWeek: () => number;
  /** Whether the first week with jumps is over. */
  readonly settled: () => boolean;
  readonly startWeek: () => void;
  readonly note: (drills: readonly Drill[]) => void;
}

/** `numberOf` gives equal texts one number. */
export function knownDrills(numberOf: (text: string) => number): KnownDrills {
  const known = new Set<Drill>();
  let number = 0;
  let started = false;
  let settled = false;
  let news = 0;
  return {
    has: (drill) => known.has(drill),
    number: () => number,
    newThisWeek: () => news,
    settled: () => settled,
    startWeek: () => {
      settled = started;
      news = 0;
    },
    note: (drills) => {
      let added = false;
      for (const drill of drills) {
        if (known.has(drill)) continue;
        known.add(drill);
        added = true;
        news += settled ? 1 : 0;
      }
      started ||= drills.length > 0;
      if (added)
        number = numberOf(
          [...known]
            .map((drill) => drill.id)
            .toSorted()
            .join(' '),
        );
    },
  };
}
