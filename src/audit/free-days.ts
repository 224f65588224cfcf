// What comes in the days behind a session that asks for room. Called by the rules on drops and hard fast drills.

import type { Day } from '../util/days.ts';
import type { SeasonReading, WeekReading } from './season-reading.ts';

export interface FreeDays {
  /** Days that ought to be free. */
  readonly wanted: number;
  /** The first thing within them, if anything is. */
  readonly next?: { readonly day: Day; readonly what: 'session' | 'match' | 'practice' };
}

/** What stands in the days that stay free behind `day`: a jump session, a match, or a practice that counts as hard. */
export function freeDaysBehind(season: SeasonReading, week: WeekReading, day: Day): FreeDays {
  const wanted = season.parameter('fast-spacing', 'free-days')(week);
  const hardPractice = season.parameter('fast-spacing', 'hard-practice')(week);
  for (let next = day + 1; next <= day + wanted; next += 1) {
    const found = season.dayAt(next);
    if (found === undefined) continue;
    if (found.sessions.some((session) => session.jumps)) return { wanted, next: { day: next, what: 'session' } };
    if (found.match !== undefined) return { wanted, next: { day: next, what: 'match' } };
    if (found.practiceJumps >= hardPractice) return { wanted, next: { day: next, what: 'practice' } };
  }
  return { wanted };
}
