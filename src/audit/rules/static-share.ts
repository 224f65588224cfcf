// static-share: drills without a counter-movement a small part of a week; landings aren't counted. D9 (S), the share C.

import { auditRule } from '../rule.ts';
import { weekPlace } from '../places.ts';

export const staticShare = auditRule('static-share', (season, find) => {
  const most = season.parameter('static-share', 'most');
  for (const week of season.weeks) {
    const { standing, contacts, whole } = week.mix;
    if (standing * 100 <= most(week) * whole) continue;
    find(week, {
      params: { found: Math.ceil((standing * 100) / contacts), most: most(week) },
      span: weekPlace(season, week),
    });
  }
});
