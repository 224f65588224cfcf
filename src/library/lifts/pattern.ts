// How the files beside this one write the lifts of one pattern: what they share is said once. Called by those only.
// Within a pattern the order is one of preference: the first that the place, the level and the gates allow is taken.
// Repetition ranges, tempos and shares of another lift's maximum are common practice (C), and lean to less.

import type { Lift, LiftPattern, Range } from '../types.ts';

/** Lifts that carry the loads of a phase. */
export const MAIN_REPS: Range = { from: 1, to: 12 };
export const ASSISTANCE_REPS: Range = { from: 5, to: 12 };
export const BODY_REPS: Range = { from: 6, to: 20 };
export const QUICK_REPS: Range = { from: 1, to: 5 };
export const HELD_SECONDS: Range = { from: 15, to: 45 };

type LiftRow = Pick<Lift, 'id' | 'name' | 'loading' | 'reps' | 'stage' | 'cue' | 'stop'> & Partial<Lift>;

type Shared = Pick<Lift, 'lower' | 'role'> & Partial<Lift>;

/**
 * The lifts of a pattern. Unless the pattern or the lift says otherwise it needs no kit, is for beginners, and is
 * lowered for two seconds; a share that isn't named is the whole of the maximum.
 */
export function pattern(id: LiftPattern, shared: Shared, lifts: readonly LiftRow[]): readonly Lift[] {
  return lifts.map((row) => ({
    kit: [],
    fromLevel: 'beginner',
    eccentricSeconds: 2,
    ...(row.maxOf === undefined ? {} : { maxShare: 100 }),
    ...shared,
    ...row,
    pattern: id,
  }));
}
