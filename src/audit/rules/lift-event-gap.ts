// lift-event-gap: no heavy lifting for legs and hips in the last days before a competition, nor on its days. S7, S12, C.

import { sessionsTooNear } from '../events.ts';
import { legLiftPlace } from '../places.ts';
import { auditRule } from '../rule.ts';

export const liftEventGap = auditRule(
  'lift-event-gap',
  (season, find) => {
    const heavy = season.sessions.filter((session) => session.heavy);
    for (const { session, week, params, related } of sessionsTooNear(season, 'lift-event-gap', heavy)) {
      find(week, { params, span: legLiftPlace(session), related });
    }
  },
  { asksLoads: true },
);
