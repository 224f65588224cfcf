// drop-age: children don't drop; in the years after that only with clearance, and from low boxes. G6 (S).

import { isoDate } from '../../util/days.ts';
import { dropLines, isClearedToDrop } from '../drops.ts';
import { writtenPlace } from '../places.ts';
import { auditRule } from '../rule.ts';

export const dropAge = auditRule('drop-age', (season, find) => {
  if (season.athlete.born === undefined) return;
  const under = season.parameter('drop-age', 'under');
  const clearedUnder = season.parameter('drop-age', 'cleared-under');
  const highest = season.parameter('drop-age', 'most');
  for (const { session, line, drill, cm } of dropLines(season)) {
    const week = season.weekOf(session);
    const age = season.age(session.day);
    if (age === undefined || age >= clearedUnder(week)) continue;
    const never = age < under(week);
    const most = never || !isClearedToDrop(season, drill) ? 0 : highest(week);
    if (cm <= most) continue;
    find(week, {
      params: { date: isoDate(session.day), exercise: drill.id, age, cm, most, never, units: season.plan.season.units },
      span: writtenPlace(line),
    });
  }
});
