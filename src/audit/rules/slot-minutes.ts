// slot-minutes: a session fits its slot, give or take. What the build says a session takes is checked against the least
// it can take. Where the coach's own lines are too long together the scheduler has told which, with all their days.

import { isOf } from '../../diagnostics/is-of.ts';
import { isoDate } from '../../util/days.ts';
import { sessionPlace } from '../places.ts';
import { auditRule } from '../rule.ts';
import type { SeasonReading } from '../season-reading.ts';
import { leastSeconds } from '../session-minutes.ts';
import type { SessionReading } from '../session-reading.ts';
import { PERCENT, SECONDS_A_MINUTE } from '../../util/units.ts';

export const slotMinutes = auditRule('slot-minutes', (season, find) => {
  const over = season.parameter('slot-minutes', 'over');
  for (const session of season.sessions) {
    const week = season.weekOf(session);
    const { slot, minutes } = session.session;
    const found = Math.max(minutes, Math.floor(leastSeconds(session) / SECONDS_A_MINUTE));
    if (found * PERCENT <= slot.minutes * (PERCENT + over(week))) continue;
    if (isTold(season, session)) continue;
    find(week, {
      params: {
        date: isoDate(session.day),
        found,
        most: Math.floor((slot.minutes * (PERCENT + over(week))) / PERCENT),
        slot: slot.minutes,
      },
      span: sessionPlace(session) ?? slot.span,
      related: [{ span: slot.span, message: 'the slot' }],
    });
  }
});

function isTold({ built }: SeasonReading, { day, session }: SessionReading): boolean {
  return built.diagnostics.some(
    (one) =>
      isOf(one, 'lines/added-over-minutes') &&
      one.related.some(({ span }) => span === session.slot.span) &&
      one.params.days.includes(isoDate(day)),
  );
}
