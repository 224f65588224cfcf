// What follows from a drill's row: how its contacts are counted, and what the rules call a drop, a landing, a static or
// a single-leg drill. Definitions, for the scheduler and the audit alike.

import type { Drill } from './types.ts';

type Counted = Pick<Drill, 'legs' | 'contactsPerRep'>;

/**
 * Foot contacts of one repetition, both legs together: `each` counts twice (V12, S). A drill given as distance counts
 * its reps by the contact.
 */
export function contactsOfRep(drill: Counted): number {
  return (drill.contactsPerRep ?? 1) * (drill.legs === 'each' ? 2 : 1);
}

/** Foot contacts of a line of sets and reps. */
export function contactsOfSets(drill: Counted, sets: number, reps: number): number {
  return sets * reps * contactsOfRep(drill);
}

/** Metres of one run of so many contacts, for a drill given as distance; undefined for any other. */
export function metresOfReps(drill: Pick<Drill, 'metresPerContact'>, reps: number): number | undefined {
  return drill.metresPerContact === undefined ? undefined : drill.metresPerContact * reps;
}

/** Starts from a height: depth landings and drop jumps. */
export function isDrop(drill: Pick<Drill, 'dropCm'>): boolean {
  return drill.dropCm !== undefined;
}

/** Only stops: no take-off worth the name. */
export function isLanding(drill: Pick<Drill, 'cycle' | 'lands'>): boolean {
  return drill.cycle === 'none' && drill.lands === 'stick';
}

/** Takes off without a counter-movement. Landings are not counted (D9, S). */
export function isStatic(drill: Pick<Drill, 'cycle' | 'lands'>): boolean {
  return drill.cycle === 'none' && drill.lands !== 'stick';
}

/** One leg at a time takes off or lands, by turns or on each side: the cautious reading. */
export function isSingleLeg(drill: Pick<Drill, 'legs'>): boolean {
  return drill.legs !== 'both';
}
