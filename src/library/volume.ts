// The numbers of stages 1 to 4 that are no rule's parameter: how adapted volume follows what was done, what a week's
// contacts step by, when a short primer stands in for a session. Whole per cents, so that there is no rounding to argue
// about. All C (common practice, no source) unless a line says otherwise.

export const VOLUME = {
  /** Contacts are planned in steps of this. */
  step: 5,
  /** After a loading week A is at least (A x own + V x planned) / (own + planned). */
  keepOwn: 1,
  keepPlanned: 2,
  /** Per cent of A that is left after an empty week, and after a week of transition. */
  leftAfterEmpty: 90,
  leftAfterTransition: 90,
  /** Rise of other jumping on the week before, in per cent, over which a loading week may not rise above A. */
  otherJumpsRise: 20,
  /** Per cent of A that a week may have however many other jumps rise beside it. */
  leastBesideOthers: 50,
  /** Per cent of the usual session that a session may have in a taper, hold or deload week. */
  easySession: 75,
  /** Per cent of A that a week of hold may have. */
  hold: 60,
  /** Per cent by which a week may go over its target where its phase lets it. */
  reach: 15,
  /** A week is split into more sessions while each keeps this many contacts. */
  leastSession: 30,
  /** A week that fits into fewer sessions of so many isn't split into smaller ones: nobody comes for five jumps. */
  smallestSession: 15,
  /** Minutes of a slot before the first jump, and of lifting in a slot for both. */
  warmUpMinutes: 12,
  liftingMinutes: 20,
} as const;

/**
 * The rungs of the way back after time away, as the rule `return-ramp` names their shares: four weeks, R3 (M). That a
 * shorter absence climbs the first two is common practice (C).
 */
export const LADDER = { rungs: ['first', 'second', 'third', 'fourth'], short: 2 } as const;
