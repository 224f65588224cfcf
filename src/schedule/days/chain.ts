// One kind of session (jumps or lifts) through the season: for each week the sets of days that fit, and from which of
// them one can go on to which. Built twice by place-days.ts, which weighs the two against each other. A chain first
// takes only sets that hold as many sessions as the week alone allows; just where no way leads through the whole season
// so, it is built again with the smaller sets. That is exact, since a session not held outweighs everything else.

import { countDays, firstDay, includesDay, lastDay, listSpacedSets, NO_DAYS } from './day-sets.ts';
import type { DaySet } from './day-sets.ts';
import { DAYS_A_WEEK } from '../../util/days.ts';

/** What is asked of one week, for jumps or for lifts. */
export interface UseOfWeek {
  /** Days that can hold one. */
  readonly days: DaySet;
  /** Sessions to hold. */
  readonly wanted: number;
  /** Fewest days from one to the next. */
  readonly apart: number;
  /** Days a coach asks for. */
  readonly pinned: DaySet;
  /** The very days, whatever their spacing; absent where they are to be chosen. */
  readonly fixed?: DaySet;
  /** What a session costs on each day of the week. */
  readonly dayCosts: readonly number[];
  /** Present where a session of the week should have room for drops behind it. */
  readonly room?: Room;
}

/** What drops ask for behind a session. */
export interface Room {
  /** Days behind which nothing but another session could be in the way. */
  readonly days: DaySet;
  /** Days that stay free behind it; at most a week. */
  readonly free: number;
}

export interface ChainCosts {
  readonly missing: number;
  /** On top, where none of those wanted is held although a day is open. */
  readonly none: number;
  readonly pinUnmet: number;
  /** A day that the last week with sessions didn't have. */
  readonly offPattern: number;
  /** A week none of whose sessions has room behind it. */
  readonly noRoom: number;
}

/** What a week has to know of those before it. */
export interface Entry {
  /** Days of the last week that had any. */
  readonly pattern: DaySet;
  /** Days from the last session to the first day of this week; as many as the widest spacing stand for more. */
  readonly ago: number;
}

export interface Link {
  readonly entries: readonly Entry[];
  /** Earlier days first. */
  readonly choices: readonly DaySet[];
  /** At [entry x choices + choice]: the place among the next week's entries, or -1 where too close to the last one. */
  readonly next: Int32Array;
  /** At the same places: what the choice costs. */
  readonly costs: Float64Array;
}

export interface Chain {
  readonly links: readonly Link[];
  /** How many entries lead out of the last week. */
  readonly ends: number;
}

/** The chain of a season. */
export function linkWeeks(weeks: readonly UseOfWeek[], costs: ChainCosts): Chain {
  const chain = findChain(weeks, costs, fullestSets) ?? findChain(weeks, costs, setsUpToWanted);
  if (chain === undefined) throw new Error('no way through the season, although a week may stay without sessions');
  return chain;
}

/** Days ago are told apart up to the widest spacing, and at least so far that the eve of a week is not taken for more. */
const DAY_BEFORE_EVE = 2;

type Sets = (week: UseOfWeek, costs: ChainCosts) => readonly DaySet[];

function findChain(weeks: readonly UseOfWeek[], costs: ChainCosts, setsOf: Sets): Chain | undefined {
  const farthest = weeks.reduce((most, week) => Math.max(most, week.apart, (week.room?.free ?? 0) + 1), DAY_BEFORE_EVE);
  const links: Link[] = [];
  let entries: readonly Entry[] = [{ pattern: NO_DAYS, ago: farthest }];
  let before: UseOfWeek | undefined;
  for (const week of weeks) {
    const { link, after } = linkWeek({ before, week, choices: setsOf(week, costs), farthest }, entries, costs);
    if (after.length === 0) return undefined;
    links.push(link);
    entries = after;
    before = week;
  }
  return { links, ends: entries.length };
}

/** A week behind the one before it. */
interface Turn {
  readonly before: UseOfWeek | undefined;
  readonly week: UseOfWeek;
  readonly choices: readonly DaySet[];
  /** As many days ago stand for more. */
  readonly farthest: number;
}

/** Across the turn of a week the later week's distance counts; between days that are both fixed, none. */
function apartAcross({ before, week }: Turn): number {
  if (before === undefined) return 0;
  return before.fixed !== undefined && week.fixed !== undefined ? 0 : week.apart;
}

function linkWeek(
  turn: Turn,
  entries: readonly Entry[],
  costs: ChainCosts,
): { readonly link: Link; readonly after: readonly Entry[] } {
  const { choices } = turn;
  const apart = apartAcross(turn);
  const after: Entry[] = [];
  const places = new Map<number, number>();
  const next = new Int32Array(entries.length * choices.length);
  const costOf = new Float64Array(next.length);
  const own = choices.map((set) => ownCost(turn.week, set, costs));
  let at = 0;
  for (const entry of entries) {
    for (const [place, set] of choices.entries()) {
      if (set !== NO_DAYS && entry.ago + firstDay(set) < apart) {
        next[at] = -1;
      } else {
        next[at] = placeAfter(entry, set, turn.farthest, places, after);
        costOf[at] = (own[place] ?? 0) + costAcross(turn, entry, set, costs);
      }
      at += 1;
    }
  }
  return { link: { entries, choices, next, costs: costOf }, after };
}

/** What a set costs on account of the weeks before: days off their pattern, and the room it takes from the last one. */
function costAcross({ before }: Turn, { pattern, ago }: Entry, set: DaySet, costs: ChainCosts): number {
  if (pattern === NO_DAYS || set === NO_DAYS) return 0;
  const moved = costs.offPattern * countDays(set & ~pattern);
  if (before?.room === undefined || ago + firstDay(set) > before.room.free) return moved;
  return roomyDays(pattern, before.room) === 1 << lastDay(pattern) ? moved + costs.noRoom : moved;
}

/** Days of the set with room behind them, the next week left aside. */
function roomyDays(set: DaySet, { days, free }: Room): DaySet {
  let roomy = set & days;
  for (let ahead = 1; ahead <= free; ahead += 1) roomy &= ~(set >> ahead);
  return roomy;
}

function placeAfter(entry: Entry, set: DaySet, farthest: number, places: Map<number, number>, after: Entry[]): number {
  const pattern = set === NO_DAYS ? entry.pattern : set;
  const ago = Math.min(farthest, set === NO_DAYS ? entry.ago + DAYS_A_WEEK : DAYS_A_WEEK - lastDay(set));
  const key = pattern * (farthest + 1) + ago;
  let place = places.get(key);
  if (place === undefined) {
    place = after.length;
    places.set(key, place);
    after.push({ pattern, ago });
  }
  return place;
}

function ownCost(week: UseOfWeek, set: DaySet, costs: ChainCosts): number {
  let cost = shortfall(week, set, costs);
  if (week.room !== undefined && set !== NO_DAYS && roomyDays(set, week.room) === NO_DAYS) cost += costs.noRoom;
  for (let day = 0; day < DAYS_A_WEEK; day += 1) if (includesDay(set, day)) cost += week.dayCosts[day] ?? 0;
  return cost;
}

/** What the set costs for sessions not held and pins not met. */
function shortfall(week: UseOfWeek, set: DaySet, costs: ChainCosts): number {
  if (week.fixed !== undefined) return 0;
  const held = countDays(set);
  const none = held === 0 && week.wanted > 0 && week.days !== NO_DAYS ? costs.none : 0;
  const unmet = Math.min(week.wanted, countDays(week.pinned)) - countDays(set & week.pinned);
  return (week.wanted - held) * costs.missing + none + unmet * costs.pinUnmet;
}

function setsUpToWanted(week: UseOfWeek): readonly DaySet[] {
  if (week.fixed !== undefined) return [week.fixed];
  return listSpacedSets(week.days, week.apart).filter((set) => countDays(set) <= week.wanted);
}

function fullestSets(week: UseOfWeek, costs: ChainCosts): readonly DaySet[] {
  const sets = setsUpToWanted(week);
  if (sets.length < 2) return sets;
  const shortfalls = sets.map((set) => shortfall(week, set, costs));
  const least = Math.min(...shortfalls);
  return sets.filter((_, place) => shortfalls[place] === least);
}
