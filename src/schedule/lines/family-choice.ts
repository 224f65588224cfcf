// Chooses the families of a block: the set whose best mixture comes nearest to the phase's directions and fast work,
// with few changes from the phase before and, in a squad of several sports, from what the others do beside it. Every set
// of three to five of the likeliest families is looked at, called through a cache. The mixture here is a rough one in
// tenths; each session is shared out exactly later.

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
  /** Families that others of the squad do at the same time, or undefined where all jump in the same directions. */
  readonly beside?: ReadonlySet<string>;
}

/** A family as the phase sees it. */
interface Likely {
  readonly option: FamilyOption;
  /** The phase before didn't have it. */
  readonly change: boolean;
  /** What it costs whatever stands beside it. */
  readonly own: number;
}

/** What is looked through, and how far it has come. */
interface Search {
  readonly likely: readonly Likely[];
  readonly aim: FamilyAim;
  readonly set: Likely[];
  best: readonly Likely[];
  bestCost: number;
}

/**
 * The cheapest set, in the order of the options; all of them where there are too few to choose from. Families are tried
 * cheapest first, so that once one costs too much all behind it do.
 */
export function chooseFamilies(options: readonly FamilyOption[], aim: FamilyAim): readonly string[] {
  const likely = likeliest(options, aim);
  const best = likely.slice(0, FAMILIES.least);
  const search: Search = { likely, aim, set: [], best, bestCost: Number.POSITIVE_INFINITY };
  visit(search, 0, 0, 0, 0);
  const chosen = new Set(search.best.map((one) => one.option));
  return options.filter((option) => chosen.has(option)).map((option) => option.family);
}

/**
 * The sets that begin with this one and go on with families from an index. `own` is what the families of the set cost each
 * by itself. Tens of thousands are looked at, so that what a set comes to is handed on in numbers.
 */
function visit(search: Search, from: number, own: number, changes: number, onlyHigh: number): void {
  const { set, likely } = search;
  if (set.length >= FAMILIES.least) compare(search, own + tooMany(changes, onlyHigh));
  if (set.length === FAMILIES.most) return;
  for (let index = from; index < likely.length; index += 1) {
    const one = likely[index];
    if (one === undefined || own + one.own >= search.bestCost) return;
    const nowChanges = one.change ? changes + 1 : changes;
    const nowHigh = one.option.onlyHigh ? onlyHigh + 1 : onlyHigh;
    // No family takes back what is too many already.
    if (own + one.own + tooMany(nowChanges, nowHigh) >= search.bestCost) continue;
    set.push(one);
    visit(search, index + 1, own + one.own, nowChanges, nowHigh);
    set.pop();
  }
}

/** What changes from the phase before and families of the high tier alone cost where there are too many of them. */
const tooMany = (changes: number, onlyHigh: number): number =>
  Math.max(0, changes - FAMILIES.change) * FAMILY_COST.changeTooMany +
  Math.max(0, onlyHigh - 1) * FAMILY_COST.secondHigh;

/** Keeps the set if it is the cheapest so far. The mixture is looked at last, as it takes longest. */
function compare(search: Search, cost: number): void {
  const { set, aim, bestCost } = search;
  const sized = cost + Math.abs(set.length - FAMILIES.usual) * FAMILY_COST.count;
  if (sized >= bestCost) return;
  const whole = sized + missing(set, aim);
  if (whole >= bestCost) return;
  const all = whole + nearestMixture(set, aim);
  if (all >= bestCost) return;
  search.best = [...set];
  search.bestCost = all;
}

/** What it costs that the set has no drill of the high tier, or no drop, where the phase has room for them. */
function missing(set: readonly Likely[], { highMost }: FamilyAim): number {
  let high = highMost <= 0;
  let drop = highMost < FAMILY_COST.dropsFromHigh;
  for (let index = 0; index < set.length; index += 1) {
    high ||= set[index]?.option.high === true;
    drop ||= set[index]?.option.drop === true;
  }
  return (high ? 0 : FAMILY_COST.noHighTier) + (drop ? 0 : FAMILY_COST.noDrop);
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
  const apart = aim.beside !== undefined && !aim.beside.has(option.family);
  return {
    option,
    change,
    own: option.cost + (change ? FAMILY_COST.change : 0) + (apart ? FAMILY_COST.apart : 0),
  };
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
    if (option.fast) fast += option.drop ? Math.min(weight, FAMILY_COST.dropMost) : weight;
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

/** Shares in points that add up to a hundred, each from one step to the most, for sets of each size. */
const MIXTURES: readonly (readonly (readonly number[])[])[] = Array.from({ length: FAMILIES.most + 1 }, (_, parts) =>
  parts === 0 ? [] : mixtures(PERCENT / FAMILY_COST.mixtureStep, parts),
);

const mixturesOf = (parts: number): readonly (readonly number[])[] => MIXTURES[parts] ?? [];

function mixtures(steps: number, parts: number): readonly (readonly number[])[] {
  const most = FAMILY_COST.mixtureMost / FAMILY_COST.mixtureStep;
  if (parts === 1) return steps <= most ? [[steps * FAMILY_COST.mixtureStep]] : [];
  const all: (readonly number[])[] = [];
  for (let first = 1; first <= Math.min(most, steps - parts + 1); first += 1) {
    const share = [first * FAMILY_COST.mixtureStep];
    for (const rest of mixtures(steps - first, parts - 1)) all.push(share.concat(rest));
  }
  return all;
}
