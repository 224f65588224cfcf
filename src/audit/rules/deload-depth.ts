// deload-depth: an easy week well under the adapted volume, and under each loading week of the run before it that had
// jumps. C, R4 (P).

import { weekPlace } from '../places.ts';
import { auditRule } from '../rule.ts';
import { PERCENT } from '../../util/units.ts';

export const deloadDepth = auditRule('deload-depth', (season, find) => {
  const percent = season.parameter('deload-depth', 'most');
  let leastOfRun: number | undefined;
  for (const week of season.weeks) {
    const { kind } = week.built;
    if (kind === 'load') {
      if (week.ordinary > 0) leastOfRun = Math.min(leastOfRun ?? week.ordinary, week.ordinary);
      continue;
    }
    if (kind === 'deload' && week.ordinary > 0) {
      const found = week.ordinary;
      const most = Math.floor((percent(week) * (season.adapted[week.index]?.before ?? 0)) / PERCENT);
      const span = weekPlace(season, week);
      if (found > most) find(week, { params: { run: false, found, most }, span });
      else if (leastOfRun !== undefined && found >= leastOfRun) {
        find(week, { params: { run: true, found, most: leastOfRun }, span });
      }
    }
    leastOfRun = undefined;
  }
});
