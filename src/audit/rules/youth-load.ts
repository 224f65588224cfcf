// youth-load: young lifters stay under a share of their maximum, a little higher once cleared, and do no singles. P15 (C).
// Reps with some in reserve are a share of the maximum too, by the load chart (S). Kilos that are written where no maximum is
// known may be any share of it, and so are none for somebody young.

import type { Lift } from '../../library/types.ts';
import { isoDate } from '../../util/days.ts';
import { GRAMS_A_KILO } from '../../util/units.ts';
import { isUnknownShare } from '../line-reading.ts';
import type { LineReading } from '../line-reading.ts';
import { chartPercent } from '../chart.ts';
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
        const shared = { date: isoDate(session.day), age, exercise, kilos: 0, units: season.plan.season.units };
        const span = writtenPlace(line);
        if (isLoaded(line) && reps < leastReps(week)) {
          find(week, { params: { ...shared, single: true, found: reps, most: leastReps(week) }, span });
        }
        if (line.lift !== undefined && isUnknownShare(season.athlete, line.line, line.lift)) {
          const kilos = (line.line.loadGrams ?? 0) / GRAMS_A_KILO;
          find(week, { params: { ...shared, kilos, single: false, found: 0, most: bound(week) }, span });
        }
        const percent = line.percent > 0 ? line.percent : percentByReserve(line);
        if (percent > bound(week)) {
          find(week, { params: { ...shared, single: false, found: shownPercent(percent), most: bound(week) }, span });
        }
      }
    }
  },
  { asksLoads: true },
);

/** Reps with so many in reserve, as a share of a maximum nobody knows; 0 where the line says nothing of it. */
function percentByReserve({ line, lift }: LineReading): number {
  if (line.reserve === undefined || lift === undefined || lift.held === true || !isWeight(lift)) return 0;
  return chartPercent(line.reps + line.reserve);
}

/** Weights may be as heavy as somebody can lift, whether the line has kilos or not. */
function isLoaded({ line, lift, percent }: LineReading): boolean {
  if (lift === undefined || lift.held === true) return false;
  return percent > 0 || line.loadGrams !== undefined || isWeight(lift);
}

const isWeight = ({ loading }: Lift): boolean => !WEIGHTLESS.has(loading);

/** Done with the body's own weight, or with what is too light or too soft to be a maximum of. */
const WEIGHTLESS: ReadonlySet<Lift['loading']> = new Set(['body', 'band', 'medicine-ball']);
