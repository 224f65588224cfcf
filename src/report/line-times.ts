// When in a session each of its lines is done: the session's length shared out by the sets, rests and setting up of its
// lines. For whoever runs the floor by the clock; the lengths themselves were worked out before.

import type { BuiltLine, BuiltSession } from '../build/types.ts';
import { contactsOfRep } from '../library/drill-facts.ts';
import type { Library } from '../library/index.ts';
import { MINUTES } from '../library/minutes.ts';
import { warmUpMinutes } from './card.ts';

/** Minutes from the start of the session. */
export interface LineTime {
  readonly from: number;
  readonly until: number;
}

/** One for each line, in their order. */
export function lineTimes(library: Library, session: BuiltSession): readonly LineTime[] {
  const warmUp = warmUpMinutes(session);
  const seconds = session.lines.map((line) => lineSeconds(library, line));
  const sum = seconds.reduce((total, one) => total + one, 0);
  const working = Math.max(0, session.minutes - warmUp);
  let passed = 0;
  return seconds.map((own) => {
    const from = warmUp + (working * passed) / Math.max(1, sum);
    passed += own;
    return { from, until: warmUp + (working * passed) / Math.max(1, sum) };
  });
}

function lineSeconds(library: Library, line: BuiltLine): number {
  const { order, pairedWith = order } = line;
  // A pair's rests are those of its first line.
  const rests = order <= pairedWith ? line.restSeconds * Math.max(0, line.sets - 1) : 0;
  return line.sets * setSeconds(library, line) + rests + setUpSeconds(line);
}

function setSeconds({ drills, lifts }: Library, { exercise, reps, dropCm }: BuiltLine): number {
  const drill = drills.get(exercise);
  if (drill !== undefined) {
    return dropCm === undefined
      ? reps * contactsOfRep(drill) * MINUTES.contactSeconds[drill.cycle]
      : reps * MINUTES.dropSeconds;
  }
  const lift = lifts.get(exercise);
  if (lift === undefined) return 0;
  const sides = lift.each === true ? 2 : 1;
  return reps * sides * (lift.held === true ? 1 : lift.eccentricSeconds + MINUTES.liftUpSeconds);
}

function setUpSeconds({ kind, barGrams }: BuiltLine): number {
  const { jumps, bar, other } = MINUTES.setUpSeconds;
  return kind === 'drill' ? jumps : barGrams === undefined ? other : bar;
}
