// deload-rhythm: short runs of loading weeks with an easy week behind each, and enough loading between two easy ones.
// R4 (P) for easy weeks at all, their rhythm C. Silent in phases without easy weeks; any other kind of week ends a run.

import { auditRule } from '../rule.ts';
import { pinPlace } from '../places.ts';

export const deloadRhythm = auditRule('deload-rhythm', (season, find) => {
  const most = season.parameter('deload-rhythm', 'loading-weeks');
  const between = season.parameter('deload-rhythm', 'between');
  let run = 0;
  for (const week of season.weeks) {
    const { kind } = week.built;
    const span = pinPlace(season, week, 'week-kind');
    if (!week.phase.deloads) {
      run = 0;
    } else if (kind === 'load') {
      run += 1;
      if (run > most(week)) find(week, { params: { soon: false, found: run, wanted: most(week) }, span });
    } else {
      if (kind === 'deload' && run < between(week)) {
        find(week, { params: { soon: true, found: run, wanted: between(week) }, span });
      }
      run = 0;
    }
  }
});
