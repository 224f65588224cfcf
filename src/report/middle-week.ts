// Whose week stands for a group's: one athlete's, so that its kind and its numbers are of one and the same person.

import type { WeekKind } from '../library/types.ts';

const EASY_KINDS: ReadonlySet<WeekKind> = new Set(['deload', 'taper', 'transition']);

/** Whether a chart shades a week of the kind. */
export const isEasy = (kind: WeekKind): boolean => EASY_KINDS.has(kind);

export interface WeekOfOne {
  readonly kind: WeekKind;
  readonly contacts: number;
}

/**
 * Of those who jump in the week, or of all where nobody does, those with the kind that most have; of these the middle one
 * by contacts, of two the lower. Where two kinds are as frequent, the one of the lower contacts, and of as many contacts
 * the one that is no easy week, as that is said of all. Undefined for no weeks.
 */
export function middleWeek<T extends WeekOfOne>(weeks: readonly T[]): T | undefined {
  const jumping = weeks.filter(({ contacts }) => contacts > 0);
  const ordered = (jumping.length > 0 ? jumping : weeks).toSorted(
    (a, b) => a.contacts - b.contacts || Number(isEasy(a.kind)) - Number(isEasy(b.kind)),
  );
  const kind = mostCommon(ordered.map((week) => week.kind));
  const those = ordered.filter((week) => week.kind === kind);
  return those[Math.floor((those.length - 1) / 2)];
}

/** The first of those that occur most often. */
export function mostCommon<T>(values: readonly T[]): T | undefined {
  const counts = new Map<T, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts].toSorted(([, a], [, b]) => b - a)[0]?.[0];
}
