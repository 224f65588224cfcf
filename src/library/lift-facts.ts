// What follows from a lift's row and from those it names. Read by the gates and by what is told of limits.

import type { Lift } from './types.ts';

/**
 * Whether a lift is the one of that id or a kind of it: one that goes by its maximum, as a box squat by the back squat's,
 * that the library calls one, or that is a kind of a kind of it.
 */
export const isKindOf = ({ id, kinds }: Lift, other: string): boolean =>
  id === other || (kinds !== undefined && kinds.includes(other));

/** The ids of all other lifts that one is a kind of, the nearest first; undefined of one that is a kind of none. */
export function kindsOf(lift: Lift, lifts: ReadonlyMap<string, Lift>): readonly string[] | undefined {
  const met = new Set([lift.id]);
  // What is met while the set is walked is walked too, and in a circle nothing is met twice.
  for (const id of met) {
    const { maxOf, kindOf } = lifts.get(id) ?? {};
    if (maxOf !== undefined) met.add(maxOf);
    if (kindOf !== undefined) met.add(kindOf);
  }
  met.delete(lift.id);
  return met.size === 0 ? undefined : [...met];
}
