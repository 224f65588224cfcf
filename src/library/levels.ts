// What a level stands for where no rule says it: the foot of its band, which is the goal of an athlete without one, and
// what is assumed of an athlete whose last weeks are not written. Ceilings are rules and stand with the rules.

import type { ByLevel } from './types.ts';

/** Contacts of a session at the foot of the level's band: the goal when a plan names none. V1 (S). */
export const GOAL_FOOT: ByLevel<number> = { beginner: 80, intermediate: 100, advanced: 120 };

export interface UsualVolume {
  readonly contactsASession: number;
  readonly sessionsAWeek: number;
}

/** The last weeks of an athlete as assumed when a plan doesn't write them. Common practice, no source (C). */
export const DEFAULT_NOW: ByLevel<UsualVolume> = {
  beginner: { contactsASession: 40, sessionsAWeek: 2 },
  intermediate: { contactsASession: 70, sessionsAWeek: 2 },
  advanced: { contactsASession: 90, sessionsAWeek: 2 },
};
