// pair-rest: a rest from the heavy set to the jumps it is paired with. S10 (P). The rest of the lift's line is the one
// between; a note with the word cluster marks jumps that belong inside the set.

import { isCluster } from '../../library/pairs.ts';
import { isoDate } from '../../util/days.ts';
import { writtenPlace } from '../places.ts';
import { auditRule } from '../rule.ts';
import type { LineReading } from '../line-reading.ts';
import type { SessionReading } from '../session-reading.ts';

export const pairRest = auditRule(
  'pair-rest',
  (season, find) => {
    const least = season.parameter('pair-rest', 'least');
    const heavy = season.parameter('lift-spacing', 'heavy');
    for (const session of season.sessions) {
      for (const { lift, jump } of pairsOf(session)) {
        const week = season.weekOf(session);
        const found = lift.line.restSeconds;
        if (found >= least(week) || lift.percent < heavy(week)) continue;
        if (isCluster(lift.line.note) || isCluster(jump.line.note)) continue;
        find(week, {
          params: { date: isoDate(session.day), exercise: lift.line.exercise, found, wanted: least(week) },
          span: writtenPlace(lift),
        });
      }
    }
  },
  { asksLoads: true },
);

/** Lifts and the jumps they are paired with, whichever of the two names the other. */
function pairsOf(session: SessionReading): readonly { readonly lift: LineReading; readonly jump: LineReading }[] {
  const pairs: { lift: LineReading; jump: LineReading }[] = [];
  for (const line of session.lines) {
    const order = line.line.pairedWith;
    if (order === undefined) continue;
    const other = session.lines.find((one) => one.line.order === order);
    if (other === undefined) continue;
    // Where each names the other, the pair is counted once.
    if (other.line.pairedWith === line.line.order && other.line.order < line.line.order) continue;
    if (line.lift !== undefined && other.contacts > 0) pairs.push({ lift: line, jump: other });
    else if (other.lift !== undefined && line.contacts > 0) pairs.push({ lift: other, jump: line });
  }
  return pairs;
}
