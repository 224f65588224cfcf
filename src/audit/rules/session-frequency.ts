// session-frequency: the jump sessions of a week within the numbers of the level. V2, V3 (C). In season none is needed,
// and a week with nothing to plan breaks nothing.

import { isIdle, isInSeason } from '../phases.ts';
import { parameterByLevel } from '../parameters.ts';
import { weekPlace } from '../places.ts';
import { auditRule } from '../rule.ts';

export const sessionFrequency = auditRule('session-frequency', (season, find) => {
  const leastOf = parameterByLevel(season, 'session-frequency', { ending: '-least' });
  const mostOf = parameterByLevel(season, 'session-frequency', { ending: '-most' });
  const inSeasonLeast = season.parameter('session-frequency', 'in-season-least');
  for (const week of season.weeks) {
    const found = week.jumpSessions.length;
    if (found === 0 || isIdle(week)) continue;
    const least = isInSeason(week) ? inSeasonLeast(week) : leastOf(week, week.level);
    const most = mostOf(week, week.level);
    if (found >= least && found <= most) continue;
    find(week, { params: { level: week.level, found, least, most }, span: weekPlace(season, week) });
  }
});
