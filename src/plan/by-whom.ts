// Items of one list by whom they are for, so that finding a squad's doesn't walk those of all other squads: a plan of many
// squads has slots and practice of its own for each. Called by items-of.ts, once for each list of a plan.

import type { Athlete, Who } from './types.ts';

interface ForSomebody {
  readonly who: Who;
}

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
      for (const squad of who.squads) add(squads, squad, at);
      for (const athlete of who.athletes) add(athletes, athlete, at);
    }
  }
  return ({ id, squad }) => {
    const ofSquad = squad === undefined ? undefined : squads.get(squad);
    const places = new Set([...everybody, ...(ofSquad ?? []), ...(athletes.get(id) ?? [])]);
    return [...places].toSorted((a, b) => a - b).flatMap((at) => items[at] ?? []);
  };
}

function add(groups: Map<string, number[]>, name: string, at: number): void {
  const group = groups.get(name);
  if (group === undefined) groups.set(name, [at]);
  else group.push(at);
}
