// How cheap a way to share out a session can still become: bounds that allot-search.ts leaves branches out by. They are
// looked at for each branch and mostly before V8 has optimised it, so what they compare is kept whole, in ten-thousandths of a
// cost: a number that isn't whole would be a new object each time.

import { ALLOTTING } from '../../library/families.ts';
import type { Drill, Range } from '../../library/types.ts';
import { PERCENT } from '../../util/units.ts';
import { fastCost } from './allot-target.ts';
import type { Target } from './allot-target.ts';
import type { Candidate, Choice } from './choices.ts';

/** Ten-thousandths of a cost: hundredths of a contact squared. */
const PARTS = PERCENT * PERCENT;

/** More than a sum of costs may be off by rounding. */
const TOLERANCE = 1e-6;

/** The bound, in ten-thousandths, of a branch that may still cost so much. */
export const allowedBounds = (cost: number): number => Math.ceil((cost + TOLERANCE) * PARTS);

/** Whether what a whole session comes to costs as much as is allowed for its directions and fast work alone. */
export function isOff(
  allowed: number,
  vertical: number,
  horizontal: number,
  lateral: number,
  fast: number,
  target: Target,
): boolean {
  const off =
    departure(vertical - target.vertical, target) +
    departure(horizontal - target.horizontal, target) +
    departure(lateral - target.lateral, target);
  if (off >= allowed) return true;
  const isInside = fast >= target.fastFrom && fast <= target.fastTo;
  return !isInside && off + fastCost(fast, target) * PARTS >= allowed;
}

/** As `directionCost`, in ten-thousandths. */
function departure(hundredths: number, { last, slack }: Target): number {
  const size = hundredths * hundredths * ALLOTTING.direction;
  return last && (hundredths > slack || -hundredths > slack) ? size + ALLOTTING.directionNamed * PARTS : size;
}

/** No more than the lines of the drills from each index on cost, whatever they are; without a way for one, without end. */
export function cheapestLines(
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

/** The most contacts that the drills from each index on can take. */
export function furthest(options: readonly (readonly Choice[])[]): readonly number[] {
  const reach: number[] = [];
  let sum = 0;
  for (let index = options.length - 1; index >= 0; index -= 1) {
    sum += options[index]?.at(-1)?.contacts ?? 0;
    reach[index] = sum;
  }
  return reach;
}

/** Least and most of each share, in per cents, that the drills from one on can give the contacts that are left. */
export interface Rest {
  readonly vertical: Range;
  readonly horizontal: Range;
  readonly lateral: Range;
  readonly fast: Range;
}

/** By the index of the first of the drills. */
export function restsOf(candidates: readonly Candidate[]): readonly Rest[] {
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
export function isOver(
  allowed: number,
  rest: Rest,
  left: number,
  vertical: number,
  horizontal: number,
  lateral: number,
  fast: number,
  target: Target,
): boolean {
  let cost = departure(nearest(vertical - target.vertical, rest.vertical, left), target);
  if (cost >= allowed) return true;
  cost += departure(nearest(horizontal - target.horizontal, rest.horizontal, left), target);
  if (cost >= allowed) return true;
  cost += departure(nearest(lateral - target.lateral, rest.lateral, left), target);
  if (cost >= allowed) return true;
  const least = fast + rest.fast.from * left;
  const most = fast + rest.fast.to * left;
  const nearestFast = least > target.fastTo ? least : most < target.fastFrom ? most : undefined;
  return nearestFast !== undefined && cost + fastCost(nearestFast, target) * PARTS >= allowed;
}

/** How far off a share must stay, being so far off now, whichever of the rest's shares the contacts left have. */
function nearest(off: number, share: Range, left: number): number {
  const least = off + share.from * left;
  if (least > 0) return least;
  const most = off + share.to * left;
  return most < 0 ? most : 0;
}
