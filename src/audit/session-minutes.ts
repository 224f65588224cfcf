// The least time a session can take, worked out from its lines: warm-up, setting up, the sets' own time and the rests
// between them. Waiting is added by whoever knows how many share a station. Read by the rules on minutes and stations.
// It is a floor: what footfall plans for a session is mostly more, and never less.

import { contactsOfRep } from '../library/drill-facts.ts';
import { MINUTES } from '../library/minutes.ts';
import { VOLUME } from '../library/volume.ts';
import type { LineReading } from './line-reading.ts';
import type { SessionReading } from './session-reading.ts';
import { SECONDS_A_MINUTE } from '../util/units.ts';

/** Seconds of a session that nobody waits in. */
export function leastSeconds(session: SessionReading): number {
  const warmUp = session.jumps ? VOLUME.warmUpMinutes : MINUTES.liftWarmUp;
  let seconds = warmUp * SECONDS_A_MINUTE;
  for (const line of session.lines) if (line.line.part !== 'prepare') seconds += lineSeconds(line);
  return seconds;
}

/** The sets' own time and the rests between them; a pair's rests are counted with the line it belongs to, the first. */
function lineSeconds(line: LineReading): number {
  const { order, sets, restSeconds, pairedWith = order } = line.line;
  const rests = order <= pairedWith ? restSeconds * Math.max(0, sets - 1) : 0;
  return sets * setSeconds(line) + rests;
}

/** One set from its first rep to its last. */
export function setSeconds({ line, drill, lift, dropCm }: LineReading): number {
  if (drill !== undefined) {
    const pace = dropCm === undefined ? MINUTES.contactSeconds[drill.cycle] : MINUTES.dropSeconds;
    return line.reps * (dropCm === undefined ? contactsOfRep(drill) : 1) * pace;
  }
  if (lift === undefined) return 0;
  const sides = lift.each === true ? 2 : 1;
  return line.reps * sides * (lift.held === true ? 1 : lift.eccentricSeconds + MINUTES.liftUpSeconds);
}
