// load-reserve: a set leaves a rep in reserve under the chart's most. C. Sets over the chart are load-reps' to say.

import { isoDate } from '../../util/days.ts';
import { chartReps } from '../chart.ts';
import { forEachLoad, shownPercent } from '../loads.ts';
import { writtenPlace } from '../places.ts';
import { auditRule } from '../rule.ts';

export const loadReserve = auditRule(
  'load-reserve',
  (season, find) => {
    const least = season.parameter('load-reserve', 'least');
    forEachLoad(season, ({ session, line, lift, percent }) => {
      const found = line.line.reps;
      const most = chartReps(percent);
      const week = season.weekOf(session);
      if (found > most || found + least(week) <= most) return;
      find(week, {
        params: {
          date: isoDate(session.day),
          exercise: lift.id,
          found,
          most,
          percent: shownPercent(percent),
          wanted: least(week),
        },
        span: writtenPlace(line),
      });
    });
  },
  { asksLoads: true },
);
