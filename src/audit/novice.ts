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

/** Indexes of the first weeks of the season that have jump sessions. */
export function firstJumpWeeks(season: SeasonReading, count: number): ReadonlySet<number> {
  const weeks = new Set<number>();
  for (const session of season.jumpSessions) {
    if (weeks.size >= count && !weeks.has(session.week)) break;
    weeks.add(session.week);
  }
  return weeks;
}
