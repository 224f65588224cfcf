// What comes too soon behind a jump session for it to have drops or fast high-tier drills: another jump session, a match
// or a hard practice (S1). Called by sessions.ts once all days are chosen.

import type { Competition } from '../../plan/types.ts';
import type { Day } from '../../util/days.ts';
import type { DayRules } from './day-rules.ts';
import { findCell, isHardDay } from './season-days.ts';
import type { SeasonDays } from './season-days.ts';

export interface Demand {
  readonly kind: 'session' | 'match' | 'hard-day';
  readonly day: Day;
  readonly competition?: Competition;
}

/** The first of them in the days that should stay free behind `day`. */
export function findDemand(
  season: SeasonDays,
  rules: DayRules,
  day: Day,
  jumpDates: ReadonlySet<Day>,
): Demand | undefined {
  for (let next = day + 1; next <= day + rules.freeAfterFast; next += 1) {
    const competition = findCell(season, next)?.competition;
    if (competition !== undefined) return { kind: 'match', day: next, competition };
    if (jumpDates.has(next)) return { kind: 'session', day: next };
    if (isHardDay(season, rules, next)) return { kind: 'hard-day', day: next };
  }
  return undefined;
}
