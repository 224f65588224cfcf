// The grid of an athlete, laid once for all of a squad who have nothing of their own in it: no limit, no absence, no
// pinned rest, and no sport with other jumps on a day of competition. Called by season-terms.ts.

import { itemsOf } from '../plan/items-of.ts';
import type { AthleteItems } from '../plan/items-of.ts';
import type { RuleBook } from '../plan/rule-book.ts';
import { usualJumps } from '../plan/sport-of.ts';
import type { Athlete, Plan } from '../plan/types.ts';
import { layGrid } from './grid.ts';
import type { AthleteGrid } from './types.ts';

interface Laid {
  readonly plan: Plan;
  readonly items: AthleteItems;
  /** Jumps of a day of competition for which the plan writes none. */
  readonly usual: number;
  readonly grid: AthleteGrid;
}

/** Of one squad: with the waivers and rules of some who are named, for instance. */
const KINDS_KEPT = 8;

/** By the slots, which are one list for all of a squad. */
const laid = new WeakMap<AthleteItems['slots'], Laid[]>();

/** As `layGrid`. */
export function gridOf(plan: Plan, athlete: Athlete, book: RuleBook): AthleteGrid {
  const items = itemsOf(plan, athlete);
  if (hasOwnDays(athlete, items)) return layGrid(plan, athlete, book);
  const known = laid.get(items.slots) ?? [];
  laid.set(items.slots, known);
  const usual = usualJumps(plan, athlete);
  const same = known.find((one) => one.plan === plan && one.usual === usual && isAlike(one.items, items));
  if (same !== undefined) return { ...same.grid, athlete };
  const grid = layGrid(plan, athlete, book);
  if (known.length < KINDS_KEPT) known.push({ plan, items, usual, grid });
  return grid;
}

const hasOwnDays = ({ limits, away }: Athlete, { pins }: AthleteItems): boolean =>
  limits.length > 0 || away.length > 0 || pins.some(({ effects }) => effects.some(({ kind }) => kind === 'rest'));

/** All else that a grid is laid of. */
const isAlike = (one: AthleteItems, other: AthleteItems): boolean =>
  one.closures === other.closures &&
  one.competitions === other.competitions &&
  one.practice === other.practice &&
  one.tests === other.tests &&
  one.ruleChanges === other.ruleChanges &&
  one.waivers === other.waivers;
