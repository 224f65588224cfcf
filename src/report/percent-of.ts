// What the percentage of a lift is of. A jump squat has no maximum of its own: the whole of it is a share of the back
// squat's, and its per cent taken for per cent of the squat would be three times the load. So whoever shows a percentage
// that isn't of the lift's own maximum shows it as one of the maximum that was tested.

import type { BuiltLine } from '../build/types.ts';
import type { Athlete, Plan } from '../plan/types.ts';
import { exerciseName } from './exercise-words.ts';
import { PERCENT } from '../util/units.ts';

export interface PercentOf {
  /** Id of the lift whose maximum counts. */
  readonly of: string;
  /** So many per cent of that maximum stand for 100 % here. */
  readonly share: number;
}

/** Undefined for a drill, for a lift without percentages, and where the athlete's own maximum of the lift counts. */
export function percentOf({ library }: Plan, { lifts }: Athlete, exercise: string): PercentOf | undefined {
  const { maxOf, maxShare = PERCENT } = library.lifts.get(exercise) ?? {};
  if (maxOf === undefined || maxOf === exercise || lifts.has(exercise)) return undefined;
  return { of: maxOf, share: maxShare };
}

/** Of another lift's maximum, rounded down: `75 %`, `18 % of back squat`. */
export function percentWords(plan: Plan, athlete: Athlete, line: BuiltLine): string {
  const { percent, lift } = ofTested(plan, athlete, line);
  return lift === undefined ? `${percent} %` : `${percent} % of ${lift}`;
}

/** The same to the athlete: `75 % of your best`, `18 % of your best back squat`. */
export function bestWords(plan: Plan, athlete: Athlete, line: BuiltLine): string {
  const { percent, lift } = ofTested(plan, athlete, line);
  return lift === undefined ? `${percent} % of your best` : `${percent} % of your best ${lift}`;
}

interface OfTested {
  readonly percent: number;
  readonly lift?: string;
}

function ofTested(plan: Plan, athlete: Athlete, { exercise, percent = 0 }: BuiltLine): OfTested {
  const other = percentOf(plan, athlete, exercise);
  if (other === undefined) return { percent };
  const lift = exerciseName(plan.library, other.of).toLowerCase();
  return { percent: Math.floor((percent * other.share) / PERCENT), lift };
}
