// Shares the contacts of one session among its drills, exactly and at least cost: near the week's directions and its
// band of fast work, even, in neat sets. A search over every way the drills' own sets and reps add up to the session;
// called through a cache. Ranges are widened only when nothing else adds up, and the line says so.

import { ALLOTTING } from '../../library/families.ts';
import type { DirectionShares, Drill, Range } from '../../library/types.ts';
import { DIRECTIONS } from '../../library/types.ts';
import { VOLUME } from '../../library/volume.ts';
import type { Choice, Manner } from './choices.ts';
import { knownChoices } from './choices.ts';
import type { Tally } from './tally.ts';

/** What a week aims at: shares in whole per cents. */
export interface Aim {
  readonly key: string;
  readonly directions: DirectionShares;
  readonly fast: Range;
  /** How far a direction may be off its share before a rule names it, in points. */
  readonly points: number;
  /** Contacts of the whole week. */
  readonly contacts: number;
}

export interface Candidate {
  readonly drill: Drill;
  /** Most contacts it may have in this session. */
  readonly most: number;
  /** Sets a coach has pinned. */
  readonly sets?: number;
  /** It can't be left out. */
  readonly keep: boolean;
}

export interface Allotted {
  /** One for each candidate, in their order; undefined where the drill is left out. */
  readonly choices: readonly (Choice | undefined)[];
  readonly widened: boolean;
  readonly cost: number;
  /** A rule will name the week for its directions or its fast work. */
  readonly named: boolean;
}

interface Mode extends Manner {
  /** The most candidates that are looked at, as the wider ways are many. */
  readonly most: number;
  /** Where even the best is far off, the next mode is looked at too. */
  readonly coarse?: boolean;
}

const MODES: readonly Mode[] = [
  { widened: false, step: VOLUME.step, most: 6, coarse: true },
  { widened: false, step: 1, most: 4 },
  { widened: true, step: VOLUME.step, most: 4 },
  { widened: true, step: 1, most: 3 },
];

/** For a session whose jumps alone outlast its slot. */
const BRIEF_MODES: readonly Mode[] = [{ widened: false, step: 1, most: 4, brief: true }];

/** The best way to share out so many contacts, or undefined when no way adds up to them; `brief` for the fewest sets. */
export function allot(
  candidates: readonly Candidate[],
  contacts: number,
  week: Tally,
  aim: Aim,
  brief = false,
): Allotted | undefined {
  let best: Found | undefined;
  for (const mode of brief ? BRIEF_MODES : MODES) {
    const looked = candidates.slice(0, mode.most);
    const options = looked.map((candidate) => optionsOf(candidate, contacts, mode));
    const found = search(looked, options, contacts, week, aim, best?.cost ?? Number.POSITIVE_INFINITY);
    const widened = best === undefined && mode.widened;
    best = found ?? best;
    if (best === undefined || (mode.coarse === true && best.cost > ALLOTTING.goodEnough)) continue;
    const { cost } = best;
    const choices = candidates.map((_, index) => best?.choices[index]);
    return { choices, widened, cost, named: isNamed(candidates, choices, targetOf(week, contacts, aim)) };
  }
  return undefined;
}

interface Found {
  readonly choices: readonly (Choice | undefined)[];
  readonly cost: number;
}

/** What a candidate may have, in ascending order of contacts. An uneven line isn't a very small one, where there is room. */
function optionsOf(candidate: Candidate, contacts: number, mode: Mode): readonly Choice[] {
  const most = Math.min(contacts, candidate.most);
  const uneven = mode.step !== VOLUME.step && mode.brief !== true;
  const least = uneven && most >= ALLOTTING.leastUneven ? ALLOTTING.leastUneven : 0;
  const choices = knownChoices(candidate.drill, mode, candidate.sets);
  return choices.filter((choice) => choice.contacts >= least && choice.contacts <= most);
}

/**
 * Depth first over the options of each drill in turn, leaving out the branches that cost as much as `most` or the best
 * even if what is left were shared out as the target would have it. Of equally good ones the first found stays.
 */
function search(
  candidates: readonly Candidate[],
  options: readonly (readonly Choice[])[],
  contacts: number,
  week: Tally,
  aim: Aim,
  most: number,
): Found | undefined {
  const last = candidates.length - 1;
  const reach = furthest(options);
  const rests = restsOf(candidates);
  const evenPart = contacts / candidates.length;
  const target = targetOf(week, contacts, aim);
  const chosen: (Choice | undefined)[] = candidates.map(() => undefined);
  let best: Found | undefined;
  let bestCost = most;

  /** What is left is the last drill's. */
  const finish = (left: number, vertical: number, horizontal: number, fast: number, cost: number): void => {
    const candidate = candidates[last];
    const choice = choiceOf(options[last] ?? [], left);
    if (candidate === undefined || (choice === undefined && (left > 0 || candidate.keep))) return;
    const own = choice === undefined ? cost + ALLOTTING.leftOut : costWith(choice, cost, evenPart);
    if (own >= bestCost) return;
    const lateral = PERCENT * (contacts - left) - vertical - horizontal;
    const sums = plus({ vertical, horizontal, lateral, fast }, candidate.drill, left);
    const total = own + departure(sums, target);
    if (total >= bestCost) return;
    bestCost = total;
    best = { choices: [...chosen.slice(0, last), choice], cost: total };
  };
  const visit = (
    index: number,
    left: number,
    vertical: number,
    horizontal: number,
    fast: number,
    cost: number,
  ): void => {
    if (index === last) {
      finish(left, vertical, horizontal, fast, cost);
      return;
    }
    const candidate = candidates[index];
    const rest = rests[index];
    if (candidate === undefined || rest === undefined || left > (reach[index] ?? 0)) return;
    const lateral = PERCENT * (contacts - left) - vertical - horizontal;
    if (cost + leastDeparture(rest, left, vertical, horizontal, lateral, fast, target) >= bestCost) return;
    const { direction, cycle } = candidate.drill;
    for (const choice of options[index] ?? []) {
      const part = choice.contacts;
      if (part > left) break;
      chosen[index] = choice;
      visit(
        index + 1,
        left - part,
        vertical + direction.vertical * part,
        horizontal + direction.horizontal * part,
        fast + (cycle === 'fast' ? part : 0),
        costWith(choice, cost, evenPart),
      );
    }
    chosen[index] = undefined;
    if (!candidate.keep) visit(index + 1, left, vertical, horizontal, fast, cost + ALLOTTING.leftOut);
  };
  visit(0, contacts, 0, 0, 0, 0);
  return best;
}

function choiceOf(options: readonly Choice[], contacts: number): Choice | undefined {
  for (const option of options) if (option.contacts === contacts) return option;
  return undefined;
}

/** What a line costs on top of those before it. */
const costWith = (choice: Choice, before: number, evenPart: number): number =>
  before + choice.cost + (choice.contacts - evenPart) ** 2 * ALLOTTING.even;

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

/** No more than the departure of any way to share out what is left: each share taken as near its target as it can come. */
function leastDeparture(
  rest: Rest,
  left: number,
  vertical: number,
  horizontal: number,
  lateral: number,
  fast: number,
  target: Target,
): number {
  const outside = Math.max(
    0,
    target.fastFrom - (fast + rest.fast.to * left),
    fast + rest.fast.from * left - target.fastTo,
  );
  return (
    directionCost(nearest(vertical - target.vertical, rest.vertical, left), target) +
    directionCost(nearest(horizontal - target.horizontal, rest.horizontal, left), target) +
    directionCost(nearest(lateral - target.lateral, rest.lateral, left), target) +
    fastCost(outside, target)
  );
}

/** How far off a share must stay, being so far off now, whichever of the rest's shares the contacts left have. */
function nearest(off: number, share: Range, left: number): number {
  return Math.max(0, off + share.from * left) + Math.min(0, off + share.to * left);
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

/** Directions in hundredths of a contact, fast work in contacts. */
interface Sums {
  readonly vertical: number;
  readonly horizontal: number;
  readonly lateral: number;
  readonly fast: number;
}

const NOTHING: Sums = { vertical: 0, horizontal: 0, lateral: 0, fast: 0 };
const PERCENT = 100;

function plus(sums: Sums, drill: Drill, contacts: number): Sums {
  return {
    vertical: sums.vertical + drill.direction.vertical * contacts,
    horizontal: sums.horizontal + drill.direction.horizontal * contacts,
    lateral: sums.lateral + drill.direction.lateral * contacts,
    fast: sums.fast + (drill.cycle === 'fast' ? contacts : 0),
  };
}

interface Target extends Sums {
  /** Least and most fast contacts of this session, for the week's band to hold. */
  readonly fastFrom: number;
  readonly fastTo: number;
  /** Hundredths of a contact that a direction may be off before a rule names it. */
  readonly slack: number;
  /** The week ends with this session, so that rules will look at what it comes to. */
  readonly last: boolean;
}

/** What this session would have to hold for the week so far to meet its shares. */
function targetOf(week: Tally, contacts: number, aim: Aim): Target {
  const total = week.contacts + contacts;
  const last = total >= aim.contacts;
  const inside = last ? 0 : Math.min(ALLOTTING.fastInside, (aim.fast.to - aim.fast.from) / 2);
  return {
    vertical: aim.directions.vertical * total - week.vertical,
    horizontal: aim.directions.horizontal * total - week.horizontal,
    lateral: aim.directions.lateral * total - week.lateral,
    fast: 0,
    fastFrom: ((aim.fast.from + inside) * total) / PERCENT - week.fast,
    fastTo: ((aim.fast.to - inside) * total) / PERCENT - week.fast,
    slack: aim.points * total,
    last,
  };
}

function departure(sums: Sums, target: Target): number {
  const outside = outsideBand(sums, target);
  return (
    directionCost(sums.vertical - target.vertical, target) +
    directionCost(sums.horizontal - target.horizontal, target) +
    directionCost(sums.lateral - target.lateral, target) +
    fastCost(outside, target)
  );
}

const fastCost = (outside: number, { last }: Target): number =>
  outside ** 2 * ALLOTTING.fast + (last && outside > 0 ? ALLOTTING.fastNamed : 0);

const outsideBand = (sums: Sums, target: Target): number =>
  Math.max(0, target.fastFrom - sums.fast, sums.fast - target.fastTo);

const offTheRule = (hundredths: number, { slack, last }: Target): boolean => last && Math.abs(hundredths) > slack;

/** A departure that a rule will name costs more than its size alone. */
function directionCost(hundredths: number, { last, slack }: Target): number {
  const size = (hundredths / PERCENT) ** 2 * ALLOTTING.direction;
  return last && Math.abs(hundredths) > slack ? size + ALLOTTING.directionNamed : size;
}

function isNamed(candidates: readonly Candidate[], choices: readonly (Choice | undefined)[], target: Target): boolean {
  let sums = NOTHING;
  candidates.forEach(({ drill }, index) => {
    sums = plus(sums, drill, choices[index]?.contacts ?? 0);
  });
  const fast = target.last && outsideBand(sums, target) > 0;
  return fast || DIRECTIONS.some((direction) => offTheRule(sums[direction] - target[direction], target));
}
