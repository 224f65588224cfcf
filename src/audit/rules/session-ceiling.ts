// session-ceiling: no session over the contacts of its level, which are fewer in season. V1 (S); in season C.
// A level that changes within a week counts from the day of the week's first jump session.

import { isoDate } from '../../util/days.ts';
import { parameterByLevel } from '../parameters.ts';
import { jumpPlace, weekPlace } from '../places.ts';
import { auditRule } from '../rule.ts';
import { isInSeason } from '../phases.ts';

export const sessionCeiling = auditRule('session-ceiling', (season, find) => {
  const outOfSeason = parameterByLevel(season, 'session-ceiling');
  const inSeason = parameterByLevel(season, 'session-ceiling', { prefix: 'in-season-' });
  for (const week of season.weeks) {
    const low = isInSeason(week);
    const most = (low ? inSeason : outOfSeason)(week, week.level);
    for (const session of week.jumpSessions) {
      if (session.contacts <= most) continue;
      find(week, {
        params: { date: isoDate(session.day), found: session.contacts, most, level: week.level, season: low },
        span: jumpPlace(session) ?? weekPlace(season, week),
      });
    }
  }
});
