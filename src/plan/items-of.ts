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
  /** Of the athlete who is named and was asked for last: a season asks again and again. */
  last?: { readonly id: string; readonly squad: string | undefined; readonly items: AthleteItems };
}

const indexes = new WeakMap<Plan, Index>();

/**
 * Slots, competitions, pins and the rest that are for this athlete, by squad or by name or for everybody. A list of which
 * somebody who is named has what all of the squad have is the very same.
 */
export function itemsOf(plan: Plan, athlete: Pick<Athlete, 'id' | 'squad'>): AthleteItems {
  const index = indexOf(plan);
  const squad = itemsOfSquad(plan, index, athlete.squad);
  return index.named.has(athlete.id) ? itemsOfNamed(plan, index, athlete, squad) : squad;
}

function itemsOfSquad(plan: Plan, { bySquad }: Index, squad: string | undefined): AthleteItems {
  const known = bySquad.get(squad) ?? pickItems(plan, squad === undefined ? NOBODY : { ...NOBODY, squad });
  bySquad.set(squad, known);
  return known;
}

/** Named by no item. */
const NOBODY = { id: '' };

function itemsOfNamed(
  plan: Plan,
  index: Index,
  athlete: Pick<Athlete, 'id' | 'squad'>,
  others: AthleteItems,
): AthleteItems {
  const { id, squad } = athlete;
  if (index.last?.id === id && index.last.squad === squad) return index.last.items;
  const items = pickItems(plan, athlete, others);
  index.last = { id, squad, items };
  return items;
}

function indexOf(plan: Plan): Index {
  const known = indexes.get(plan);
  if (known !== undefined) return known;
  const named = new Set(
    LISTS.flatMap((list) => plan[list].flatMap((item: { readonly who: Who }) => namedIn(item.who))),
  );
  const index: Index = { named, bySquad: new Map() };
  indexes.set(plan, index);
  return index;
}

function namedIn(who: Who): readonly string[] {
  return who.kind === 'everybody' ? [] : who.athletes;
}

function pickItems(plan: Plan, athlete: Pick<Athlete, 'id' | 'squad'>, others?: AthleteItems): AthleteItems {
  const mine = <T extends { readonly who: Who }>(items: readonly T[], theirs?: readonly T[]): readonly T[] => {
    const found = items.filter((item) => appliesTo(item.who, athlete));
    const same = theirs?.length === found.length && found.every((item, index) => item === theirs[index]);
    return same ? theirs : found;
  };
  return {
    slots: mine(plan.slots, others?.slots),
    competitions: mine(plan.competitions, others?.competitions),
    closures: mine(plan.closures, others?.closures),
    practice: mine(plan.practice, others?.practice),
    tests: mine(plan.tests, others?.tests),
    ruleChanges: mine(plan.ruleChanges, others?.ruleChanges),
    pins: mine(plan.pins, others?.pins),
    always: mine(plan.always, others?.always),
    waivers: mine(plan.waivers, others?.waivers),
    uses: mine(plan.uses, others?.uses),
  };
}
