// fast-spacing: after drops or fast drills of the high tier some days without jump session, match or hard practice.
// S1 (S); what counts as a hard practice is C.

import { isoDate } from '../../util/days.ts';
import { freeDaysBehind } from '../free-days.ts';
import { writtenPlace } from '../places.ts';
import { auditRule } from '../rule.ts';
import { isDemanding } from '../line-reading.ts';
import type { SessionReading } from '../session-reading.ts';
import type { Span } from '../../source/types.ts';

export const fastSpacing = auditRule('fast-spacing', (season, find) => {
  for (const session of season.jumpSessions) {
    if (!session.demanding) continue;
    const week = season.weekOf(session);
    const { wanted, next } = freeDaysBehind(season, week, session.day);
    if (next === undefined) continue;
    find(week, {
      params: {
        date: isoDate(session.day),
        next: isoDate(next.day),
        what: next.what,
        found: next.day - session.day - 1,
        wanted,
      },
      span: demandingPlace(session),
    });
  }
});

function demandingPlace(session: SessionReading): Span | undefined {
  const line = session.lines.find(isDemanding);
  return line === undefined ? undefined : writtenPlace(line);
}
