// The numbers by which the days of sessions are chosen: what each thing a coach would rather not see costs, and how near
// a match a session becomes the smaller one. All C (common practice, no source). The costs stand on four floors, so far
// apart that nothing of a lower floor, added up over the longest season, outweighs one unit of a higher one.

import type { Mark } from './types.ts';

export interface DayCost {
  readonly cost: number;
  readonly says: string;
  readonly mark: Mark;
}

const common = (cost: number, says: string): DayCost => ({ cost, says, mark: 'C' });

/**
 * Preferences, the lowest floor: whole numbers that are weighed against each other. Without the first two, one closed
 * day would move a whole season to other days, since a pattern that is never broken costs nothing; and whoever trains
 * side by side would be pulled apart by one absence.
 */
export const DAY_PREFERENCES = {
  'unusual-jump-day': common(2, 'a jump day that the week has not when nothing is in its way'),
  'unusual-lift-day': common(1, 'a lift day that the week has not when nothing is in its way'),
  'jump-pattern': common(2, 'a jump day on another weekday than the week before'),
  'lift-pattern': common(1, 'a lift day on another weekday than the week before'),
  'jumps-after-heavy': common(4, 'jumps the day after heavy lower-body lifting'),
  'beside-hard-day': common(3, 'a session of a phase with high-tier drills the day before or after a hard day'),
  'no-room-for-drops': common(4, 'a week of a phase with high-tier drills without a session that may have drops'),
  'light-lift': common(5, 'a lift day too near a competition or a test for heavy lifting'),
  'lift-alone': common(1, 'a lift day without jumps: jumps first, then lifts leaves the other days free'),
} as const satisfies Readonly<Record<string, DayCost>>;

/** Second floor: what was handed out already, and the free day of a young athlete, which comes before it. */
export const DAY_STABILITY = {
  published: common(100_000, 'a session on another day than on the sheets that were handed out'),
  'no-free-day': common(1_500_000, 'a week of a young athlete without a day free of everything'),
} as const satisfies Readonly<Record<string, DayCost>>;

/** Third floor: lift sessions the phase asks for. */
export const LIFT_SHORTFALL = {
  missing: common(1_000_000_000, 'a lift session that is not held'),
  none: common(4_000_000_000, 'a week with lifting to do and no lift session at all'),
} as const satisfies Readonly<Record<string, DayCost>>;

/** Highest floor: jump sessions, and the days a coach pinned, each of which counts as two of them. */
export const JUMP_SHORTFALL = {
  missing: common(2_000_000_000_000, 'a jump session that is not held'),
  'pin-unmet': common(4_000_000_000_000, 'a day pinned for jumps that holds none'),
} as const satisfies Readonly<Record<string, DayCost>>;

/** Of the sessions of a week, those with a competition so few days ahead take the smaller sizes. */
export const SMALLER_BEFORE_MATCH_DAYS = 3;
