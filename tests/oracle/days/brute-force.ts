// The days of a short season found by trying all of them, in dates and lists where the scheduler has bits and states. The
// only things shared with it are the weights and the grid. Every set of days of every week is tried behind every other;
// a branch is left only once it must cost as much as a whole season already found: with what it costs so far, which is
// never taken back, and the sessions that the weeks to come cannot hold even alone.

import { DAY_PREFERENCES, DAY_STABILITY, JUMP_SHORTFALL, LIFT_SHORTFALL } from '../../../src/library/days.ts';
import type { Day } from '../../../src/util/days.ts';

/** One kind of session in one week. */
export interface PlainUse {
  readonly dates: readonly Day[];
  readonly wanted: number;
  readonly apart: number;
  readonly pinned: readonly Day[];
  readonly usual: readonly Day[];
  readonly published: readonly Day[];
}

export interface PlainWeek {
  readonly starts: Day;
  readonly jumps: PlainUse;
  readonly lifts: PlainUse;
  /** Whether anything of the week was handed out. */
  readonly isPublished: boolean;
  /** Lift dates that may not be heavy. */
  readonly light: readonly Day[];
  /** Hard days on one side or both, by jump date. */
  readonly hardSides: ReadonlyMap<Day, number>;
  readonly busy: readonly Day[];
  readonly freeDays: number;
  /** Whether a session of the week should have room for drops behind it, and how many free days that is. */
  readonly drops: { readonly wanted: boolean; readonly free: number };
  /** Jump dates with a match or a hard day in those free days. */
  readonly crammed: readonly Day[];
}

export interface PlainChoice {
  readonly jumps: readonly Day[];
  readonly lifts: readonly Day[];
}

export interface Found {
  readonly cost: number;
  readonly weeks: readonly PlainChoice[];
}

/** The season of least cost; of equal ones the first in the order of earlier days, week after week, jumps before lifts. */
export function tryAllDays(weeks: readonly PlainWeek[]): Found {
  const sets = weeks.map(setsOfWeek);
  const lost = weeks.map((week, index) => Math.min(...(sets[index] ?? []).map((set) => costOfShortfall(week, set))));
  let best: Found = { cost: Infinity, weeks: [] };
  const go = (chosen: readonly PlainChoice[], cost: number): void => {
    if (chosen.length === weeks.length) {
      best = { cost, weeks: chosen };
      return;
    }
    const still = lost.slice(chosen.length + 1).reduce((sum, one) => sum + one, 0);
    for (const set of sets[chosen.length] ?? []) {
      const next = [...chosen, set];
      const sum = cost + costOfWeek(weeks, next, chosen.length);
      if (sum + still < best.cost) go(next, sum);
    }
  };
  go([], 0);
  return best;
}

/**
 * What comes before every preference, counted and not weighed, what counts more before what counts less: jump sessions
 * not held and pins not met (each as two of them), lift sessions not held (a week without any as four more), weeks without
 * the free day of the young, and sessions on other days than those handed out.
 */
export type Counts = readonly [jumps: number, lifts: number, free: number, moved: number];

/** The least counts that any season has. */
export function leastCounts(weeks: readonly PlainWeek[]): Counts {
  const sets = weeks.map(setsOfWeek);
  let best: Counts = [Infinity, 0, 0, 0];
  const go = (chosen: readonly PlainChoice[], counts: Counts): void => {
    if (chosen.length === weeks.length) best = counts;
    const week = weeks[chosen.length];
    if (week === undefined) return;
    for (const set of sets[chosen.length] ?? []) {
      const next = [...chosen, set];
      if (costOfWeek(weeks, next, chosen.length) === Infinity) continue;
      const sum = addCounts(counts, countsOfWeek(week, set));
      if (isLess(sum, best)) go(next, sum);
    }
  };
  go([], NO_COUNTS);
  return best;
}

/** The counts of a season. */
export const countsOfSeason = (weeks: readonly PlainWeek[], chosen: readonly PlainChoice[]): Counts =>
  weeks.reduce<Counts>((sum, week, index) => {
    const choice = chosen[index];
    return choice === undefined ? sum : addCounts(sum, countsOfWeek(week, choice));
  }, NO_COUNTS);

const NO_COUNTS: Counts = [0, 0, 0, 0];
const addCounts = (a: Counts, b: Counts): Counts => [a[0] + b[0], a[1] + b[1], a[2] + b[2], a[3] + b[3]];

function isLess(a: Counts, b: Counts): boolean {
  const at = a.findIndex((count, place) => count !== b[place]);
  return at >= 0 && (a[at] ?? 0) < (b[at] ?? 0);
}

function countsOfWeek({ jumps, lifts, busy, freeDays, isPublished }: PlainWeek, chosen: PlainChoice): Counts {
  const unmet =
    Math.min(jumps.wanted, jumps.pinned.length) - chosen.jumps.filter((date) => jumps.pinned.includes(date)).length;
  const none = lifts.wanted > 0 && lifts.dates.length > 0 && chosen.lifts.length === 0;
  const taken = new Set([...chosen.jumps, ...chosen.lifts, ...busy]);
  const moved =
    chosen.jumps.filter((date) => !jumps.published.includes(date)).length +
    chosen.lifts.filter((date) => !lifts.published.includes(date)).length;
  return [
    2 * unmet + jumps.wanted - chosen.jumps.length,
    lifts.wanted - chosen.lifts.length + (none ? 4 : 0),
    7 - taken.size < freeDays ? 1 : 0,
    isPublished ? moved : 0,
  ];
}

/** All sets of up to the wanted number of dates, the one with the first date in which two differ first. */
function setsOf({ dates, wanted }: PlainUse): readonly (readonly Day[])[] {
  const sets = dates
    .toReversed()
    .reduce<readonly (readonly Day[])[]>((found, date) => [...found.map((set) => [date, ...set]), ...found], [[]]);
  return sets.filter((set) => set.length <= wanted);
}

function setsOfWeek(week: PlainWeek): readonly PlainChoice[] {
  const choices = setsOf(week.jumps).flatMap((jumps) => setsOf(week.lifts).map((lifts) => ({ jumps, lifts })));
  return choices.filter((choice) => costOfWeek([week], [choice], 0) < Infinity);
}

/** What a season costs; infinite where sessions stand too close. */
export function costOfSeason(weeks: readonly PlainWeek[], chosen: readonly PlainChoice[]): number {
  return weeks.reduce((sum, _, index) => sum + costOfWeek(weeks, chosen, index), 0);
}

/** What one week adds to the weeks before it. */
function costOfWeek(weeks: readonly PlainWeek[], chosen: readonly PlainChoice[], index: number): number {
  const week = weeks[index];
  const choice = chosen[index];
  if (week === undefined || choice === undefined) throw new Error('weeks and choices differ in number');
  const jumps = chosen.slice(0, index + 1).map((one) => one.jumps);
  const lifts = chosen.slice(0, index + 1).map((one) => one.lifts);
  if (tooClose(jumps, week.jumps.apart) || tooClose(lifts, week.lifts.apart)) return Infinity;
  const heavy = new Set(
    lifts.flatMap((dates, at) => dates.filter((date) => weeks[at]?.light.includes(date) === false)),
  );
  return (
    costOfDates(week, choice, heavy) +
    costOfShortfall(week, choice) +
    DAY_PREFERENCES['no-room-for-drops'].cost * (roomless(weeks, jumps) - roomless(weeks, jumps.slice(0, -1))) +
    DAY_PREFERENCES['jump-pattern'].cost * offPattern(weeks, jumps, index) +
    DAY_PREFERENCES['lift-pattern'].cost * offPattern(weeks, lifts, index)
  );
}

/** Whether a date of the last week is nearer to the one before it than that. */
function tooClose(chosen: readonly (readonly Day[])[], apart: number): boolean {
  const dates = chosen.at(-1) ?? [];
  const before = chosen.slice(0, -1).flat().at(-1) ?? -Infinity;
  return dates.some((date, place) => date - (dates[place - 1] ?? before) < apart);
}

function costOfDates(week: PlainWeek, { jumps, lifts }: PlainChoice, heavy: ReadonlySet<Day>): number {
  const count = (dates: readonly Day[], test: (date: Day) => boolean): number => dates.filter(test).length;
  const sides = jumps.reduce((sum, date) => sum + (week.hardSides.get(date) ?? 0), 0);
  const notPublished = week.isPublished
    ? count(jumps, (date) => !week.jumps.published.includes(date)) +
      count(lifts, (date) => !week.lifts.published.includes(date))
    : 0;
  const taken = new Set([...jumps, ...lifts, ...week.busy]);
  return (
    DAY_PREFERENCES['unusual-jump-day'].cost * count(jumps, (date) => !week.jumps.usual.includes(date)) +
    DAY_PREFERENCES['unusual-lift-day'].cost * count(lifts, (date) => !week.lifts.usual.includes(date)) +
    DAY_PREFERENCES['jumps-after-heavy'].cost * count(jumps, (date) => heavy.has(date - 1)) +
    DAY_PREFERENCES['beside-hard-day'].cost * sides +
    DAY_PREFERENCES['light-lift'].cost * count(lifts, (date) => week.light.includes(date)) +
    DAY_PREFERENCES['lift-alone'].cost * count(lifts, (date) => !jumps.includes(date)) +
    DAY_STABILITY.published.cost * notPublished +
    (7 - taken.size < week.freeDays ? DAY_STABILITY['no-free-day'].cost : 0)
  );
}

function costOfShortfall({ jumps, lifts }: PlainWeek, chosen: PlainChoice): number {
  const unmet =
    Math.min(jumps.wanted, jumps.pinned.length) - chosen.jumps.filter((date) => jumps.pinned.includes(date)).length;
  const none = lifts.wanted > 0 && lifts.dates.length > 0 && chosen.lifts.length === 0;
  return (
    JUMP_SHORTFALL['pin-unmet'].cost * unmet +
    JUMP_SHORTFALL.missing.cost * (jumps.wanted - chosen.jumps.length) +
    LIFT_SHORTFALL.missing.cost * (lifts.wanted - chosen.lifts.length) +
    (none ? LIFT_SHORTFALL.none.cost : 0)
  );
}

/** Weeks that jump and have no session with room for drops behind it. */
function roomless(weeks: readonly PlainWeek[], chosen: readonly (readonly Day[])[]): number {
  const all = chosen.flat();
  return chosen.filter((dates, index) => {
    const week = weeks[index];
    if (week === undefined || !week.drops.wanted || dates.length === 0) return false;
    const hasRoom = (date: Day): boolean =>
      !week.crammed.includes(date) && !all.some((other) => date < other && other <= date + week.drops.free);
    return !dates.some(hasRoom);
  }).length;
}

/** Days of a week that the last week before it with any had not. */
function offPattern(weeks: readonly PlainWeek[], chosen: readonly (readonly Day[])[], index: number): number {
  const places = (at: number): readonly number[] => (chosen[at] ?? []).map((date) => date - (weeks[at]?.starts ?? 0));
  for (let before = index - 1; before >= 0; before -= 1) {
    const pattern = places(before);
    if (pattern.length > 0) return places(index).filter((place) => !pattern.includes(place)).length;
  }
  return 0;
}
