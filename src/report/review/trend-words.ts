// Numbers of jump tests with the places worth showing, heights in cm, and what a change is worth, said plainly. For the
// page and the tables.

import type { TrialGroup } from '../../record/trials.ts';
import type { JumpTrend } from './jump-trends.ts';
import { CENTIMETRES_A_METRE } from '../../util/units.ts';

type Measure = TrialGroup['measure'];

export const TREND_UNITS: Readonly<Record<Measure, string>> = { height: 'cm', force: 'N', index: '' };
const PLACES: Readonly<Record<Measure, number>> = { height: 1, force: 0, index: 2 };

/** In the unit that is shown, with the places worth showing. */
export const trendValue = (measure: Measure, value: number): number => Number(trendNumber(measure, value));

/** As `trendValue`, as text with all its places. */
export const trendNumber = (measure: Measure, value: number): string =>
  (measure === 'height' ? value * CENTIMETRES_A_METRE : value).toFixed(PLACES[measure]);

/**
 * What a change is worth: noise up to two typical errors (Hopkins 2000, M), too little under the smallest worthwhile
 * change (J13, M).
 */
export function verdictOf({ before, change = 0, insideNoise, worthwhile }: JumpTrend): string {
  if (before === undefined) return 'no test before it done the same way';
  if (insideNoise === undefined) return 'no error of it is known';
  if (insideNoise) return 'inside the noise';
  if (worthwhile !== undefined && Math.abs(change) < worthwhile) return 'more than noise, too little to matter';
  return change > 0 ? 'more than noise: up' : 'more than noise: down';
}
