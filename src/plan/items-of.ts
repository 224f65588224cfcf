// The plan's items that are for one athlete. Squads of a big plan have items of their own, so what a squad shares is
// sorted out once and kept with the plan; only athletes who are named themselves are looked up one by one.

import { appliesTo } from './applies.ts';
import type { Athlete, Plan, Who } from './types.ts';

const LISTS = [
  'slots',
  'competitions',
  'closures',
  'practice',
  'tests',
  'ruleChanges',
  'pins',
  'always',
  'waivers',
  'uses',
] as const;

/** Each list in the plan's own order. */
export type AthleteItems = Pick<Plan, (typeof LISTS)[number]>;

interface Index {
  readonly named: ReadonlySet<string>;
  readonly bySquad: Map<string | undefined, AthleteItems>;
}

const indexes = new WeakMap<Plan, Index>();

/** Slots, competitions, pins and the rest that are for this athlete, by squad or by name or for everybody. */
export function itemsOf(plan: Plan, athlete: Pick<Athlete, 'id' | 'squad'>): AthleteItems {
  const index = indexOf(plan);
  if (index.named.has(athlete.id)) return pickItems(plan, athlete);
  const known = index.bySquad.get(athlete.squad) ?? pickItems(plan, athlete);
  index.bySquad.set(athlete.squad, known);
  return known;
}

function indexOf(plan: Plan): Index {
  const known = indexes.get(plan);
  if (known !== undefined) return known;
  const named = new Set(
    LISTS.flatMap((list) => plan[list].flatMap((item: { readonly who: Who }) => namedIn(item.who))),
  );
  const index = { named, bySquad: new Map() };
  indexes.set(plan, index);
  return index;
}

function namedIn(who: Who): readonly string[] {
  return who.kind === 'everybody' ? [] : who.athletes;
}

function pickItems(plan: Plan, athlete: Pick<Athlete, 'id' | 'squad'>): AthleteItems {
  const mine = <T extends { readonly who: Who }>(items: readonly T[]): readonly T[] =>
    items.filter((item) => appliesTo(item.who, athlete));
  return {
    slots: mine(plan.slots),
    competitions: mine(plan.competitions),
    closures: mine(plan.closures),
    practice: mine(plan.practice),
    tests: mine(plan.tests),
    ruleChanges: mine(plan.ruleChanges),
    pins: mine(plan.pins),
    always: mine(plan.always),
    waivers: mine(plan.waivers),
    uses: mine(plan.uses),
  };
}
