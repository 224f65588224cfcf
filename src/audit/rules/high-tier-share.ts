// high-tier-share: contacts of the high tier no more of a week than the phase allows. C.

import { auditRule } from '../rule.ts';
import { weekPlace } from '../places.ts';
import { PERCENT } from '../../util/units.ts';

export const highTierShare = auditRule('high-tier-share', (season, find) => {
  const changed = season.openParameter('high-tier-share', 'most');
  for (const week of season.weeks) {
    const most = changed(week) ?? week.phase.highShareMost;
    const { high, contacts, whole } = week.mix;
    if (most === undefined || high * PERCENT <= most * whole) continue;
    find(week, {
      params: { phase: week.phase.id, found: Math.ceil((high * PERCENT) / contacts), most, high, contacts },
      span: weekPlace(season, week),
    });
  }
});
