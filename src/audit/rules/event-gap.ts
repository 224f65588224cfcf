// event-gap: no ordinary jump session in the last days before a competition, nor on its days; a primer may. S8 (P), the
// numbers C.

import { sessionsTooNear } from '../events.ts';
import { jumpPlace, pinPlace } from '../places.ts';
import { auditRule } from '../rule.ts';

export const eventGap = auditRule('event-gap', (season, find) => {
  const ordinary = season.jumpSessions.filter(({ primer }) => !primer);
  for (const { session, week, params, related } of sessionsTooNear(season, 'event-gap', ordinary)) {
    find(week, { params, span: jumpPlace(session) ?? pinPlace(season, week, 'on'), related });
  }
});
