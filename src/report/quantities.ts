// Loads, heights, rests and counts as people read them, in the units the plan asks for. Loads are rounded down, so that
// no page shows more than was worked out.

import type { Season } from '../plan/types.ts';
import { kilos } from './lines-table.ts';
import { CENTIMETRES_AN_INCH, GRAMS_A_KILO, GRAMS_A_POUND, SECONDS_A_MINUTE } from '../util/units.ts';

export type Units = Season['units'];

/** Up to here a rest is told in seconds alone. */
const MOST_SECONDS = 90;
/** 204.9999 lb after going to grams and back is 205 lb. */
const POUND_SLACK = 0.02;

/** `72.5 kg`, or `160 lb` in half pounds. */
export function loadWords(grams: number, units: Units): string {
  return units === 'metric' ? `${kilos(grams)} kg` : `${halfPounds(grams)} lb`;
}

/** As `loadWords`, without the unit: for lists that name it once. */
export function loadNumber(grams: number, units: Units): string {
  return String(units === 'metric' ? kilos(grams) : halfPounds(grams));
}

function halfPounds(grams: number): number {
  return Math.floor(2 * (grams / GRAMS_A_POUND + POUND_SLACK)) / 2;
}

/** `30 cm`, or `12 in`. */
export function heightWords(centimetres: number, units: Units): string {
  return units === 'metric' ? `${centimetres} cm` : `${Math.round(centimetres / CENTIMETRES_AN_INCH)} in`;
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
