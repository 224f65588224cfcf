// The plan's items that are for one athlete. Squads of a big plan have items of their own, so what a squad shares is
// sorted out once and kept with the plan; only athletes who are named themselves are looked up one by one.

import { byWhom, namedIn } from './by-whom.ts';
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
  readonly lists: Lists;
  readonly bySquad: Map<string | undefined, AthleteItems>;
  /** Of the athlete who is named and was asked for last: a season asks again and again. */
  last?: { readonly id: string; readonly squad: string | undefined; readonly items: AthleteItems };
}

/** What of each list is for somebody. */
type Lists = { readonly [K in keyof AthleteItems]: (athlete: Pick<Athlete, 'id' | 'squad'>) => AthleteItems[K] };

const indexes = new WeakMap<Plan, Index>();

/**
 * Slots, competitions, pins and the rest that are for this athlete, by squad or by name or for everybody. A list of which
 * somebody who is named has what all of the squad have is the very same.
 */
export function itemsOf(plan: Plan, athlete: Pick<Athlete, 'id' | 'squad'>): AthleteItems {
  const index = indexOf(plan);
  const squad = itemsOfSquad(index, athlete.squad);
  return index.named.has(athlete.id) ? itemsOfNamed(index, athlete, squad) : squad;
}

function itemsOfSquad({ bySquad, lists }: Index, squad: string | undefined): AthleteItems {
  const known = bySquad.get(squad) ?? pickItems(lists, squad === undefined ? NOBODY : { ...NOBODY, squad });
  bySquad.set(squad, known);
  return known;
}

/** Named by no item. */
const NOBODY = { id: '' };

function itemsOfNamed(index: Index, athlete: Pick<Athlete, 'id' | 'squad'>, others: AthleteItems): AthleteItems {
  const { id, squad } = athlete;
  if (index.last?.id === id && index.last.squad === squad) return index.last.items;
  const items = pickItems(index.lists, athlete, others);
  index.last = { id, squad, items };
  return items;
}

function indexOf(plan: Plan): Index {
  const known = indexes.get(plan);
  if (known !== undefined) return known;
  const named = new Set(
    LISTS.flatMap((list) => plan[list].flatMap((item: { readonly who: Who }) => namedIn(item.who))),
  );
  const index: Index = { named, lists: listsOf(plan), bySquad: new Map() };
  indexes.set(plan, index);
  return index;
}

function listsOf(plan: Plan): Lists {
  return {
    slots: byWhom(plan.slots),
    competitions: byWhom(plan.competitions),
    closures: byWhom(plan.closures),
    practice: byWhom(plan.practice),
    tests: byWhom(plan.tests),
    ruleChanges: byWhom(plan.ruleChanges),
    pins: byWhom(plan.pins),
    always: byWhom(plan.always),
    waivers: byWhom(plan.waivers),
    uses: byWhom(plan.uses),
  };
}

function pickItems(lists: Lists, athlete: Pick<Athlete, 'id' | 'squad'>, others?: AthleteItems): AthleteItems {
  const mine = <T>(
    items: (athlete: Pick<Athlete, 'id' | 'squad'>) => readonly T[],
    theirs?: readonly T[],
  ): readonly T[] => {
    const found = items(athlete);
    const same = theirs?.length === found.length && found.every((item, index) => item === theirs[index]);
    return same ? theirs : found;
  };
  return {
    slots: mine(lists.slots, others?.slots),
    competitions: mine(lists.competitions, others?.competitions),
    closures: mine(lists.closures, others?.closures),
    practice: mine(lists.practice, others?.practice),
    tests: mine(lists.tests, others?.tests),
    ruleChanges: mine(lists.ruleChanges, others?.ruleChanges),
    pins: mine(lists.pins, others?.pins),
    always: mine(lists.always, others?.always),
    waivers: mine(lists.waivers, others?.waivers),
    uses: mine(lists.uses, others?.uses),
  };
}
