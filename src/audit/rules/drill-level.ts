// drill-level: every drill is one that the athlete's level on its day may do. G9, D1 (P).

import { LEVELS } from '../../library/types.ts';
import { levelOn } from '../../plan/athlete-facts.ts';
import { isoDate } from '../../util/days.ts';
import { writtenPlace } from '../places.ts';
import { auditRule } from '../rule.ts';

export const drillLevel = auditRule('drill-level', (season, find) => {
  for (const session of season.sessions) {
    const level = levelOn(season.athlete, session.day);
    const rank = LEVELS.indexOf(level);
    for (const line of session.lines) {
      if (line.drill === undefined || LEVELS.indexOf(line.drill.fromLevel) <= rank) continue;
      find(season.weekOf(session), {
        params: { date: isoDate(session.day), exercise: line.drill.id, level, wanted: line.drill.fromLevel },
        span: writtenPlace(line),
      });
    }
  }
});
