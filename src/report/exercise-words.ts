// An exercise and its dose as people read them: `Hurdle hop`, `4 x 5`, `2 x 6 each side`, `3 x 30 s`, `3 x 20 m`.

import type { BuiltLine } from '../build/types.ts';
import type { Drill, Lift } from '../library/types.ts';

/** Where exercises are looked up. */
export interface Exercises {
  readonly drills: ReadonlyMap<string, Drill>;
  readonly lifts: ReadonlyMap<string, Lift>;
}

export function exerciseName({ drills, lifts }: Exercises, id: string): string {
  return drills.get(id)?.name ?? lifts.get(id)?.name ?? id;
}

/** Sets and repetitions of a line, with what a repetition is. */
export function doseWords(exercises: Exercises, { sets, reps, exercise }: BuiltLine): string {
  return `${sets} x ${reps}${repsNote(exercises, exercise)}`;
}

function repsNote({ drills, lifts }: Exercises, id: string): string {
  const drill = drills.get(id);
  if (drill !== undefined) {
    const unit = drill.metresPerContact === undefined ? '' : ' m';
    return drill.legs === 'each' ? `${unit} each leg` : unit;
  }
  const lift = lifts.get(id);
  const unit = lift?.held === true ? ' s' : '';
  return lift?.each === true ? `${unit} each side` : unit;
}
