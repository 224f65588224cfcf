// What the rules ask of a week's phase and kind beside what stands in the phase's row of the library: in season or not,
// idle, easy. Called by the rules.

import type { WeekReading } from './season-reading.ts';

/** Weeks in which the sport is played: their sessions are smaller and none is needed. */
export function isInSeason({ built }: WeekReading): boolean {
  return built.phase === 'maintenance' || built.phase === 'sharpening';
}

/** Weeks that plan no training: they break no rule of how often. */
export function isIdle({ built }: WeekReading): boolean {
  return built.kind === 'transition' || built.kind === 'empty';
}

/** Weeks that are meant to be easy. */
export function isEasy({ built }: WeekReading): boolean {
  return built.kind === 'taper' || built.kind === 'hold' || built.kind === 'deload';
}
