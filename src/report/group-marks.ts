// The groups a squad trains in, each with a pattern that is told apart without colour. Groups of the plan in the order of
// their names; athletes without one stand under their squad, and those without either under nothing.

import type { Athlete, Plan } from '../plan/types.ts';

export interface GroupMark {
  readonly name: string;
  /** From 0; the same on every page of a plan. Absent for those who are in no group. */
  readonly pattern?: number;
}

export interface GroupMarks {
  readonly of: (athlete: Pick<Athlete, 'group' | 'squad'>) => GroupMark | undefined;
}

/** The mark of an athlete: name and pattern of the group, the name alone of a squad, or undefined. */
export function createGroupMarks({ athletes }: Pick<Plan, 'athletes'>): GroupMarks {
  const names = new Set(athletes.flatMap(({ group }) => group ?? []));
  const patterns = new Map([...names].toSorted().map((name, index) => [name, index]));
  return {
    of: ({ group, squad }) => {
      const pattern = group === undefined ? undefined : patterns.get(group);
      const name = group ?? squad;
      return name === undefined ? undefined : { name, ...(pattern !== undefined && { pattern }) };
    },
  };
}
