// Counts the foot contacts of a line: sets, reps, contacts in a rep, legs. Called by every stage that adds up jumping,
// so that a line written by hand and a line that was worked out count alike. The one surprising decision: a loaded jump
// is a lift, yet each of its landings counts, since the ground doesn't ask what is held.

import type { WrittenLine } from './types.ts';
import { contactsOfSets } from '../library/drill-facts.ts';
import type { Drill, Lift } from '../library/types.ts';

/** Where the exercises of a line are found. */
export interface Exercises {
  readonly drills: ReadonlyMap<string, Drill>;
  readonly lifts: ReadonlyMap<string, Lift>;
}

const LEGS = 2;

/** Contacts of all sets of a lift: the landings of a loaded jump; 0 for lifts that don't leave the ground. */
export function liftContacts(lift: Pick<Lift, 'pattern' | 'each'>, sets: number, reps: number): number {
  return lift.pattern === 'loaded-jump' ? sets * reps * (lift.each === true ? LEGS : 1) : 0;
}

/**
 * Contacts of a written line, its pair included: a pair is done once in each set of the line it belongs to. Throws for
 * an exercise that isn't in the library.
 */
export function writtenContacts(line: WrittenLine, exercises: Exercises): number {
  const own = exerciseContacts(line, line.sets, exercises);
  return line.pair === undefined ? own : own + exerciseContacts(line.pair, line.sets, exercises);
}

/** Contacts of one written exercise without its pair, done for so many sets. */
export function exerciseContacts(line: WrittenLine, sets: number, exercises: Exercises): number {
  const { kind, id } = line.exercise;
  if (kind === 'drill') return contactsOfSets(getExercise(exercises.drills, id), sets, line.reps);
  return liftContacts(getExercise(exercises.lifts, id), sets, line.reps);
}

function getExercise<T>(map: ReadonlyMap<string, T>, id: string): T {
  const value = map.get(id);
  if (value === undefined) throw new Error(`no exercise ${id} in the library`);
  return value;
}

/** Repetitions of a written line without its pair, as programmes are printed: sets x reps of one side. */
export function writtenReps(line: Pick<WrittenLine, 'sets' | 'reps'>): number {
  return line.sets * line.reps;
}
