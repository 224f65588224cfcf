// The search behind allot.ts: of all ways in which the drills' own sets and reps add up to a session, the cheapest, and of
// equally cheap ones the first. It is what a season is made of most often, and mostly before V8 has optimised it, so that
// loops count and nothing is put into objects on the way.

import { ALLOTTING } from '../../library/families.ts';
import type { Drill, Range } from '../../library/types.ts';
import { PERCENT } from '../../util/units.ts';
import { directionCost, fastCost } from './allot-target.ts';
import type { Target } from './allot-target.ts';
import type { Choice } from './choices.ts';

export interface Candidate {
  readonly drill: Drill;
  /** Most contacts it may have in this session. */
  readonly most: number;
  /** Sets a coach has pinned. */
  readonly sets?: number;
  /** It can't be left out. */
  readonly keep: boolean;
}

export interface Found {
  /** One for each candidate, in their order; undefined where the drill is left out. */
  readonly choices: readonly (Choice | undefined)[];
  readonly cost: number;
}

/** One drill or the last of them, with what is left for it, what those before it come to and cost; directions in hundredths. */
type Step = (index: number, left: number, vertical: number, horizontal: number, fast: number, cost: number) => void;

/** More than a sum of costs may be off by rounding. */
const TOLERANCE = 1e-6;

/**
 * Depth first over the options of each drill in turn, leaving out the branches that cost as much as `most` or the best
 * even if each line left were the cheapest and what is left were shared out as the target would have it.
 */
export function search(
  candidates: readonly Candidate[],
  options: readonly (readonly Choice[])[],
  contacts: number,
  target: Target,
  most: number,
): Found | undefined {
  const last = candidates.length - 1;
  const final = candidates[last];
  if (final === undefined) return undefined;
  const { keep: mustStay, drill } = final;
  const finalOptions = byContacts(options[last] ?? []);
  const reach = furthest(options);
  const rests = restsOf(candidates);
  const evenPart = contacts / candidates.length;
  const uneven = options.map((of) => of.map((choice) => unevenCost(choice.contacts, evenPart)));
  const ahead = cheapestLines(candidates, options, uneven);
  const chosen: (Choice | undefined)[] = candidates.map(() => undefined);
  let best: Found | undefined;
  let bestCost = most;

  /** What is left is the last drill's. */
  const finish: Step = (_, left, vertical, horizontal, fast, cost) => {
    const choice = finalOptions[left];
    if (choice === undefined && (left > 0 || mustStay)) return;
    const own = choice === undefined ? cost + ALLOTTING.leftOut : cost + choice.cost + unevenCost(left, evenPart);
    if (own >= bestCost) return;
    const lateral = PERCENT * (contacts - left) - vertical - horizontal;
    const { direction, cycle } = drill;
    const total =
      own +
      (directionCost(vertical + direction.vertical * left - target.vertical, target) +
        directionCost(horizontal + direction.horizontal * left - target.horizontal, target) +
        directionCost(lateral + direction.lateral * left - target.lateral, target) +
        fastCost(fast + (cycle === 'fast' ? left : 0), target));
    if (total >= bestCost) return;
    bestCost = total;
    best = { choices: [...chosen.slice(0, last), choice], cost: total };
  };
  const visit: Step = (index, left, vertical, horizontal, fast, cost) => {
    const candidate = candidates[index];
    const rest = rests[index];
    if (candidate === undefined || rest === undefined || left > (reach[index] ?? 0)) return;
    const lateral = PERCENT * (contacts - left) - vertical - horizontal;
    const allowed = bestCost - cost - (ahead[index] ?? 0) + TOLERANCE;
    if (isOver(allowed, rest, left, vertical, horizontal, lateral, fast, target)) return;
    const { direction, cycle } = candidate.drill;
    const isNextLast = index + 1 === last;
    const next = isNextLast ? finish : visit;
    const own = options[index] ?? [];
    const ownUneven = uneven[index] ?? [];
    for (let at = 0; at < own.length; at += 1) {
      const choice = own[at];
      if (choice === undefined || choice.contacts > left) break;
      const part = choice.contacts;
      if (isNextLast && part < left && finalOptions[left - part] === undefined) continue;
      chosen[index] = choice;
      next(
        index + 1,
        left - part,
        vertical + direction.vertical * part,
        horizontal + direction.horizontal * part,
        fast + (cycle === 'fast' ? part : 0),
        cost + choice.cost + (ownUneven[at] ?? 0),
      );
    }
    chosen[index] = undefined;
    if (!candidate.keep) next(index + 1, left, vertical, horizontal, fast, cost + ALLOTTING.leftOut);
  };
  (last === 0 ? finish : visit)(0, contacts, 0, 0, 0, 0);
  return best;
}

/** The first option for each number of contacts. */
function byContacts(options: readonly Choice[]): readonly (Choice | undefined)[] {
  const by: (Choice | undefined)[] = [];
  for (const choice of options) by[choice.contacts] ??= choice;
  return by;
}

/** What a line of so many contacts costs for being no equal part. */
const unevenCost = (contacts: number, evenPart: number): number => (contacts - evenPart) ** 2 * ALLOTTING.even;

/** No more than the lines of the drills from each index on cost, whatever they are; without a way for one, without end. */
function cheapestLines(
  candidates: readonly Candidate[],
  options: readonly (readonly Choice[])[],
  uneven: readonly (readonly number[])[],
): readonly number[] {
  const ahead: number[] = [];
  let sum = 0;
  for (let index = candidates.length - 1; index >= 0; index -= 1) {
    let cheapest: number = candidates[index]?.keep === true ? Number.POSITIVE_INFINITY : ALLOTTING.leftOut;
    options[index]?.forEach((choice, at) => {
      cheapest = Math.min(cheapest, choice.cost + (uneven[index]?.[at] ?? 0));
    });
    sum += cheapest;
    ahead[index] = sum;
  }
  return ahead;
}

/** Least and most of each share, in per cents, that the drills from one on can give the contacts that are left. */
interface Rest {
  readonly vertical: Range;
  readonly horizontal: Range;
  readonly lateral: Range;
  readonly fast: Range;
}

/** By the index of the first of the drills. */
function restsOf(candidates: readonly Candidate[]): readonly Rest[] {
  const rests: Rest[] = [];
  for (let index = candidates.length - 1; index >= 0; index -= 1) {
    const candidate = candidates[index];
    if (candidate !== undefined) rests[index] = restWith(candidate.drill, rests[index + 1]);
  }
  return rests;
}

function restWith({ direction, cycle }: Drill, rest: Rest | undefined): Rest {
  return {
    vertical: rangeWith(direction.vertical, rest?.vertical),
    horizontal: rangeWith(direction.horizontal, rest?.horizontal),
    lateral: rangeWith(direction.lateral, rest?.lateral),
    fast: rangeWith(cycle === 'fast' ? 1 : 0, rest?.fast),
  };
}

function rangeWith(share: number, range: Range | undefined): Range {
  if (range === undefined) return { from: share, to: share };
  return { from: Math.min(range.from, share), to: Math.max(range.to, share) };
}

/**
 * Whether even the least departure costs as much as is allowed: each share of what is left taken as near its target as it
 * can come. No cost is negative, so the rest needn't be looked at once some of it is enough.
 */
function isOver(
  allowed: number,
  rest: Rest,
  left: number,
  vertical: number,
  horizontal: number,
  lateral: number,
  fast: number,
  target: Target,
): boolean {
  let cost = directionCost(nearest(vertical - target.vertical, rest.vertical, left), target);
  if (cost >= allowed) return true;
  cost += directionCost(nearest(horizontal - target.horizontal, rest.horizontal, left), target);
  if (cost >= allowed) return true;
  cost += directionCost(nearest(lateral - target.lateral, rest.lateral, left), target);
  if (cost >= allowed) return true;
  const least = fast + rest.fast.from * left;
  const most = fast + rest.fast.to * left;
  const nearestFast = least > target.fastTo ? least : most < target.fastFrom ? most : undefined;
  return nearestFast !== undefined && cost + fastCost(nearestFast, target) >= allowed;
}

/** How far off a share must stay, being so far off now, whichever of the rest's shares the contacts left have. */
function nearest(off: number, share: Range, left: number): number {
  const least = off + share.from * left;
  if (least > 0) return least;
  const most = off + share.to * left;
  return most < 0 ? most : 0;
}

/** The most contacts that the drills from each index on can take. */
function furthest(options: readonly (readonly Choice[])[]): readonly number[] {
  const reach: number[] = [];
  let sum = 0;
  for (let index = options.length - 1; index >= 0; index -= 1) {
    sum += options[index]?.at(-1)?.contacts ?? 0;
    reach[index] = sum;
  }
  return reach;
}
