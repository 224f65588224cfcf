// youth-load: young lifters stay under a share of their maximum, a little higher once cleared, and do no singles. P15 (C).
// Kilos that are written where no maximum is known may be any share of it, and so are none for somebody young.

import type { Athlete } from '../../plan/types.ts';
import { isoDate } from '../../util/days.ts';
import { GRAMS_A_KILO } from '../../util/units.ts';
import { maxGrams } from '../line-reading.ts';
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
        const shared = { date: isoDate(session.day), age, exercise, kilos: 0 };
        const span = writtenPlace(line);
        if (isLoaded(line) && reps < leastReps(week)) {
          find(week, { params: { ...shared, single: true, found: reps, most: leastReps(week) }, span });
        }
        if (isUnknownShare(line, season.athlete)) {
          const kilos = (line.line.loadGrams ?? 0) / GRAMS_A_KILO;
          find(week, { params: { ...shared, kilos, single: false, found: 0, most: bound(week) }, span });
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

/** Of lifts that go by a maximum; the others have none to write down. */
function isUnknownShare({ line, lift }: LineReading, athlete: Athlete): boolean {
  return lift?.maxOf !== undefined && line.loadGrams !== undefined && maxGrams(athlete, lift) === undefined;
}

function isLoaded({ line, lift, percent }: LineReading): boolean {
  return lift !== undefined && lift.held !== true && (percent > 0 || line.loadGrams !== undefined);
}
