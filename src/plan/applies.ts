// Whom and when an item of the plan is for. Used by every stage that picks items out of the plan. Ranges hold their
// first and their last day.

import type { Athlete, DayRange, Who } from './types.ts';
import { DAYS_A_WEEK } from '../util/days.ts';
import type { Day } from '../util/days.ts';

/** Whether an item is for this athlete: everybody, or the athlete's squad or own id among those named. */
export function appliesTo(who: Who, athlete: Pick<Athlete, 'id' | 'squad'>): boolean {
  if (who.kind === 'everybody') return true;
  if (who.athletes.includes(athlete.id)) return true;
  return athlete.squad !== undefined && who.squads.includes(athlete.squad);
}

/** Whether a day lies in a range, both ends included. */
export function holds(range: DayRange, day: Day): boolean {
  return range.from <= day && day <= range.until;
}

/** The week that begins with a day. */
export function weekFrom(starts: Day): DayRange {
  return { from: starts, until: starts + DAYS_A_WEEK - 1 };
}

/** Whether two ranges share a day. */
export function overlap(a: DayRange, b: DayRange): boolean {
  return a.from <= b.until && b.from <= a.until;
}

/**
 * Whether somebody may be meant by both. A squad counts even when it is empty, as an athlete may join it; `squadOf` holds
 * the squad of each athlete.
 */
export function shareAthlete(a: Who, b: Who, squadOf: ReadonlyMap<string, string | undefined>): boolean {
  if (a.kind === 'everybody' || b.kind === 'everybody') return true;
  if (a.squads.some((squad) => b.squads.includes(squad))) return true;
  const isNamed = (id: string, who: typeof a): boolean =>
    who.athletes.includes(id) || who.squads.includes(squadOf.get(id) ?? '');
  return a.athletes.some((id) => isNamed(id, b)) || b.athletes.some((id) => isNamed(id, a));
}
