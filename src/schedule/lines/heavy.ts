// When a lift counts as heavy for legs and hips: by its share of a maximum, or, where none is known, by what the load
// chart makes of its reps and reserve. Called for every lift line.

import { percentForReps } from '../../library/load-chart.ts';
import type { Lift } from '../../library/types.ts';

/** `heavyFrom` and `percent` in per cent of the maximum. Loaded jumps and lifts of the body alone never count. */
export function isHeavy(
  lift: Lift,
  heavyFrom: number,
  percent: number | undefined,
  reps: number,
  reserve?: number,
): boolean {
  if (!lift.lower || lift.pattern === 'loaded-jump') return false;
  if (percent !== undefined) return percent >= heavyFrom;
  if (lift.loading === 'body' || lift.loading === 'band' || lift.held === true || reserve === undefined) return false;
  return (percentForReps(reps + reserve) ?? 0) >= heavyFrom;
}
