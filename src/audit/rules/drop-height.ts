// drop-height: no drop higher than the level allows on its day. G7 (P and M for the ranges, the ceilings C).

import { levelOn } from '../../plan/athlete-facts.ts';
import { isoDate } from '../../util/days.ts';
import { dropLines } from '../drops.ts';
import { parameterByLevel } from '../parameters.ts';
import { writtenPlace } from '../places.ts';
import { auditRule } from '../rule.ts';

export const dropHeight = auditRule('drop-height', (season, find) => {
  const highest = parameterByLevel(season, 'drop-height');
  for (const { session, line, drill, cm } of dropLines(season)) {
    const week = season.weekOf(session);
    const level = levelOn(season.athlete, session.day);
    const most = highest(week, level);
    if (cm <= most) continue;
    find(week, {
      params: { date: isoDate(session.day), exercise: drill.id, cm, most, level, units: season.plan.season.units },
      span: writtenPlace(line),
    });
  }
});
