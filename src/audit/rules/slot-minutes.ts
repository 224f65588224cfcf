// slot-minutes: a session fits its slot, give or take. What the build says a session takes is checked against the least
// it can take.

import { isoDate } from '../../util/days.ts';
import { sessionPlace } from '../places.ts';
import { auditRule } from '../rule.ts';
import { leastSeconds } from '../session-minutes.ts';

export const slotMinutes = auditRule('slot-minutes', (season, find) => {
  const over = season.parameter('slot-minutes', 'over');
  for (const session of season.sessions) {
    const week = season.weekOf(session);
    const { slot, minutes } = session.session;
    const found = Math.max(minutes, Math.floor(leastSeconds(session) / 60));
    if (found * 100 <= slot.minutes * (100 + over(week))) continue;
    find(week, {
      params: {
        date: isoDate(session.day),
        found,
        most: Math.floor((slot.minutes * (100 + over(week))) / 100),
        slot: slot.minutes,
      },
      span: sessionPlace(session) ?? slot.span,
      related: [{ span: slot.span, message: 'the slot' }],
    });
  }
});
