// A compiled line as the rules read it: with its row of the library, and with what the rules ask of it most worked out
// once. Made by session-reading.ts.

import type { Athlete, LiftMax } from '../plan/types.ts';
import type { BuiltLine } from '../build/types.ts';
import type { Library } from '../library/index.ts';
import type { Drill, Lift } from '../library/types.ts';
import { contactsOfSets } from '../library/drill-facts.ts';
import { PERCENT } from '../util/units.ts';

export interface LineReading {
  readonly line: BuiltLine;
  readonly drill: Drill | undefined;
  readonly lift: Lift | undefined;
  readonly contacts: number;
  /** Height dropped from, in cm; undefined where nobody drops. */
  readonly dropCm: number | undefined;
  /**
   * Share of the maximum, in per cent and not rounded: as it is written, or as its kilos make it, whichever is more; 0
   * where neither is known.
   */
  readonly percent: number;
}

/** Reads a line with the plan's own library. Contacts are the build's or those counted anew, whichever are more. */
export function readLine(library: Library, athlete: Athlete, line: BuiltLine): LineReading {
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
    percent: lift === undefined ? 0 : shareOfMax(athlete, line, lift),
  };
}

/** Whether a line asks for free days behind it: drops, and fast drills of the high tier. */
export function isDemanding({ drill, dropCm }: LineReading): boolean {
  return dropCm !== undefined || (drill?.tier === 'high' && drill.cycle === 'fast');
}

/** Drops of a line, both sides together; 0 where nobody drops. */
export function dropsOf({ line, drill, dropCm }: LineReading): number {
  if (drill === undefined || dropCm === undefined) return 0;
  return line.sets * line.reps * (drill.legs === 'each' ? 2 : 1);
}

/** The maximum a lift goes by: its own, or else that of the lift which serves for it; undefined where neither is known. */
export function maxBehind(athlete: Athlete, { id, maxOf }: Lift): LiftMax | undefined {
  return maxOf === undefined ? undefined : (athlete.lifts.get(id) ?? athlete.lifts.get(maxOf));
}

/** What one maximum stands for in this lift, in grams; undefined where the lift has none or the athlete's is unknown. */
export function maxGrams(athlete: Athlete, lift: Lift): number | undefined {
  const max = maxBehind(athlete, lift);
  if (max === undefined) return undefined;
  return max.lift === lift.id ? max.grams : (max.grams * (lift.maxShare ?? PERCENT)) / PERCENT;
}

/** Whether a line has kilos of which nobody knows what share they are, of a lift that goes by a maximum. */
export function isUnknownShare(athlete: Athlete, { loadGrams }: BuiltLine, lift: Lift): boolean {
  return lift.maxOf !== undefined && loadGrams !== undefined && maxBehind(athlete, lift) === undefined;
}

function shareOfMax(athlete: Athlete, line: BuiltLine, lift: Lift): number {
  const written = line.percent ?? 0;
  if (line.loadGrams === undefined || !isWhole(lift)) return written;
  const max = maxGrams(athlete, lift);
  return max === undefined ? written : Math.max(written, (line.loadGrams * PERCENT) / max);
}

/**
 * The kilos are all there is to lift, and as heavy as their share says. Dumbbells and kettlebells are held in pairs or
 * alone, and a jump's load is kept far below what could be lifted.
 */
function isWhole(lift: Lift): boolean {
  if (lift.pattern === 'loaded-jump') return false;
  return lift.loading === 'bar' || lift.loading === 'trap-bar' || lift.loading === 'machine';
}
