// How the files beside this one write a family: what its rungs share is said once, and rungs are numbered by their
// order, easiest first. Called by those files only. Doses are common practice (C), rests follow S3, S4 and S6.

import type { Direction, DirectionShares, Drill } from '../types.ts';

/** Sets, reps in a set and rest behind it. */
type Dose = Pick<Drill, 'reps' | 'sets' | 'restSeconds'>;

/** Quick, small contacts. */
export const LIGHT: Dose = { reps: { from: 5, to: 10 }, sets: { from: 2, to: 6 }, restSeconds: 60 };
/** Single jumps well within reach. */
export const EASY: Dose = { reps: { from: 3, to: 8 }, sets: { from: 2, to: 6 }, restSeconds: 60 };
/** Jumps with full intent. */
export const STEADY: Dose = { reps: { from: 3, to: 8 }, sets: { from: 2, to: 6 }, restSeconds: 90 };
/** The hardest jumps: fewer in a set, longer rest. */
export const HARD: Dose = { reps: { from: 3, to: 6 }, sets: { from: 2, to: 6 }, restSeconds: 150 };
/** The same done on each leg, where a rep counts twice and one set may be enough. */
export const EASY_EACH: Dose = { reps: { from: 3, to: 6 }, sets: { from: 1, to: 5 }, restSeconds: 60 };
export const STEADY_EACH: Dose = { reps: { from: 3, to: 6 }, sets: { from: 1, to: 5 }, restSeconds: 90 };
export const HARD_EACH: Dose = { reps: { from: 3, to: 5 }, sets: { from: 1, to: 5 }, restSeconds: 150 };
/** A rep of several contacts. */
export const LINKED: Dose = { reps: { from: 1, to: 5 }, sets: { from: 1, to: 6 }, restSeconds: 120 };
/** Runs: the reps are the contacts of one run. */
export const RUN: Dose = { reps: { from: 5, to: 10 }, sets: { from: 1, to: 6 }, restSeconds: 90 };
export const HARD_RUN: Dose = { reps: { from: 5, to: 10 }, sets: { from: 1, to: 5 }, restSeconds: 150 };

/** All of it in one direction. */
export function only(direction: Direction): DirectionShares {
  return { vertical: 0, horizontal: 0, lateral: 0, [direction]: 100 };
}

type RungRow = Pick<Drill, 'id' | 'name' | 'tier' | 'stage' | 'cue' | 'stop'> & Dose & Partial<Drill>;

type Shared = Pick<Drill, 'direction' | 'cycle'> & Partial<Drill>;

/**
 * A family from its rungs. Unless the family or the rung says otherwise a drill is done on both legs, on the ground,
 * from beginner on, without kit, with one contact a rep.
 */
export function family(id: string, shared: Shared, rungs: readonly RungRow[]): readonly Drill[] {
  return rungs.map((row, index) => ({
    legs: 'both',
    lands: 'ground',
    kit: [],
    fromLevel: 'beginner',
    ...(row.metresPerContact === undefined ? { contactsPerRep: 1 } : {}),
    ...shared,
    ...row,
    family: id,
    rung: index + 1,
  }));
}
