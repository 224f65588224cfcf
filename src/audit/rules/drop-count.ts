// drop-count: the drops of a session within the level's number, those of a week within a multiple of it. C.

import { isoDate } from '../../util/days.ts';
import { parameterByLevel } from '../parameters.ts';
import { jumpPlace } from '../places.ts';
import { auditRule } from '../rule.ts';
import { dropsOf } from '../line-reading.ts';
import type { SessionReading } from '../session-reading.ts';

export const dropCount = auditRule('drop-count', (season, find) => {
  const mostOf = parameterByLevel(season, 'drop-count');
  const times = season.parameter('drop-count', 'a-week');
  for (const week of season.weeks) {
    const most = mostOf(week, week.level);
    let sum = 0;
    for (const session of week.jumpSessions) {
      const found = session.demanding ? dropsOfSession(session) : 0;
      sum += found;
      if (found <= most) continue;
      find(week, {
        params: { date: isoDate(session.day), found, most, level: week.level },
        span: jumpPlace(session),
      });
    }
    const mostOfWeek = most * times(week);
    if (sum > mostOfWeek) find(week, { params: { date: '', found: sum, most: mostOfWeek, level: week.level } });
  }
});

function dropsOfSession(session: SessionReading): number {
  let sum = 0;
  for (const line of session.lines) sum += dropsOf(line);
  return sum;
}
