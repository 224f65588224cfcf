// What many athletes' audits look up in a plan, gathered once for each plan: results of tests by athlete, and how many
// athletes are sure to share a station. Kept beside the plan it was made from, so that a big squad isn't walked again
// for each of its athletes.

import type { Athlete, Plan, Slot, TestRow } from '../plan/types.ts';
import { appliesTo } from '../plan/applies.ts';
import { groupsByKey } from '../util/grouped.ts';
import { sportOf } from '../plan/sport-of.ts';

export interface PlanIndex {
  /** Results of tests, in order of day. */
  readonly testsBy: (athlete: string) => readonly TestRow[];
  /** How many athletes come to a slot with the same squad, group, sport, levels and clearances, and with nothing in their way. */
  readonly alike: (slot: Slot, athlete: Athlete) => number;
}

const indexes = new WeakMap<Plan, PlanIndex>();

/**
 * The index of a plan, made when it is first asked for and kept as long as the plan is. Who has no row has an empty
 * list.
 */
export function planIndex(plan: Plan): PlanIndex {
  const known = indexes.get(plan);
  if (known !== undefined) return known;
  const made = makeIndex(plan);
  indexes.set(plan, made);
  return made;
}

function makeIndex(plan: Plan): PlanIndex {
  const tests = groupsByKey(plan.record.tests, ({ athlete }) => athlete);
  const alike = new Map<Slot, ReadonlyMap<string, number>>();
  const bySquad = groupsByKey(plan.athletes, ({ squad }) => squad);
  return {
    testsBy: (athlete) => tests.get(athlete) ?? [],
    alike: (slot, athlete) => {
      const counts = alike.get(slot) ?? countAlike(plan, mayBeMeant(plan, bySquad, slot), slot);
      alike.set(slot, counts);
      return counts.get(likeness(plan, athlete)) ?? 0;
    },
  };
}

type Squads = ReadonlyMap<string | undefined, readonly Athlete[]>;

/** Everybody a slot is for is among them. Of a slot for one squad of hundreds only its members are looked at. */
function mayBeMeant({ athletes }: Plan, squads: Squads, { who }: Slot): readonly Athlete[] {
  if (who.kind === 'everybody' || who.athletes.length > 0) return athletes;
  return [...new Set(who.squads)].flatMap((squad) => squads.get(squad) ?? []);
}

function countAlike(plan: Plan, athletes: readonly Athlete[], slot: Slot): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const athlete of athletes) {
    if (!appliesTo(slot.who, athlete) || isHeldBack(athlete)) continue;
    const key = likeness(plan, athlete);
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return counts;
}

function isHeldBack(athlete: Athlete): boolean {
  return athlete.limits.length > 0 || athlete.returning.length > 0 || athlete.away.length > 0;
}

function likeness(plan: Plan, athlete: Athlete): string {
  const levels = athlete.levels.map((step) => `${step.is}@${step.from ?? ''}`);
  return [
    athlete.squad ?? '',
    athlete.group ?? '',
    sportOf(plan, athlete).id,
    ...levels,
    ...[...athlete.cleared].sort(),
  ].join(' ');
}
