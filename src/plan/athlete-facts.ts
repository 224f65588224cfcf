// What is known of an athlete on a given day: level, age, limits, stage of a return. Each takes the cautious reading
// where the plan leaves room.

import type { Athlete, DayRange, Limit, ReturnStage } from './types.ts';
import type { Day } from '../util/days.ts';
import type { Level } from '../library/types.ts';
import { calendarDateOf } from '../util/days.ts';
import { holds, overlap } from './applies.ts';

/** The level the coach has signed off by that day. */
export function levelOn(athlete: Pick<Athlete, 'levels'>, day: Day): Level {
  let level: Level = athlete.levels[0]?.is ?? 'beginner';
  for (const step of athlete.levels) {
    if (step.from === undefined || step.from <= day) level = step.is;
  }
  return level;
}

/**
 * Age in whole years on a day, by the latest birthday the plan allows (so a year alone reads as its 31 December);
 * undefined when no birth is written.
 */
export function ageOn(athlete: { readonly born?: Athlete['born'] | undefined }, day: Day): number | undefined {
  if (athlete.born === undefined) return undefined;
  const born = calendarDateOf(athlete.born.latest);
  const now = calendarDateOf(day);
  const isBefore = now.month < born.month || (now.month === born.month && now.day < born.day);
  return now.year - born.year - (isBefore ? 1 : 0);
}

/** All that ages say of somebody between two days: the age where there is no birthday between them, else the birth itself. */
export function ageThrough(athlete: Pick<Athlete, 'born'>, { from, until }: DayRange): string {
  const age = ageOn(athlete, from);
  return age === ageOn(athlete, until) ? `${age ?? ''}` : `born ${athlete.born?.latest}`;
}

/** The limits in force on a day. */
export function limitsOn(athlete: Pick<Athlete, 'limits'>, day: Day): readonly Limit[] {
  if (athlete.limits.length === 0) return athlete.limits;
  return athlete.limits.filter((limit) => holds(limit.range, day));
}

/** Whether any limit is in force within a range. */
export function limitedIn(athlete: Athlete, range: DayRange): boolean {
  return athlete.limits.some((limit) => overlap(limit.range, range));
}

/**
 * The stage of a return that is signed by that day, or undefined when the athlete isn't returning or has signed the last
 * stage. Before the first `since` nothing is signed: the first stage of all counts where a later one is to be signed, and
 * stage 0, in which nobody jumps, where even the first is still to be.
 */
export function returnStageOn(athlete: Pick<Athlete, 'returning'>, day: Day): ReturnStage | undefined {
  const first = athlete.returning[0];
  if (first === undefined) return undefined;
  if (day < first.since) return beforeSigned(first);
  let stage = first;
  for (const next of athlete.returning) if (next.since <= day) stage = next;
  return stage.stage >= stage.of ? undefined : stage;
}

const unsigned = new WeakMap<ReturnStage, ReturnStage>();

/** The same object each time, as who is given the same season is told by it. */
function beforeSigned(first: ReturnStage): ReturnStage {
  const known = unsigned.get(first) ?? { ...first, stage: first.stage > 1 ? 1 : 0 };
  unsigned.set(first, known);
  return known;
}

/** The same for names that look the same to a reader. */
export const nameKey = (name: string): string => name.normalize('NFC').replaceAll(/\s+/gu, ' ').trim().toLowerCase();
