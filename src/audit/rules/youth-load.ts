// youth-load: young lifters stay under a share of their maximum, a little higher once cleared, and do no singles. P15 (C).

import { isoDate } from '../../util/days.ts';
import type { LineReading } from '../line-reading.ts';
import { shownPercent } from '../loads.ts';
import { writtenPlace } from '../places.ts';
import { auditRule } from '../rule.ts';

export const youthLoad = auditRule(
  'youth-load',
  (season, find) => {
    if (season.athlete.born === undefined) return;
    const under = season.parameter('youth-load', 'under');
    const leastReps = season.parameter('youth-load', 'least-reps');
    const bound = season.parameter('youth-load', season.athlete.cleared.has('loads') ? 'cleared' : 'most');
    for (const session of season.sessions) {
      if (!session.lifts) continue;
      const week = season.weekOf(session);
      const age = season.age(session.day);
      if (age === undefined || age >= under(week)) continue;
      for (const line of session.lines) {
        const { reps, exercise } = line.line;
        const shared = { date: isoDate(session.day), age, exercise };
        const span = writtenPlace(line);
        if (isLoaded(line) && reps < leastReps(week)) {
          find(week, { params: { ...shared, single: true, found: reps, most: leastReps(week) }, span });
        }
        if (line.percent > bound(week)) {
          find(week, {
            params: { ...shared, single: false, found: shownPercent(line.percent), most: bound(week) },
            span,
          });
        }
      }
    }
  },
  { asksLoads: true },
);

function isLoaded({ line, lift, percent }: LineReading): boolean {
  return lift !== undefined && lift.held !== true && (percent > 0 || line.loadGrams !== undefined);
}
