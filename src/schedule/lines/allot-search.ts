// The search behind allot.ts: of all ways in which the drills' own sets and reps add up to a session, the cheapest, and of
// equally cheap ones the first. It is what a season is made of most often, and mostly before V8 has optimised it, so that
// loops count and nothing is put into objects on the way. A number that isn't whole is an object too: what is only compared
// is whole (allot-bounds.ts), and what a way costs is summed up only where it may be the cheapest.

import { ALLOTTING } from '../../library/families.ts';
import { PERCENT } from '../../util/units.ts';
import { allowedBounds, cheapestLines, furthest, isOff, isOver, restsOf } from './allot-bounds.ts';
import type { Rest } from './allot-bounds.ts';
import { directionCost, fastCost } from './allot-target.ts';
import type { Target } from './allot-target.ts';
import type { Candidate, Choice } from './choices.ts';

export interface Found {
  /** One for each candidate, in their order; undefined where the drill is left out. */
  readonly choices: readonly (Choice | undefined)[];
  readonly cost: number;
}

/** What is looked through, and how far it has come. Of each drill the lists say what holds of it and those behind it. */
interface Search {
  readonly candidates: readonly Candidate[];
  readonly options: readonly (readonly Choice[])[];
  readonly contacts: number;
  readonly target: Target;
  readonly evenPart: number;
  /** What each option costs for being no equal part. */
  readonly uneven: readonly (readonly number[])[];
  readonly reach: readonly number[];
  readonly rests: readonly Rest[];
  readonly ahead: readonly number[];
  /** The index of the last drill, which takes what is left, and its options by their contacts. */
  readonly last: number;
  readonly lastOptions: readonly (Choice | undefined)[];
  readonly chosen: (Choice | undefined)[];
  best: Found | undefined;
  bestCost: number;
}

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
  if (last < 0) return undefined;
  const evenPart = contacts / candidates.length;
  const uneven = options.map((of) => of.map((choice) => unevenCost(choice.contacts, evenPart)));
  const all: Search = {
    candidates,
    options,
    contacts,
    target,
    evenPart,
    uneven,
    reach: furthest(options),
    rests: restsOf(candidates),
    ahead: cheapestLines(candidates, options, uneven),
    last,
    lastOptions: byContacts(options[last] ?? []),
    chosen: candidates.map(() => undefined),
    best: undefined,
    bestCost: most,
  };
  if (last === 0) finish(all, contacts, 0, 0, 0, 0);
  else visit(all, 0, contacts, 0, 0, 0, 0);
  return all.best;
}

/** The first option for each number of contacts. */
function byContacts(options: readonly Choice[]): readonly (Choice | undefined)[] {
  const by: (Choice | undefined)[] = [];
  for (const choice of options) by[choice.contacts] ??= choice;
  return by;
}

/** What a line of so many contacts costs for being no equal part. */
const unevenCost = (contacts: number, evenPart: number): number => (contacts - evenPart) ** 2 * ALLOTTING.even;

/** One drill, with what is left for it, what those before it come to and cost; directions in hundredths. */
function visit(
  all: Search,
  index: number,
  left: number,
  vertical: number,
  horizontal: number,
  fast: number,
  cost: number,
): void {
  const rest = all.rests[index];
  if (rest === undefined || left > (all.reach[index] ?? 0)) return;
  const lateral = PERCENT * (all.contacts - left) - vertical - horizontal;
  const allowed = allowedBounds(all.bestCost - cost - (all.ahead[index] ?? 0));
  if (isOver(allowed, rest, left, vertical, horizontal, lateral, fast, all.target)) return;
  if (index + 1 === all.last) shareInTwo(all, index, left, vertical, horizontal, fast, cost, allowed);
  else tryEach(all, index, left, vertical, horizontal, fast, cost, allowed);
}

/** Each option of a drill that others but the last come behind. */
function tryEach(
  all: Search,
  index: number,
  left: number,
  vertical: number,
  horizontal: number,
  fast: number,
  cost: number,
  allowed: number,
): void {
  const candidate = all.candidates[index];
  const own = all.options[index];
  const uneven = all.uneven[index];
  const rest = all.rests[index + 1];
  if (candidate === undefined || own === undefined || uneven === undefined || rest === undefined) return;
  const { direction, cycle } = candidate.drill;
  for (let at = 0; at < own.length; at += 1) {
    const choice = own[at];
    if (choice === undefined || choice.contacts > left) break;
    const part = choice.contacts;
    const others = left - part;
    const up = vertical + direction.vertical * part;
    const along = horizontal + direction.horizontal * part;
    const across = PERCENT * (all.contacts - others) - up - along;
    const quick = fast + (cycle === 'fast' ? part : 0);
    // Most ways are too far off whatever this line costs, and then its cost needn't be summed up.
    if (isOver(allowed, rest, others, up, along, across, quick, all.target)) continue;
    all.chosen[index] = choice;
    visit(all, index + 1, others, up, along, quick, cost + choice.cost + (uneven[at] ?? 0));
  }
  all.chosen[index] = undefined;
  if (!candidate.keep) visit(all, index + 1, left, vertical, horizontal, fast, cost + ALLOTTING.leftOut);
}

/** Each option of the last drill but one. What both come to is then known, so that most ways needn't be summed up. */
function shareInTwo(
  all: Search,
  index: number,
  left: number,
  vertical: number,
  horizontal: number,
  fast: number,
  cost: number,
  allowed: number,
): void {
  const candidate = all.candidates[index];
  const own = all.options[index];
  const uneven = all.uneven[index];
  const lastDrill = all.candidates[all.last]?.drill;
  if (candidate === undefined || own === undefined || uneven === undefined || lastDrill === undefined) return;
  const { contacts, target, lastOptions } = all;
  const { direction, cycle } = candidate.drill;
  const { direction: other, cycle: otherCycle } = lastDrill;
  for (let at = 0; at < own.length; at += 1) {
    const choice: Choice | undefined = own[at];
    if (choice === undefined || choice.contacts > left) break;
    const part: number = choice.contacts;
    const others = left - part;
    if (others > 0 && lastOptions[others] === undefined) continue;
    const up = vertical + direction.vertical * part;
    const along = horizontal + direction.horizontal * part;
    const upInAll = up + other.vertical * others;
    const alongInAll = along + other.horizontal * others;
    const across = PERCENT * contacts - upInAll - alongInAll;
    const quick = fast + (cycle === 'fast' ? part : 0);
    const quickInAll = quick + (otherCycle === 'fast' ? others : 0);
    if (isOff(allowed, upInAll, alongInAll, across, quickInAll, target)) continue;
    all.chosen[index] = choice;
    finish(all, others, up, along, quick, cost + choice.cost + (uneven[at] ?? 0));
  }
  all.chosen[index] = undefined;
  if (!candidate.keep) finish(all, left, vertical, horizontal, fast, cost + ALLOTTING.leftOut);
}

/** What is left is the last drill's. */
function finish(all: Search, left: number, vertical: number, horizontal: number, fast: number, cost: number): void {
  const { last, contacts, target, bestCost } = all;
  const final = all.candidates[last];
  const choice = all.lastOptions[left];
  if (final === undefined || (choice === undefined && (left > 0 || final.keep))) return;
  const own = choice === undefined ? cost + ALLOTTING.leftOut : cost + choice.cost + unevenCost(left, all.evenPart);
  if (own >= bestCost) return;
  const lateral = PERCENT * (contacts - left) - vertical - horizontal;
  const { direction, cycle } = final.drill;
  const total =
    own +
    (directionCost(vertical + direction.vertical * left - target.vertical, target) +
      directionCost(horizontal + direction.horizontal * left - target.horizontal, target) +
      directionCost(lateral + direction.lateral * left - target.lateral, target) +
      fastCost(fast + (cycle === 'fast' ? left : 0), target));
  if (total >= bestCost) return;
  all.bestCost = total;
  all.best = { choices: [...all.chosen.slice(0, last), choice], cost: total };
}
