// Which athletes and days of a build somebody asked for. Tables and pages all leave out the rest through here, and the
// weeks that an error keeps from being written with it.

import { appliesTo } from '../plan/applies.ts';
import type { Athlete, Who } from '../plan/types.ts';
import type { BuiltAthlete, BuiltSession, BuiltWeek } from '../build/types.ts';
import type { Day } from '../util/days.ts';
import { DAYS_A_WEEK } from '../util/days.ts';

export interface Selection {
  /** An athlete is meant if named, or in a squad that is named; everybody when nobody is. */
  readonly who: Who;
  /** Ids of the athletes of one shard; absent: all of them. */
  readonly shard?: ReadonlySet<string>;
  /** First and last day, both included; absent: as far as the season goes. */
  readonly from?: Day;
  readonly until?: Day;
}

export const EVERYTHING: Selection = { who: { kind: 'everybody' } };

/** Whether the athlete was asked for, and is in the share of this machine. */
export function selectsAthlete(selection: Selection, athlete: Pick<Athlete, 'id' | 'squad'>): boolean {
  return selection.shard?.has(athlete.id) !== false && appliesTo(selection.who, athlete);
}

/** Both ends belong to it; an end that was not asked for is open. */
export function selectsDay({ from, until }: Selection, day: Day): boolean {
  return (from === undefined || from <= day) && (until === undefined || day <= until);
}

/** Sessions are told one by one when no more days than these are asked for. */
const MOST_DAYS_TO_READ_OUT = 14;

/** Whether so few days are asked for that their sessions can be told one by one. */
export function isShort({ from, until }: Selection): boolean {
  return from !== undefined && until !== undefined && until - from < MOST_DAYS_TO_READ_OUT;
}

/** Whether any day of the week is asked for. */
export function selectsWeek({ from, until }: Selection, { starts }: { readonly starts: Day }): boolean {
  return (from === undefined || from < starts + DAYS_A_WEEK) && (until === undefined || starts <= until);
}

/** The weeks that are asked for and may be written. */
export function selectedWeeks(selection: Selection, built: BuiltAthlete): readonly BuiltWeek[] {
  return built.weeks.filter((week) => !built.blocked.has(week.week) && selectsWeek(selection, week));
}

/** The sessions of a week whose day is asked for. */
export function selectedSessions(selection: Selection, week: BuiltWeek): readonly BuiltSession[] {
  return week.sessions.filter((session) => selectsDay(selection, session.day));
}
