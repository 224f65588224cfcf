// The drill families of the library at one place for athletes who stand alike: each family's rungs from easiest to
// hardest, and what holds back those that may not be done. Built once for each standing and place, and read for every
// session.

import type { TrainingPlace } from '../../plan/types.ts';
import type { Drill } from '../../library/types.ts';
import { boundedCache } from './bounded-cache.ts';
import type { Refusal } from './gates.ts';
import { drillPlaceRefusal, drillRefusal } from './gates.ts';
import type { Standing } from './standing.ts';

export interface Rung {
  readonly drill: Drill;
  /** Absent: it may be done. */
  readonly refusal?: Refusal;
}

export interface Ladder {
  /** Numbered in the order of building, for use in keys. */
  readonly number: number;
  readonly place: TrainingPlace;
  readonly standing: Standing;
  /** Rungs from easiest to hardest; families in the library's order. */
  readonly families: ReadonlyMap<string, readonly Rung[]>;
}

export interface Ladders {
  readonly of: (standing: Standing, place: TrainingPlace) => Ladder;
}

/** Ladders of these families, from the easiest drill of each on. Who stands alike at one place gets the same ladder. */
export function ladders(families: ReadonlyMap<string, readonly Drill[]>): Ladders {
  const built = boundedCache<Ladder>(LADDERS_KEPT);
  const asked = new WeakMap<Standing, Map<TrainingPlace, Ladder>>();
  let count = 0;
  const make = (standing: Standing, place: TrainingPlace): Ladder =>
    built(`${place.id}|${standing.key}`, () => {
      count += 1;
      return { number: count, place, standing, families: rungsOf(families, standing, place) };
    });
  return {
    of: (standing, place) => {
      const known = asked.get(standing) ?? new Map<TrainingPlace, Ladder>();
      const ladder = known.get(place) ?? make(standing, place);
      known.set(place, ladder);
      asked.set(standing, known);
      return ladder;
    },
  };
}

/** Athletes with limits have ladders of their own, so a big squad would fill the memory with them. */
const LADDERS_KEPT = 512;

function rungsOf(
  families: ReadonlyMap<string, readonly Drill[]>,
  standing: Standing,
  place: TrainingPlace,
): ReadonlyMap<string, readonly Rung[]> {
  const rungs = new Map<string, readonly Rung[]>();
  for (const [family, drills] of families)
    rungs.set(
      family,
      drills.map((drill) => rungOf(drill, standing, place)),
    );
  return rungs;
}

function rungOf(drill: Drill, standing: Standing, place: TrainingPlace): Rung {
  const held = drillRefusal(drill, standing) ?? drillPlaceRefusal(drill, place);
  return held === undefined ? { drill } : { drill, refusal: held };
}
