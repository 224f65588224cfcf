// session-spacing: jump sessions on dates some days apart, primers included. S1 (S); waivable because of S2 (P).

import { isoDate } from '../../util/days.ts';
import { jumpPlace, pinPlace } from '../places.ts';
import { auditRule } from '../rule.ts';

export const sessionSpacing = auditRule('session-spacing', (season, find) => {
  const apart = season.parameter('session-spacing', 'apart');
  for (let index = 1; index < season.jumpSessions.length; index += 1) {
    const before = season.jumpSessions[index - 1];
    const session = season.jumpSessions[index];
    if (before === undefined || session === undefined) continue;
    const week = season.weekOf(session);
    const found = session.day - before.day;
    if (found >= apart(week)) continue;
    find(week, {
      params: { date: isoDate(session.day), before: isoDate(before.day), found, wanted: apart(week) },
      span: jumpPlace(session) ?? jumpPlace(before) ?? pinPlace(season, week, 'on'),
    });
  }
});
