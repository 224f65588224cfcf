// The groups a squad trains in, each with a pattern that is told apart without colour. Groups of the plan in the order of
// their names; athletes without one stand under their squad, in a squad of several sports under their sport as well, and
// those without any of these under nothing.

import { sportOf } from '../plan/sport-of.ts';
import type { Athlete, Plan } from '../plan/types.ts';

export interface GroupMark {
  readonly name: string;
  /** From 0; the same on every page of a plan. Absent for those who are in no group. */
  readonly pattern?: number;
}

export interface GroupMarks {
  readonly of: (athlete: Grouped) => GroupMark | undefined;
}

type Grouped = Pick<Athlete, 'group' | 'squad' | 'sport'>;

/** The mark of an athlete: name and pattern of the group, the name alone of squad and sport, or undefined. */
export function createGroupMarks(plan: Pick<Plan, 'athletes' | 'season'>): GroupMarks {
  const { athletes } = plan;
  const names = new Set(athletes.flatMap(({ group }) => group ?? []));
  const patterns = new Map([...names].toSorted().map((name, index) => [name, index]));
  const squadName = squadNames(plan);
  return {
    of: (athlete) => {
      const { group } = athlete;
      const pattern = group === undefined ? undefined : patterns.get(group);
      const name = group ?? squadName(athlete);
      return name === undefined ? undefined : { name, ...(pattern !== undefined && { pattern }) };
    },
  };
}

/** The squad, or in one of several sports `seniors, long jump`. */
function squadNames(plan: Pick<Plan, 'athletes' | 'season'>): (athlete: Grouped) => string | undefined {
  const sports = new Map<string | undefined, Set<string>>();
  for (const athlete of plan.athletes) {
    const ofSquad = sports.get(athlete.squad) ?? new Set();
    sports.set(athlete.squad, ofSquad.add(sportOf(plan, athlete).id));
  }
  return (athlete) => {
    const { squad } = athlete;
    if ((sports.get(squad)?.size ?? 0) < 2) return squad;
    const { name } = sportOf(plan, athlete);
    return squad === undefined ? name : `${squad}, ${name.toLowerCase()}`;
  };
}
