// Who is new to jumping, and which weeks are the first. Read by the rules that are gentler or stricter then.

import type { Athlete } from '../plan/types.ts';
import { SEASON_SHAPE } from '../library/phases.ts';
import type { SeasonReading } from './season-reading.ts';

/** No earlier jumping is written: either none was done, or nobody has said. */
export function isNewToJumping({ now }: Athlete): boolean {
  return now.origin.kind !== 'written' || now.value.contactsASession === 0 || now.value.sessionsAWeek === 0;
}

/** A beginner whose sessions have been small, or somebody new to jumping. */
export function isNovice(athlete: Athlete): boolean {
  if (isNewToJumping(athlete)) return true;
  const small = athlete.now.value.contactsASession < SEASON_SHAPE.foundationUnderContacts;
  return small && athlete.levels[0]?.is === 'beginner';
}

/** Indexes of the first weeks of the season that have jump sessions, or had them by the record. */
export function firstJumpWeeks(season: SeasonReading, count: number): ReadonlySet<number> {
  const jumped = season.weeks.filter((week) => week.jumpSessions.length > 0 || (week.built.done && week.contacts > 0));
  return new Set(jumped.slice(0, count).map((week) => week.index));
}
