// What a jump test says: heights, indices, power, and whether a change is more than chance. Bare formulas on numbers in
// metres, seconds, kilograms and newtons unless a name says otherwise; nothing is rounded here.

import { DYNAMIC_STRENGTH, STANDARD_GRAVITY, TEST_NOISE } from '../library/jump-tests.ts';
import type { PowerEquation } from '../library/jump-tests.ts';
import { sampleDeviation } from '../util/statistics.ts';
import { CENTIMETRES_A_METRE, PERCENT } from '../util/units.ts';

/** Metres from seconds in the air: g t²/8. J1 (M): mechanics, take-off and landing in the same posture. */
export function heightOfFlight(seconds: number): number {
  return (STANDARD_GRAVITY * seconds ** 2) / 8;
}

/** Speed at take-off in m/s from seconds in the air: g t/2. J1 (M). */
export function takeOffSpeed(seconds: number): number {
  return (STANDARD_GRAVITY * seconds) / 2;
}

/** Height in m by contact time in s; the contact is longer than 0. J3 (P): Healy 2018. */
export function reactiveStrength(height: number, contactSeconds: number): number {
  return height / contactSeconds;
}

/** Height of a counter-movement jump in m by time to take-off in s, longer than 0. J4 (P): Sole 2018. */
export function modifiedReactiveStrength(height: number, takeOffSeconds: number): number {
  return height / takeOffSeconds;
}

/** Counter-movement jump by squat jump, both higher than 0 and of one method. J5 (P): McGuigan 2006. */
export function eccentricUtilisation(countermovement: number, squat: number): number {
  return countermovement / squat;
}

/** Peak force of a counter-movement jump by isometric peak force, both over 0. J6 (P), contested. */
export function dynamicStrength(jumpForce: number, isometricForce: number): number {
  return jumpForce / isometricForce;
}

/** Which kind of work a dynamic strength index is read as asking for, if one. J6 (P), contested. */
export function dynamicStrengthReading(index: number): 'ballistic' | 'maximal force' | undefined {
  if (index < DYNAMIC_STRENGTH.ballisticUnder) return 'ballistic';
  return index > DYNAMIC_STRENGTH.maximalOver ? 'maximal force' : undefined;
}

/** Peak power in W by one of the published equations, from a height in m and a body mass in kg. J7 to J10. */
export function peakPower(equation: PowerEquation, height: number, mass: number): number {
  const { perCentimetre, perKilogram, constant } = equation;
  return perCentimetre * height * CENTIMETRES_A_METRE + perKilogram * mass + constant;
}

/**
 * Typical error of a test from two trials of the same people in the same order, at least two: sample standard deviation
 * of the differences by √2. Hopkins 2000, Sports Med 30:1–15 (from memory, M).
 */
export function typicalError(first: readonly number[], second: readonly number[]): number {
  if (first.length !== second.length) throw new RangeError('a typical error needs as many second trials as first ones');
  return sampleDeviation(first.map((value, index) => (second[index] ?? value) - value)) / Math.SQRT2;
}

/** Smallest change worth having: 0.2 of the sample standard deviation between athletes, at least two. J13 (M). */
export function smallestWorthwhileChange(values: readonly number[]): number {
  return TEST_NOISE.worthwhileShare * sampleDeviation(values);
}

/** Typical error of a jump height, where nothing nearer is known: the published share of it. J11 (P). */
export function usualJumpError(height: number): number {
  return (TEST_NOISE.jumpPercent * height) / PERCENT;
}

/** Whether a change may be chance alone: not over two typical errors. Hopkins 2000 (from memory, M). */
export function isInsideNoise(change: number, error: number): boolean {
  return Math.abs(change) <= TEST_NOISE.typicalErrors * error;
}
