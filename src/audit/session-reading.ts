// A compiled session as the rules read it: each line with its row of the library, and the sums of the session worked
// out from the lines. Made once for each session by season-reading.ts.

import type { Athlete } from '../plan/types.ts';
import type { BuiltLine, BuiltSession } from '../build/types.ts';
import type { Library } from '../library/index.ts';
import type { Drill, Lift } from '../library/types.ts';
import type { Day } from '../util/days.ts';
import { contactsOfSets } from '../library/drill-facts.ts';

export interface LineReading {
  readonly line: BuiltLine;
  readonly drill: Drill | undefined;
  readonly lift: Lift | undefined;
  readonly contacts: number;
  /** Height dropped from, in cm; undefined where nobody drops. */
  readonly dropCm: number | undefined;
}

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

export function readSession(
  library: Library,
  athlete: Athlete,
  session: BuiltSession,
  week: number,
  heavyPercent: number,
): SessionReading {
  const lines = session.lines.map((line) => readLine(library, line));
  let contacts = 0;
  let heavy = session.heavy;
  let demanding = false;
  for (const line of lines) {
    contacts += line.contacts;
    heavy ||= line.lift?.lower === true && shareOfMax(athlete, line) >= heavyPercent;
    demanding ||= isDemanding(line);
  }
  contacts = Math.max(contacts, session.contacts);
  return {
    session,
    day: session.day,
    week,
    lines,
    contacts,
    primer: session.kind === 'primer',
    jumps: contacts > 0,
    lifts: session.lifts || lines.some(({ lift, line }) => lift !== undefined && line.part === 'lifts'),
    heavy,
    demanding,
  };
}

function readLine(library: Library, line: BuiltLine): LineReading {
  const drill = line.kind === 'drill' ? library.drills.get(line.exercise) : undefined;
  const lift = line.kind === 'lift' ? library.lifts.get(line.exercise) : undefined;
  // What is done to get warm isn't counted unless the build counts it.
  const counted = drill === undefined || line.part === 'prepare' ? 0 : contactsOfSets(drill, line.sets, line.reps);
  return {
    line,
    drill,
    lift,
    contacts: Math.max(line.contacts, counted),
    dropCm: drill === undefined ? undefined : (line.dropCm ?? drill.dropCm),
  };
}

/** Whether a line asks for free days behind it. */
export function isDemanding({ drill, dropCm }: LineReading): boolean {
  return dropCm !== undefined || (drill?.tier === 'high' && drill.cycle === 'fast');
}

/** Drops of a line, both sides together; 0 where nobody drops. */
export function dropsOf({ line, drill, dropCm }: LineReading): number {
  if (drill === undefined || dropCm === undefined) return 0;
  return line.sets * line.reps * (drill.legs === 'each' ? 2 : 1);
}

/** What one maximum stands for in this lift, in grams; undefined where the lift has none or the athlete's is unknown. */
export function maxGrams(athlete: Athlete, lift: Lift): number | undefined {
  const max = lift.maxOf === undefined ? undefined : athlete.lifts.get(lift.maxOf);
  return max === undefined ? undefined : (max.grams * (lift.maxShare ?? 100)) / 100;
}

/**
 * Share of the maximum of a line, in per cent and not rounded: as it is written, or as its kilos make it, whichever is
 * more; 0 where neither is known. Dumbbells and kettlebells are held in pairs or alone, and a jump's load is kept far
 * below what could be lifted, so their kilos say nothing.
 */
export function shareOfMax(athlete: Athlete, { line, lift }: LineReading): number {
  const written = line.percent ?? 0;
  if (lift === undefined || line.loadGrams === undefined || !isWhole(lift)) return written;
  const max = maxGrams(athlete, lift);
  return max === undefined ? written : Math.max(written, (line.loadGrams * 100) / max);
}

/** The load is all there is to lift, and as heavy as its share says. */
function isWhole(lift: Lift): boolean {
  if (lift.pattern === 'loaded-jump') return false;
  return lift.loading === 'bar' || lift.loading === 'trap-bar' || lift.loading === 'machine';
}
