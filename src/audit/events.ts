// How a day lies to an athlete's competitions, and which sessions lie too near before one. Called by the rules on days
// before and after competitions; what is too near each says with parameters of its own.

import { EVE_DAYS } from '../library/leg-sparing.ts';
import type { Competition } from '../plan/types.ts';
import type { RelatedPlace } from '../diagnostics/types.ts';
import { isoDate } from '../util/days.ts';
import type { Day } from '../util/days.ts';
import type { SeasonReading, WeekReading } from './season-reading.ts';
import type { SessionReading } from './session-reading.ts';
import type { Parameter } from './parameters.ts';

interface Ahead {
  readonly competition: Competition;
  /** Days from here to its first day; 0 on one of its days. */
  readonly days: number;
  /** Days before it that stay free. */
  readonly wanted: number;
}

/** The competitions whose days, or the free days before them, hold this day, in order of date. */
function competitionsAhead(
  season: SeasonReading,
  week: WeekReading,
  day: Day,
  free: { readonly peak: Parameter<number>; readonly match: Parameter<number> },
): readonly Ahead[] {
  return season.competitions.flatMap((competition) => {
    const { from, until } = competition.range;
    if (until < day) return [];
    const wanted = (competition.prepare === 'peak' ? free.peak : free.match)(week);
    return day < from - wanted ? [] : { competition, days: Math.max(0, from - day), wanted };
  });
}

export interface TooNear {
  readonly session: SessionReading;
  readonly week: WeekReading;
  readonly params: {
    readonly date: string;
    readonly competition: string;
    readonly found: number;
    readonly wanted: number;
  };
  readonly related: readonly RelatedPlace[];
  /** Whether it stands on the eve of a competition, which is then the one that is told of, or on one of its days. */
  readonly eve: boolean;
}

/** Those of the sessions that stand on a day of a competition or on the days before it that the rule keeps free. */
export function sessionsTooNear(
  season: SeasonReading,
  rule: 'event-gap' | 'lift-event-gap',
  sessions: readonly SessionReading[],
): readonly TooNear[] {
  if (season.competitions.length === 0) return [];
  const free = { peak: season.parameter(rule, 'peak'), match: season.parameter(rule, 'match') };
  return sessions.flatMap((session) => {
    const week = season.weekOf(session);
    const all = competitionsAhead(season, week, session.day, free);
    const onEve = all.find(({ competition: { prepare }, days }) => days <= EVE_DAYS[prepare]);
    const ahead = onEve ?? all[0];
    if (ahead === undefined) return [];
    const { competition, days, wanted } = ahead;
    return {
      session,
      week,
      params: { date: isoDate(session.day), competition: competition.name, found: days, wanted },
      related: [{ span: competition.span, message: 'the competition' }],
      eve: onEve !== undefined,
    };
  });
}

/** The competition one of whose days lies within so many days before this one, and how many before; the nearest. */
export function competitionBehind(
  season: SeasonReading,
  day: Day,
  within: number,
): { readonly competition: Competition; readonly days: number } | undefined {
  for (let days = 1; days <= within; days += 1) {
    for (const competition of season.competitions) {
      if (competition.range.from <= day - days && day - days <= competition.range.until) return { competition, days };
    }
  }
  return undefined;
}
