// How a day lies to an athlete's competitions. Called by the rules on days before and after them.

import type { Competition } from '../plan/types.ts';
import type { Day } from '../util/days.ts';
import type { SeasonReading, WeekReading } from './season-reading.ts';
import type { Parameter } from './parameters.ts';

export interface Ahead {
  readonly competition: Competition;
  /** Days from here to its first day; 0 on one of its days. */
  readonly days: number;
  /** Days before it that stay free. */
  readonly wanted: number;
}

/** The competition whose days, or the free days before it, hold this day; the first in order of date. */
export function competitionAhead(
  season: SeasonReading,
  week: WeekReading,
  day: Day,
  free: { readonly peak: Parameter<number>; readonly match: Parameter<number> },
): Ahead | undefined {
  for (const competition of season.competitions) {
    const { from, until } = competition.range;
    if (until < day) continue;
    const wanted = (competition.prepare === 'peak' ? free.peak : free.match)(week);
    if (day >= from - wanted) return { competition, days: Math.max(0, from - day), wanted };
  }
  return undefined;
}

/** The competition one of whose days lies within so many days before this one, and how many before; the nearest. */
export function competitionBehind(
  season: SeasonReading,
  day: Day,
  within: number,
): { readonly competition: Competition; readonly days: number } | undefined {
  for (let days = 1; days <= within; days++) {
    for (const competition of season.competitions) {
      if (competition.range.from <= day - days && day - days <= competition.range.until) return { competition, days };
    }
  }
  return undefined;
}
