// session-rise: a session at most a step over the usual one, and well under it in easy weeks. Common practice (C).
// The usual session is the adapted volume shared over the sessions a week that the phase has for the level.

import { returnStageOn } from '../../plan/athlete-facts.ts';
import { VOLUME } from '../../library/volume.ts';
import { isoDate } from '../../util/days.ts';
import { isEasy } from '../phases.ts';
import { sessionPlace, weekPlace } from '../places.ts';
import { auditRule } from '../rule.ts';
import type { SeasonReading, WeekReading } from '../season-reading.ts';

export const sessionRise = auditRule('session-rise', (season, find) => {
  const percent = season.parameter('session-rise', 'most');
  const always = season.parameter('session-rise', 'contacts');
  for (const week of season.weeks) {
    const usual = usualSession(season, week);
    if (usual === undefined) continue;
    const most = isEasy(week)
      ? Math.floor((VOLUME.easySession * usual) / 100)
      : Math.max(Math.floor(((100 + percent(week)) * usual) / 100), usual + always(week));
    for (const session of week.jumpSessions) {
      if (session.primer || session.contacts <= most) continue;
      find(week, {
        params: { date: isoDate(session.day), found: session.contacts, most, usual },
        span: sessionPlace(session) ?? weekPlace(season, week),
      });
    }
  }
});

/** Undefined in phases that plan no sessions, and where a signed stage sets the sessions instead. */
function usualSession(season: SeasonReading, week: WeekReading): number | undefined {
  const { jumpSessions } = week.phase;
  if (jumpSessions === undefined || week.jumpSessions.length === 0) return undefined;
  if (week.built.kind === 'return' && returnStageOn(season.athlete, week.range.from) !== undefined) return undefined;
  const frequency = Math.min(jumpSessions[week.level], jumpSessions[week.firstDayLevel]);
  return Math.floor((season.adapted[week.index]?.before ?? 0) / frequency);
}
