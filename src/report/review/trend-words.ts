// Numbers of jump tests with the places worth showing, and what a change is worth, said plainly. For the page, in the
// plan's units, and for the tables, with heights in cm.

import type { TrialGroup } from '../../record/trials.ts';
import type { JumpTrend } from './jump-trends.ts';
import type { Units } from '../../util/quantities.ts';
import { CENTIMETRES_A_METRE, CENTIMETRES_AN_INCH } from '../../util/units.ts';

type Measure = TrialGroup['measure'];

export const TREND_UNITS: Readonly<Record<Measure, string>> = { height: 'cm', force: 'N', index: '' };
const PLACES: Readonly<Record<Measure, number>> = { height: 1, force: 0, index: 2 };

/** In the unit that is shown, with the places worth showing. */
export const trendValue = (measure: Measure, value: number): number => Number(trendNumber(measure, value));

/** As `trendValue`, as text with all its places; heights in inches where those are asked for. */
export const trendNumber = (measure: Measure, value: number, units: Units = 'metric'): string =>
  (measure === 'height' ? value * HEIGHT[units].aMetre : value).toFixed(PLACES[measure]);

/** What `trendNumber` is in. */
export const trendUnit = (measure: Measure, units: Units): string =>
  measure === 'height' ? HEIGHT[units].unit : TREND_UNITS[measure];

const HEIGHT: Readonly<Record<Units, { readonly unit: string; readonly aMetre: number }>> = {
  metric: { unit: 'cm', aMetre: CENTIMETRES_A_METRE },
  imperial: { unit: 'in', aMetre: CENTIMETRES_A_METRE / CENTIMETRES_AN_INCH },
};

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
