// after-event: no jump session, a primer included, right after a day of a competition, for those it is for. S9 (P), the
// number C.

import { isoDate } from '../../util/days.ts';
import { competitionBehind } from '../events.ts';
import { jumpPlace, pinPlace } from '../places.ts';
import { auditRule } from '../rule.ts';

export const afterEvent = auditRule('after-event', (season, find) => {
  if (season.competitions.length === 0) return;
  const freeDays = season.parameter('after-event', 'free-days');
  for (const session of season.jumpSessions) {
    const week = season.weekOf(session);
    const behind = competitionBehind(season, session.day, freeDays(week));
    if (behind === undefined) continue;
    find(week, {
      params: {
        date: isoDate(session.day),
        competition: behind.competition.name,
        found: behind.days,
        wanted: freeDays(week),
      },
      span: jumpPlace(session) ?? pinPlace(season, week, 'on'),
      related: [{ span: behind.competition.span, message: 'the competition' }],
    });
  }
});
