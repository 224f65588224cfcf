// Loads, heights, distances, rests and counts as people read them, in the units the plan asks for. What is prescribed is
// rounded down, so that no page and no message shows more than was worked out.

import { CENTIMETRES_AN_INCH, CENTIMETRES_A_METRE, GRAMS_A_KILO, GRAMS_A_POUND, SECONDS_A_MINUTE } from './units.ts';

export type Units = 'metric' | 'imperial';

/** Up to here a rest is told in seconds alone. */
const MOST_SECONDS = 90;
/** 204.9999 lb after going to grams and back is 205 lb. */
const POUND_SLACK = 0.02;
const INCHES_A_FOOT = 12;

/** `72.5 kg`, or `160 lb` in half pounds. */
export function loadWords(grams: number, units: Units): string {
  return `${loadNumber(grams, units)} ${loadUnit(units)}`;
}

/** The same of kilos, for what a report says as a number of them. */
export const kiloWords = (many: number, units: Units): string => loadWords(Math.round(many * GRAMS_A_KILO), units);

/** What loads are told in. */
export const loadUnit = (units: Units): string => (units === 'metric' ? 'kg' : 'lb');

/** As `loadWords`, without the unit: for lists that name it once. */
export function loadNumber(grams: number, units: Units): string {
  return String(units === 'metric' ? kilos(grams) : halfPounds(grams));
}

/** Kilos with at most two decimals, rounded down: a load is never more than was worked out. */
export function kilos(grams: number): number {
  return Math.floor(grams / 10) / 100;
}

function halfPounds(grams: number): number {
  return Math.floor(2 * (grams / GRAMS_A_POUND + POUND_SLACK)) / 2;
}

/** `30 cm`, or `12 in` in half inches. */
export function heightWords(centimetres: number, units: Units): string {
  return units === 'metric' ? `${centimetres} cm` : `${halfInches(centimetres)} in`;
}

/**
 * The most half inches that a plan may write for a height of no more than so many whole centimetres: 12 in are read as
 * 30 cm, and 18 in as 46, so that 45 cm are 17.5 in. Heights written in inches are told as they were written.
 */
function halfInches(centimetres: number): number {
  return (Math.ceil((100 * centimetres + 50) / (50 * CENTIMETRES_AN_INCH)) - 1) / 2;
}

/** `15 m` to a tenth, or `49 ft`. */
export function distanceWords(metres: number, units: Units): string {
  if (units === 'metric') return `${Math.round(10 * metres) / 10} m`;
  return `${Math.floor((metres * CENTIMETRES_A_METRE) / (INCHES_A_FOOT * CENTIMETRES_AN_INCH))} ft`;
}

/** `90 s`, `3 min`, `2:30 min`. */
export function restWords(seconds: number): string {
  if (seconds <= MOST_SECONDS) return `${seconds} s`;
  const minutes = Math.floor(seconds / SECONDS_A_MINUTE);
  const rest = seconds % SECONDS_A_MINUTE;
  return rest === 0 ? `${minutes} min` : `${minutes}:${String(rest).padStart(2, '0')} min`;
}

/** To the gram, unlike the tables. */
export const exactKilos = (grams: number): number => Math.round(grams) / GRAMS_A_KILO;
