// eccentric-tempo: no lift for legs or hips lowered for long. P13 (C). The first number of a written tempo is the way
// down; without one the lift's own counts.

import { isoDate } from '../../util/days.ts';
import { writtenPlace } from '../places.ts';
import { auditRule } from '../rule.ts';
import type { LineReading } from '../line-reading.ts';

export const eccentricTempo = auditRule('eccentric-tempo', (season, find) => {
  const most = season.parameter('eccentric-tempo', 'most');
  for (const session of season.sessions) {
    if (!session.lifts) continue;
    const week = season.weekOf(session);
    const bound = most(week);
    for (const line of session.lines) {
      const found = loweringSeconds(line);
      if (found <= bound) continue;
      find(week, {
        params: { date: isoDate(session.day), exercise: line.line.exercise, found, most: bound },
        span: writtenPlace(line),
      });
    }
  }
});

const FIRST_NUMBER = /^\s*(\d+(?:\.\d+)?)/;

/** 0 for what isn't lowered: drills, holds, and lifts of the upper body or the trunk. */
function loweringSeconds({ line, lift }: LineReading): number {
  if (lift?.lower !== true || lift.held === true) return 0;
  const written = line.tempo === undefined ? undefined : FIRST_NUMBER.exec(line.tempo)?.[1];
  return written === undefined ? lift.eccentricSeconds : Number(written);
}
