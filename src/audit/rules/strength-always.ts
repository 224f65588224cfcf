// strength-always: every week but transition and empty ones has strength work. R7 (P).

import { isIdle } from '../phases.ts';
import { auditRule } from '../rule.ts';

export const strengthAlways = auditRule('strength-always', (season, find) => {
  const least = season.parameter('strength-always', 'least');
  for (const week of season.weeks) {
    if (isIdle(week)) continue;
    let found = 0;
    for (const session of week.sessions) if (session.lifts) found += 1;
    if (found < least(week)) find(week, { params: { found, wanted: least(week) } });
  }
});
