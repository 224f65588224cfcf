// surface: drops and drills of the high tier on ground that gives. G8 (P): a surface that takes up shock; which ones don't
// is common practice (C). A jump into a sand pit lands in it.

import { isHardSurface } from '../../library/surfaces.ts';
import { isoDate } from '../../util/days.ts';
import type { LineReading } from '../line-reading.ts';
import { writtenPlace } from '../places.ts';
import { auditRule } from '../rule.ts';

export const surface = auditRule('surface', (season, find) => {
  for (const session of season.sessions) {
    const { place } = session.session.slot;
    if (!isHardSurface(place.surface)) continue;
    for (const line of session.lines) {
      if (!landsHard(line)) continue;
      find(season.weekOf(session), {
        params: {
          date: isoDate(session.day),
          exercise: line.line.exercise,
          surface: place.surface ?? '',
          place: place.id,
        },
        span: writtenPlace(line),
        related: [{ span: place.span, message: 'the place' }],
      });
    }
  }
});

function landsHard({ drill, dropCm }: LineReading): boolean {
  if (drill === undefined || drill.kit.includes('sand-pit')) return false;
  return drill.tier === 'high' || dropCm !== undefined;
}
