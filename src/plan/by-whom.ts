// Items of one list by whom they are for, so that finding a squad's doesn't walk those of all other squads: a plan of many
// squads has slots and practice of its own for each. Called once for each list of a plan.

import { addTo } from '../util/grouped.ts';
import type { Athlete, Who } from './types.ts';

interface ForSomebody {
  readonly who: Who;
}

/** Ids of the athletes that an item names. */
export const namedIn = (who: Who): readonly string[] => (who.kind === 'everybody' ? [] : who.athletes);

/** Gives what of a list is for an athlete: each item once, in the order of the list. */
export function byWhom<T extends ForSomebody>(
  items: readonly T[],
): (athlete: Pick<Athlete, 'id' | 'squad'>) => readonly T[] {
  const everybody: number[] = [];
  const squads = new Map<string, number[]>();
  const athletes = new Map<string, number[]>();
  for (const [at, { who }] of items.entries()) {
    if (who.kind === 'everybody') everybody.push(at);
    else {
      for (const squad of who.squads) addTo(squads, squad, at);
      for (const athlete of who.athletes) addTo(athletes, athlete, at);
    }
  }
  return ({ id, squad }) => {
    const ofSquad = squad === undefined ? undefined : squads.get(squad);
    const places = new Set([...everybody, ...(ofSquad ?? []), ...(athletes.get(id) ?? [])]);
    return [...places].toSorted((a, b) => a - b).flatMap((at) => items[at] ?? []);
  };
}
