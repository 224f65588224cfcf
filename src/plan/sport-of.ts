// What the sport of an athlete says: one of the athlete's own, else the season's. Asked by the scheduler, the audit and
// the reports alike, as a plan says it.

import { findSport } from '../library/sports.ts';
import type { DirectionShares, SportProfile } from '../library/types.ts';
import type { Athlete, Origin, Plan } from './types.ts';

type Sporting = Pick<Athlete, 'sport'>;

/** The profile that counts for an athlete. Throws for a sport that the library doesn't have: resolving has told of it. */
export function sportOf({ season }: Pick<Plan, 'season'>, { sport }: Sporting): SportProfile {
  const id = sport?.value ?? season.sport;
  const profile = findSport(id);
  if (profile === undefined) throw new Error(`no sport is called ${id}`);
  return profile;
}

/** Where it is written, or that it is taken for granted. */
export const sportOriginOf = ({ season }: Pick<Plan, 'season'>, { sport }: Sporting): Origin =>
  sport?.origin ?? season.sportOrigin;

/** Directions by the sport's profile; undefined: the phase's own. */
export const directionsOf = (plan: Pick<Plan, 'season'>, athlete: Sporting): DirectionShares | undefined =>
  athlete.sport === undefined ? plan.season.directions : sportOf(plan, athlete).directions;

/** Equal for sports that ask for the same directions. */
export const directionsKey = (directions: DirectionShares | undefined): string =>
  directions === undefined ? '' : `${directions.vertical}/${directions.horizontal}/${directions.lateral}`;

/** Jumps of a day of competition for which the plan writes none: those of a practice. Common practice, no source. */
export const usualJumps = (plan: Pick<Plan, 'season'>, athlete: Sporting): number =>
  sportOf(plan, athlete).practiceJumps ?? 0;
