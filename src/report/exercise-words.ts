// An exercise and its dose as people read them: `Hurdle hop`, `4 x 5`, `2 x 6 each side`, `3 x 30 s`, `3 x 10 (15 m)`.

import type { BuiltLine } from '../build/types.ts';
import { metresOfReps } from '../library/drill-facts.ts';
import type { Drill, Lift } from '../library/types.ts';
import { distanceWords, heightWords } from '../util/quantities.ts';
import type { Units } from '../util/quantities.ts';

/** Where exercises are looked up. */
export interface Exercises {
  readonly drills: ReadonlyMap<string, Drill>;
  readonly lifts: ReadonlyMap<string, Lift>;
}

/** The name of a drill or a lift, its height in inches where the plan is printed so; its id where the library has neither. */
export function exerciseName({ drills, lifts }: Exercises, id: string, units: Units = 'metric'): string {
  return nameIn(units, drills.get(id)?.name ?? lifts.get(id)?.name ?? id);
}

/** A name from the library, the height at its end in these units. */
export function nameIn(units: Units, name: string): string {
  return units === 'metric'
    ? name
    : name.replace(HEIGHT_AT_END, (_, cm: string) => `, ${heightWords(Number(cm), units)}`);
}

/** As in `Drop jump, 40 cm`. */
export const HEIGHT_AT_END = /, (\d+) cm$/u;

/** Sets and repetitions of a line, with what a repetition is. */
export function doseWords(exercises: Exercises, { sets, reps, exercise }: BuiltLine, units: Units): string {
  return `${sets} x ${reps}${repsNote(exercises, exercise, reps, units)}`;
}

function repsNote({ drills, lifts }: Exercises, id: string, reps: number, units: Units): string {
  const drill = drills.get(id);
  if (drill !== undefined) {
    const metres = metresOfReps(drill, reps);
    return `${drill.legs === 'each' ? ' each leg' : ''}${metres === undefined ? '' : ` (${distanceWords(metres, units)})`}`;
  }
  const lift = lifts.get(id);
  const unit = lift?.held === true ? ' s' : '';
  return lift?.each === true ? `${unit} each side` : unit;
}
