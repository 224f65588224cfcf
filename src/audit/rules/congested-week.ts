// congested-week: where match days crowd together there is no jump session, and one short lift. C.
// A stretch reaches from the first to the last of its match days, wherever a week begins. A primer may stand in it.

import { isoDate } from '../../util/days.ts';
import type { Day } from '../../util/days.ts';
import { sessionPlace } from '../places.ts';
import { auditRule } from '../rule.ts';
import type { SeasonReading, WeekReading } from '../season-reading.ts';

export const congestedWeek = auditRule('congested-week', (season, find) => {
  if (season.competitions.length === 0) return;
  const liftSessions = season.parameter('congested-week', 'lift-sessions');
  let stretch: Stretch | undefined;
  let lifts = 0;
  for (const session of season.sessions) {
    const week = season.weekOf(session);
    const found = stretchAround(season, week, session.day);
    if (found === undefined) continue;
    if (found.from !== stretch?.from) lifts = 0;
    stretch = found;
    const shared = { date: isoDate(session.day), matchDays: found.matchDays, within: found.within };
    const span = sessionPlace(session);
    if (session.jumps && !session.primer) find(week, { params: { ...shared, lifts: 0, most: 0 }, span });
    if (!session.lifts) continue;
    lifts += 1;
    if (lifts > liftSessions(week)) find(week, { params: { ...shared, lifts, most: liftSessions(week) }, span });
  }
});

interface Stretch {
  readonly from: Day;
  readonly until: Day;
  readonly matchDays: number;
  readonly within: number;
}

/** The first crowded stretch that holds the day. */
function stretchAround(season: SeasonReading, week: WeekReading, day: Day): Stretch | undefined {
  const within = season.parameter('congested-week', 'within')(week);
  const least = season.parameter('congested-week', 'match-days')(week);
  for (let from = day - within + 1; from <= day; from += 1) {
    if (season.dayAt(from)?.match === undefined) continue;
    const until = lastMatchDay(season, from, within);
    if (until.day >= day && until.count >= least) return { from, until: until.day, matchDays: until.count, within };
  }
  return undefined;
}

function lastMatchDay(season: SeasonReading, from: Day, within: number): { readonly day: Day; readonly count: number } {
  let last = from;
  let count = 0;
  for (let day = from; day < from + within; day += 1) {
    if (season.dayAt(day)?.match === undefined) continue;
    last = day;
    count += 1;
  }
  return { day: last, count };
}
