// The library as a plan carries it: drills, lifts and families by id, the built-in ones with the plan's own added or put
// in their place. Made once by plan/resolve; read by every later stage. Families are ordered from easiest to hardest.

import { DRILLS } from './drills.ts';
import { LIFTS } from './lifts.ts';
import { kindsOf } from './lift-facts.ts';
import type { Drill, Lift } from './types.ts';
import { groupsByKey } from '../util/grouped.ts';

export interface Library {
  /** In the library's order, a plan's own behind. */
  readonly drills: ReadonlyMap<string, Drill>;
  readonly lifts: ReadonlyMap<string, Lift>;
  /** Drills of each family, lowest rung first; of equal rungs the one whose id is first by code unit. */
  readonly families: ReadonlyMap<string, readonly Drill[]>;
}

export const BUILT_IN: Library = makeLibrary(DRILLS, LIFTS);

/** A library with these drills and lifts added; one with an id that is there takes its place, and its place in order. */
export function extendLibrary(library: Library, drills: readonly Drill[], lifts: readonly Lift[]): Library {
  if (drills.length === 0 && lifts.length === 0) return library;
  return makeLibrary([...library.drills.values(), ...drills], [...library.lifts.values(), ...lifts]);
}

/** The family a drill belongs to, lowest rung first. */
export function getFamily(library: Library, drill: Drill): readonly Drill[] {
  const family = library.families.get(drill.family);
  if (family === undefined) throw new Error(`the drill ${drill.id} is not of this library`);
  return family;
}

function makeLibrary(drills: readonly Drill[], lifts: readonly Lift[]): Library {
  const byId = new Map(drills.map((drill) => [drill.id, drill]));
  return {
    drills: byId,
    lifts: withKinds(new Map(lifts.map((lift) => [lift.id, lift]))),
    families: groupFamilies([...byId.values()]),
  };
}

/** What a lift is a kind of hangs on the rows of others, which a plan may put in their places. */
function withKinds(lifts: ReadonlyMap<string, Lift>): ReadonlyMap<string, Lift> {
  return new Map([...lifts].map(([id, lift]) => [id, Object.assign({}, lift, { kinds: kindsOf(lift, lifts) })]));
}

function groupFamilies(drills: readonly Drill[]): ReadonlyMap<string, readonly Drill[]> {
  const families = groupsByKey(drills, ({ family }) => family);
  for (const family of families.values()) family.sort(byRung);
  return families;
}

function byRung(a: Drill, b: Drill): number {
  if (a.rung !== b.rung) return a.rung - b.rung;
  return a.id < b.id ? -1 : 1;
}
