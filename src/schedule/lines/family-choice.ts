// Chooses the families of a block: the set whose best mixture comes nearest to the phase's directions and fast work,
// with few changes from the phase before. Every set of three to five of the likeliest families is looked at, called
// through a cache. The mixture here is a rough one in tenths; each session is shared out exactly later.

import { FAMILIES, FAMILY_COST } from '../../library/families.ts';
import type { DirectionShares, Range } from '../../library/types.ts';
import { PERCENT } from '../../util/units.ts';

/** A family as the members of a group would do it. */
export interface FamilyOption {
  readonly family: string;
  readonly direction: DirectionShares;
  readonly fast: boolean;
  /** Its usual rung is a drop jump. */
  readonly drop: boolean;
  /** Its usual rung is of the high tier, and nothing below it fits. */
  readonly high: boolean;
  readonly onlyHigh: boolean;
  /** Everything that doesn't depend on the other families: members left out, queues, what is usual. */
  readonly cost: number;
}

export interface FamilyAim {
  readonly directions: DirectionShares;
  readonly fast: Range;
  readonly highMost: number;
  /** Families of the phase before, or undefined for the first. */
  readonly before?: ReadonlySet<string>;
}

/** A family as the phase sees it. */
interface Likely {
  readonly option: FamilyOption;
  /** The phase before didn't have it. */
  readonly change: boolean;
  /** What it costs whatever stands beside it. */
  readonly own: number;
}

/**
 * The cheapest set, in the order of the options; all of them where there are too few to choose from. Families are tried
 * cheapest first, so that once one costs too much all behind it do.
 */
export function chooseFamilies(options: readonly FamilyOption[], aim: FamilyAim): readonly string[] {
  const likely = likeliest(options, aim);
  let best: readonly Likely[] = likely.slice(0, FAMILIES.least);
  let bestCost = Number.POSITIVE_INFINITY;
  const set: Likely[] = [];
  const visit = (from: number, soFar: number): void => {
    if (set.length >= FAMILIES.least) {
      const cost = costOf(set, soFar, aim, bestCost);
      if (cost < bestCost) {
        best = [...set];
        bestCost = cost;
      }
    }
    if (set.length === FAMILIES.most) return;
    for (let index = from; index < likely.length; index += 1) {
      const one = likely[index];
      if (one === undefined || soFar + one.own >= bestCost) return;
      set.push(one);
      visit(index + 1, soFar + one.own);
      set.pop();
    }
  };
  visit(0, 0);
  const chosen = new Set(best.map((one) => one.option));
  return options.filter((option) => chosen.has(option)).map((option) => option.family);
}

/** The cheapest few of each kind, cheapest first: families of one direction and cycle stand in for each other. */
function likeliest(options: readonly FamilyOption[], aim: FamilyAim): readonly Likely[] {
  const cheapestFirst = options.map((option) => asLikely(option, aim)).sort((a, b) => a.own - b.own);
  const kinds = new Map<string, number>();
  const kept = cheapestFirst.filter(({ option: { direction, fast, onlyHigh } }) => {
    const kind = `${direction.vertical}/${direction.horizontal}/${fast}/${onlyHigh}`;
    const count = (kinds.get(kind) ?? 0) + 1;
    kinds.set(kind, count);
    return count <= FAMILY_COST.ofOneKind;
  });
  return kept.slice(0, FAMILY_COST.lookedAt);
}

function asLikely(option: FamilyOption, aim: FamilyAim): Likely {
  const change = aim.before !== undefined && !aim.before.has(option.family);
  return { option, change, own: option.cost + (change ? FAMILY_COST.change : 0) };
}

/** `own` is what the families of the set cost each by itself. */
function costOf(set: readonly Likely[], own: number, aim: FamilyAim, bound: number): number {
  let cost = own + Math.abs(set.length - FAMILIES.usual) * FAMILY_COST.count;
  let changes = 0;
  let onlyHigh = 0;
  let high = false;
  let drop = false;
  // Tens of thousands of sets are looked at, and walking one by its index makes nothing that is thrown away.
  for (let index = 0; index < set.length; index += 1) {
    const one = set[index];
    if (one === undefined) continue;
    if (one.change) changes += 1;
    if (one.option.onlyHigh) onlyHigh += 1;
    high ||= one.option.high;
    drop ||= one.option.drop;
  }
  cost += Math.max(0, changes - FAMILIES.change) * FAMILY_COST.changeTooMany;
  cost += Math.max(0, onlyHigh - 1) * FAMILY_COST.secondHigh;
  if (aim.highMost > 0 && !high) cost += FAMILY_COST.noHighTier;
  if (aim.highMost >= FAMILY_COST.dropsFromHigh && !drop) cost += FAMILY_COST.noDrop;
  return cost >= bound ? cost : cost + nearestMixture(set, aim);
}

/** What the best mixture of a set is off the phase's shares. */
function nearestMixture(set: readonly Likely[], aim: FamilyAim): number {
  let best = Number.POSITIVE_INFINITY;
  for (const weights of mixturesOf(set.length)) best = Math.min(best, mixtureCost(set, weights, aim));
  return best;
}

function mixtureCost(set: readonly Likely[], weights: readonly number[], aim: FamilyAim): number {
  let vertical = 0;
  let horizontal = 0;
  let fast = 0;
  let high = 0;
  for (let index = 0; index < set.length; index += 1) {
    const option = set[index]?.option;
    const weight = weights[index] ?? 0;
    if (option === undefined) continue;
    vertical += (option.direction.vertical * weight) / PERCENT;
    horizontal += (option.direction.horizontal * weight) / PERCENT;
    if (option.fast) fast += weight;
    if (option.onlyHigh) high += weight;
  }
  const lateral = PERCENT - vertical - horizontal;
  const directions =
    (vertical - aim.directions.vertical) ** 2 +
    (horizontal - aim.directions.horizontal) ** 2 +
    (lateral - aim.directions.lateral) ** 2;
  const outside = Math.max(0, aim.fast.from - fast, fast - aim.fast.to) + Math.max(0, high - aim.highMost);
  return directions * FAMILY_COST.directionPoint + outside ** 2 * FAMILY_COST.fastPoint;
}

/** Shares in points that add up to a hundred, each at least one step, for sets of each size. */
const MIXTURES: readonly (readonly (readonly number[])[])[] = Array.from({ length: FAMILIES.most + 1 }, (_, parts) =>
  parts === 0 ? [] : compositions(PERCENT / FAMILY_COST.mixtureStep, parts).filter(isMixed),
);

function isMixed(shares: readonly number[]): boolean {
  return shares.every((share) => share <= FAMILY_COST.mixtureMost);
}

const mixturesOf = (parts: number): readonly (readonly number[])[] => MIXTURES[parts] ?? [];

function compositions(steps: number, parts: number): readonly (readonly number[])[] {
  if (parts === 1) return [[steps * FAMILY_COST.mixtureStep]];
  const all: (readonly number[])[] = [];
  for (let first = 1; first <= steps - parts + 1; first += 1) {
    for (const rest of compositions(steps - first, parts - 1)) all.push([first * FAMILY_COST.mixtureStep, ...rest]);
  }
  return all;
}
