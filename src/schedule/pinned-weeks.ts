// What pins fix for whole weeks: a phase, a kind of week. Called by the two stages that choose them.

import { overlap, weekFrom } from '../plan/applies.ts';
import { itemsOf } from '../plan/items-of.ts';
import type { PinEffect, Plan } from '../plan/types.ts';
import type { Span } from '../source/types.ts';
import type { AthleteGrid } from './types.ts';

export interface PinnedWeek<T> {
  readonly value: T;
  /** The pin's place. */
  readonly span: Span;
}

/**
 * By index of the week; `valueOf` gives what an effect fixes, or undefined for an effect of another kind. Where several
 * pins fix one week the last in the plan's order stands.
 */
export function pinnedWeeks<T>(
  plan: Plan,
  { athlete, weeks }: AthleteGrid,
  valueOf: (effect: PinEffect) => T | undefined,
): ReadonlyMap<number, PinnedWeek<T>> {
  const pinned = new Map<number, PinnedWeek<T>>();
  for (const { effects, range, span } of itemsOf(plan, athlete).pins) {
    for (const effect of effects) {
      const value = valueOf(effect);
      if (value === undefined) continue;
      for (const { index, starts } of weeks) if (overlap(range, weekFrom(starts))) pinned.set(index, { value, span });
    }
  }
  return pinned;
}
