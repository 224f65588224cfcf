// load-reps: no more reps in a set than the load chart gives at its share of the maximum. NSCA chart (S).

import { isoDate } from '../../util/days.ts';
import { chartReps } from '../chart.ts';
import { forEachLoad, shownPercent } from '../loads.ts';
import { writtenPlace } from '../places.ts';
import { auditRule } from '../rule.ts';

export const loadReps = auditRule(
  'load-reps',
  (season, find) => {
    forEachLoad(season, ({ session, line, lift, percent }) => {
      const found = line.line.reps;
      const most = chartReps(percent);
      if (found <= most) return;
      find(season.weekOf(session), {
        params: { date: isoDate(session.day), exercise: lift.id, found, most, percent: shownPercent(percent) },
        span: writtenPlace(line),
      });
    });
  },
  { asksLoads: true },
);
