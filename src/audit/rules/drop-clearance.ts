// drop-clearance: drops, and single-leg drills of the high tier, only for athletes cleared for them or for the drill
// itself. G4, G5 (S).

import { isSingleLeg } from '../../library/drill-facts.ts';
import { isoDate } from '../../util/days.ts';
import { writtenPlace } from '../places.ts';
import { auditRule } from '../rule.ts';
import type { LineReading } from '../line-reading.ts';

export const dropClearance = auditRule('drop-clearance', (season, find) => {
  const { cleared } = season.athlete;
  for (const session of season.jumpSessions) {
    for (const line of session.lines) {
      for (const wanted of clearancesFor(line)) {
        if (cleared.has(wanted) || cleared.has(line.line.exercise)) continue;
        find(season.weekOf(session), {
          params: { date: isoDate(session.day), exercise: line.line.exercise, wanted },
          span: writtenPlace(line),
        });
      }
    }
  }
});

const NONE: readonly string[] = [];

function clearancesFor({ drill, dropCm }: LineReading): readonly string[] {
  if (drill === undefined || (dropCm === undefined && drill.tier !== 'high')) return NONE;
  const wanted = dropCm === undefined ? [] : ['drops'];
  return drill.tier === 'high' && isSingleLeg(drill) ? [...wanted, 'single-leg-high'] : wanted;
}
