// Sets of days of one week as bits, so that all sets that fit can be listed once and compared fast. Bit 0 is the first
// day of the week, whatever weekday that is. Used by the other files of this folder.

import { DAYS_A_WEEK } from '../../util/days.ts';
/** Seven bits. */
export type DaySet = number;

export const NO_DAYS: DaySet = 0;
const ALL_SETS = 1 << DAYS_A_WEEK;

const MEMBERS: readonly (readonly number[])[] = Array.from({ length: ALL_SETS }, (_, set) =>
  [0, 1, 2, 3, 4, 5, 6].filter((day) => includesDay(set, day)),
);
const COUNTS = Uint8Array.from(MEMBERS, (days) => days.length);

/** Days in order, from 0. */
export function daysOf(set: DaySet): readonly number[] {
  return MEMBERS[set] ?? [];
}

/** Whether a day, from 0 to 6, is in the set. */
export function includesDay(set: DaySet, day: number): boolean {
  return ((set >> day) & 1) === 1;
}

/** The set of days from 0 to 6. */
export function setOf(days: readonly number[]): DaySet {
  return days.reduce((set, day) => set | (1 << day), NO_DAYS);
}

/** How many days are in the set. */
export function countDays(set: DaySet): number {
  return COUNTS[set] ?? 0;
}

/** From 0; `DAYS_A_WEEK` for the empty set. */
export function firstDay(set: DaySet): number {
  return set === NO_DAYS ? DAYS_A_WEEK : 31 - Math.clz32(set & -set);
}

/** From 0; -1 for the empty set. */
export function lastDay(set: DaySet): number {
  return 31 - Math.clz32(set);
}

const spacedSets = new Map<number, readonly DaySet[]>();

/**
 * All sets within `days` whose members are `apart` or more days from each other, the empty one included. In order:
 * of two sets, the one that has the first day in which they differ comes first.
 */
export function listSpacedSets(days: DaySet, apart: number): readonly DaySet[] {
  const key = days * (DAYS_A_WEEK + 1) + Math.min(apart, DAYS_A_WEEK);
  let sets = spacedSets.get(key);
  if (sets === undefined) {
    sets = EVERY_SET.filter((set) => (set & ~days) === NO_DAYS && isSpaced(set, apart));
    spacedSets.set(key, sets);
  }
  return sets;
}

const EVERY_SET: readonly DaySet[] = Array.from({ length: ALL_SETS }, (_, set) => set).toSorted(
  (a, b) => turned(b) - turned(a),
);

/** The bits the other way round, so that the first day counts most. */
function turned(set: DaySet): number {
  return daysOf(set).reduce((sum, day) => sum + (1 << (DAYS_A_WEEK - 1 - day)), 0);
}

function isSpaced(set: DaySet, apart: number): boolean {
  const days = daysOf(set);
  return days.every((day, place) => place === 0 || day - (days[place - 1] ?? 0) >= apart);
}
