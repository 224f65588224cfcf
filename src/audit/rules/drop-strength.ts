// drop-strength: higher drops need a squat of a share of body mass, or a clearance that an equal was shown. G2 (P),
// G3 (S). A mass or a maximum that isn't written counts as not shown; half and quarter squats show nothing here.

import type { Athlete } from '../../plan/types.ts';
import type { Library } from '../../library/index.ts';
import { isoDate } from '../../util/days.ts';
import { dropLines } from '../drops.ts';
import { writtenPlace } from '../places.ts';
import { auditRule } from '../rule.ts';
import { PERCENT } from '../../util/units.ts';

export const dropStrength = auditRule(
  'drop-strength',
  (season, find) => {
    const { athlete, plan } = season;
    if (athlete.cleared.has('drop-strength')) return;
    const above = season.parameter('drop-strength', 'above');
    const strength = season.parameter('drop-strength', 'strength');
    const highAbove = season.parameter('drop-strength', 'high-above');
    const highStrength = season.parameter('drop-strength', 'high-strength');
    for (const { session, line, drill, cm } of dropLines(season)) {
      const week = season.weekOf(session);
      if (cm <= above(week)) continue;
      const high = cm > highAbove(week);
      const wanted = (high ? highStrength : strength)(week);
      const found = squatPercent(athlete, plan.library);
      if (found >= wanted) continue;
      find(week, {
        params: {
          date: isoDate(session.day),
          exercise: drill.id,
          cm,
          found: Math.floor(found),
          wanted,
          units: season.plan.season.units,
        },
        severity: high ? 'error' : undefined,
        span: writtenPlace(line),
      });
    }
  },
  { asksLoads: true },
);

/** The best squat in per cent of body mass; 0 where either isn't known. */
function squatPercent(athlete: Athlete, library: Library): number {
  if (athlete.massGrams === undefined) return 0;
  let best = 0;
  for (const max of athlete.lifts.values()) {
    const lift = library.lifts.get(max.lift);
    const partial = lift?.depth === 'half' || lift?.depth === 'quarter';
    if (lift?.pattern === 'squat' && lift.each !== true && !partial) best = Math.max(best, max.grams);
  }
  return (best * PERCENT) / athlete.massGrams;
}
