// lift-spacing: heavy lifting for legs and hips on dates some days apart. What is heavy the rule's own share of the
// maximum says. S7 (C).

import { isoDate } from '../../util/days.ts';
import { legLiftPlace } from '../places.ts';
import { auditRule } from '../rule.ts';
import type { SessionReading } from '../session-reading.ts';

export const liftSpacing = auditRule(
  'lift-spacing',
  (season, find) => {
    const apart = season.parameter('lift-spacing', 'apart');
    let before: SessionReading | undefined;
    for (const session of season.sessions) {
      if (!session.heavy) continue;
      const week = season.weekOf(session);
      if (before !== undefined && session.day - before.day < apart(week)) {
        find(week, {
          params: {
            date: isoDate(session.day),
            before: isoDate(before.day),
            found: session.day - before.day,
            wanted: apart(week),
          },
          span: legLiftPlace(session) ?? legLiftPlace(before),
        });
      }
      before = session;
    }
  },
  { asksLoads: true },
);
