// static-share: drills without a counter-movement a small part of a week; landings aren't counted. D9 (S), the share C.

import { auditRule } from '../rule.ts';
import { weekPlace } from '../places.ts';
import { PERCENT } from '../../util/units.ts';

export const staticShare = auditRule('static-share', (season, find) => {
  const most = season.parameter('static-share', 'most');
  for (const week of season.weeks) {
    const { standing, contacts, whole } = week.mix;
    if (standing * PERCENT <= most(week) * whole) continue;
    find(week, {
      params: { found: Math.ceil((standing * PERCENT) / contacts), most: most(week) },
      span: weekPlace(season, week),
    });
  }
});
