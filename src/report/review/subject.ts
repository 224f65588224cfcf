// An athlete as the review sees one: what was built, what the weeks behind were, and how the page calls them. What every
// decision and every exception is found from.

import type { BuiltAthlete, BuiltWeek } from '../../build/types.ts';
import type { Athlete, Plan } from '../../plan/types.ts';
import type { Day } from '../../util/days.ts';
import type { Places } from '../places.ts';
import type { SessionDone } from './planned-and-done.ts';
import type { WeekDone } from './athlete-weeks.ts';

export interface Subject {
  readonly plan: Plan;
  readonly places: Places;
  /** The day of the review. */
  readonly day: Day;
  readonly athlete: Athlete;
  readonly name: string;
  readonly built: BuiltAthlete;
  /** The week the day is in; absent behind the season. */
  readonly week?: BuiltWeek;
  /** Oldest first. */
  readonly behind: readonly WeekDone[];
  /** Sessions of the last week that is over, and of the days of this one before the day. */
  readonly recent: readonly SessionDone[];
  /** The first of the days `recent` is of. */
  readonly since: Day;
  /** Contacts this week had on the sheets of the week before, where there were some. */
  readonly expected?: number;
}

/** Whom something told is about: an athlete alone. */
export const whoOf = ({ athlete, name }: Subject): { athletes: readonly string[]; names: readonly string[] } => ({
  athletes: [athlete.id],
  names: [name],
});
