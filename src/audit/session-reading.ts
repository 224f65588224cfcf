// A compiled session as the rules read it, with the sums worked out from its lines. Made once for each session by
// read-season.ts.

import type { Athlete } from '../plan/types.ts';
import type { BuiltSession } from '../build/types.ts';
import type { Library } from '../library/index.ts';
import type { Day } from '../util/days.ts';
import { chartPercent } from './chart.ts';
import { isDemanding, isUnknownShare, readLine } from './line-reading.ts';
import type { LineReading } from './line-reading.ts';

export interface SessionReading {
  readonly session: BuiltSession;
  readonly day: Day;
  /** Index of its week, from 0. */
  readonly week: number;
  readonly lines: readonly LineReading[];
  readonly contacts: number;
  readonly primer: boolean;
  readonly jumps: boolean;
  readonly lifts: boolean;
  /** Lower-body lifting at the share of the maximum that counts as heavy. */
  readonly heavy: boolean;
  /** Drops, or fast drills of the high tier. */
  readonly demanding: boolean;
}

/**
 * Reads a session of the week with that index. From `heavyPercent` of a maximum on lower-body lifting is heavy; what
 * the build itself calls heavy stays so.
 */
export function readSession(
  library: Library,
  athlete: Athlete,
  session: BuiltSession,
  week: number,
  heavyPercent: number,
): SessionReading {
  const lines: LineReading[] = [];
  let summed = 0;
  let heavy = session.heavy;
  let lifts = session.lifts;
  let demanding = false;
  for (const written of session.lines) {
    const line = readLine(library, athlete, written);
    lines.push(line);
    summed += line.contacts;
    heavy ||= isHeavy(athlete, line, heavyPercent);
    lifts ||= line.lift !== undefined && written.part === 'lifts';
    demanding ||= isDemanding(line);
  }
  const contacts = Math.max(summed, session.contacts);
  return {
    session,
    day: session.day,
    week,
    lines,
    contacts,
    primer: session.kind === 'primer',
    jumps: contacts > 0,
    lifts,
    heavy,
    demanding,
  };
}

/** Kilos of which no maximum is known may be the most that so many reps can be done with. */
function isHeavy(athlete: Athlete, { line, lift, percent }: LineReading, heavyPercent: number): boolean {
  if (lift?.lower !== true) return false;
  if (percent >= heavyPercent) return true;
  const isUnknown = lift.pattern !== 'loaded-jump' && isUnknownShare(athlete, line, lift);
  return isUnknown && chartPercent(line.reps) >= heavyPercent;
}
