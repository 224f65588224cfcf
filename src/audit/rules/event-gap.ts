// event-gap: no ordinary jump session in the last days before a competition, nor on its days; a primer may. S8 (P), the
// numbers C.

import { isoDate } from '../../util/days.ts';
import { competitionAhead } from '../events.ts';
import { jumpPlace, pinPlace } from '../places.ts';
import { auditRule } from '../rule.ts';

export const eventGap = auditRule('event-gap', (season, find) => {
  if (season.competitions.length === 0) return;
  const free = { peak: season.parameter('event-gap', 'peak'), match: season.parameter('event-gap', 'match') };
  for (const session of season.jumpSessions) {
    if (session.primer) continue;
    const week = season.weekOf(session);
    const ahead = competitionAhead(season, week, session.day, free);
    if (ahead === undefined) continue;
    find(week, {
      params: {
        date: isoDate(session.day),
        competition: ahead.competition.name,
        found: ahead.days,
        wanted: ahead.wanted,
      },
      span: jumpPlace(session) ?? pinPlace(season, week, 'on'),
      related: [{ span: ahead.competition.span, message: 'the competition' }],
    });
  }
});
