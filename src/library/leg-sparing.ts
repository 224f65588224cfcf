// What lifting near a competition leaves out, so that nobody competes on sore legs: heavy and eccentric leg work stands
// early in the week (S12). How many days count as the eve, and what goes then, is common practice, no source (C). Read by
// the stages that place sessions and write their lines; the audit reads the numbers and does its own sums.

import type { PatternPlace } from './lifting.ts';
import type { LiftPattern } from './types.ts';

/**
 * `lowered`: no eccentric work for the hamstrings. `eve`: of the legs fast pulls and a light main lift alone, and
 * not even those where the week has another day for lifting.
 */
export type LegSparing = 'lowered' | 'eve';

/** Days before a competition that count as its eve. Who trains through one as usual lifts on its eve too. */
export const EVE_DAYS = { peak: 2, freshen: 1, through: 0 } as const;

/** A hinge lowered for so many seconds, as a Romanian deadlift, lengthens the hamstrings under load: not on an eve. C. */
export const SLOW_HINGE_SECONDS = 3;

/** Nothing but lowering under load, which leaves the most soreness behind. */
const LOWERED: ReadonlySet<LiftPattern> = new Set(['hamstring-eccentric']);

/** Assistance that works the legs slowly enough to be felt the next day. */
const LEGS: ReadonlySet<LiftPattern> = new Set([...LOWERED, 'squat', 'hinge', 'single-leg', 'calf']);

/** The first of the days that count as the eve of a competition is so many days before it. */
export const eveDays = (prepare: keyof typeof EVE_DAYS): number => EVE_DAYS[prepare];

/** What stays away from lifting so many days before a competition that keeps it light. */
export function legSparing(days: number, prepare: keyof typeof EVE_DAYS): LegSparing {
  return days <= EVE_DAYS[prepare] ? 'eve' : 'lowered';
}

/**
 * The places of a lift session that are left. A main lift stays, light: that is better than none (R7). On an eve it is
 * one, and none that is lowered slowly by the hamstrings.
 */
export function sparePlaces(places: readonly PatternPlace[], sparing: LegSparing | undefined): readonly PatternPlace[] {
  if (sparing === undefined) return places;
  if (sparing === 'lowered') return places.filter((place) => place.part === 'main' || !LOWERED.has(place.pattern));
  return places.flatMap((place) => {
    if (!LEGS.has(place.pattern)) return place;
    // Half squats stand beside another main lift.
    if (place.part !== 'main' || place.depth !== undefined) return [];
    return place.pattern === 'hinge' ? BRISK_HINGE : place;
  });
}

const BRISK_HINGE: PatternPlace = { pattern: 'hinge', part: 'main', brisk: true };
