// When a lift counts as heavy for legs and hips: by its share of a maximum, or, where none is known, by what the load
// chart makes of its reps and reserve. Called for every lift line.

import { percentForReps } from '../../library/load-chart.ts';
import type { Lift } from '../../library/types.ts';

/**
 * `heavyFrom` and `percent` in per cent of the maximum. Loaded jumps and lifts of the body alone never count. Kilos that are
 * written have no reserve: where no maximum says what share they are, they are as heavy as their reps can be.
 */
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

/** Reps in reserve that kilos by hand are taken to leave; undefined for a lift that goes by no maximum, but by feel. */
export const reserveOfKilos = ({ maxOf }: Lift): number | undefined => (maxOf === undefined ? undefined : 0);
