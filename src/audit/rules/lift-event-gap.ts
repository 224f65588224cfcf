// lift-event-gap: no heavy lifting for legs and hips in the last days before a competition, nor on its days. S7, S12, C.

import { isoDate } from '../../util/days.ts';
import { competitionAhead } from '../events.ts';
import { legLiftPlace } from '../places.ts';
import { auditRule } from '../rule.ts';

export const liftEventGap = auditRule('lift-event-gap', (season, find) => {
  if (season.competitions.length === 0) return;
  const free = { peak: season.parameter('lift-event-gap', 'peak'), match: season.parameter('lift-event-gap', 'match') };
  for (const session of season.sessions) {
    if (!session.heavy) continue;
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
      span: legLiftPlace(session),
      related: [{ span: ahead.competition.span, message: 'the competition' }],
    });
  }
});
