// The plates a bar is loaded with, for telling people what to put on each side. Two series, as made for bars in kilograms
// and in pounds; a place has those of its series that are no lighter than its smallest. Common practice, no source (C).

import { GRAMS_A_KILO, GRAMS_A_POUND } from '../util/units.ts';

export interface PlateSeries {
  readonly unit: 'kg' | 'lb';
  readonly gramsAUnit: number;
  /** In the unit, heaviest first. */
  readonly plates: readonly number[];
}

export const PLATE_SERIES: readonly PlateSeries[] = [
  { unit: 'kg', gramsAUnit: GRAMS_A_KILO, plates: [25, 20, 15, 10, 5, 2.5, 2, 1.5, 1.25, 1, 0.5, 0.25] },
  { unit: 'lb', gramsAUnit: GRAMS_A_POUND, plates: [45, 35, 25, 10, 5, 2.5, 1.25, 1, 0.5, 0.25] },
];

/** The step of loads where a place lists no plates: that of dumbbells, whole kilos. Common practice (C). */
export const STEP_WITHOUT_PLATES_GRAMS = GRAMS_A_KILO;

/** A plate that is no more than so many grams off is one of the series. */
const SLACK_GRAMS = 3;

/** The series a place's smallest plate belongs to; undefined when it belongs to none. */
export function findPlateSeries(smallestGrams: number): PlateSeries | undefined {
  return PLATE_SERIES.find(({ plates, gramsAUnit }) =>
    plates.some((plate) => Math.abs(plate * gramsAUnit - smallestGrams) <= SLACK_GRAMS),
  );
}
