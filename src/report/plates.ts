// What to put on each side of a bar: the fewest plates that make up the load, of those the place has. Says nothing where
// the place's smallest plate belongs to no known series, or the plates don't add up exactly.

import { findPlateSeries } from '../library/plates.ts';
import type { PlateSeries } from '../library/plates.ts';

/** Half units of the finest plate: sides are added up in quarters of a kilogram or pound. */
const STEPS_A_UNIT = 4;
const SLACK = 0.02;

/** `20 + 2.5 kg`, heaviest first; undefined when it can't be said. Empty for nothing on the bar. */
export function plateWords(perSideGrams: number, smallestGrams: number): string | undefined {
  const series = findPlateSeries(smallestGrams);
  if (series === undefined) return undefined;
  const plates = fewestPlates(perSideGrams, smallestGrams, series);
  if (plates === undefined) return undefined;
  return plates.length === 0 ? '' : `${plates.join(' + ')} ${series.unit}`;
}

/** The fewest plates that make exactly this; of several ways the one with the heaviest first. */
function fewestPlates(
  grams: number,
  smallestGrams: number,
  { plates, gramsAUnit }: PlateSeries,
): readonly number[] | undefined {
  const wanted = stepsOf(grams / gramsAUnit);
  if (wanted === undefined) return undefined;
  const usable = plates
    .filter((plate) => plate * gramsAUnit >= smallestGrams - SLACK * gramsAUnit)
    .map((plate) => ({ plate, steps: plate * STEPS_A_UNIT }))
    .filter(({ steps }) => Number.isInteger(steps));
  const best: (readonly number[] | undefined)[] = [[]];
  for (let steps = 1; steps <= wanted; steps += 1) {
    let fewest: readonly number[] | undefined;
    for (const { plate, steps: own } of usable) {
      const rest = own <= steps ? best[steps - own] : undefined;
      if (rest !== undefined && (fewest === undefined || rest.length + 1 < fewest.length)) fewest = [plate, ...rest];
    }
    best[steps] = fewest;
  }
  return best[wanted]?.toSorted((a, b) => b - a);
}

function stepsOf(units: number): number | undefined {
  const steps = Math.round(units * STEPS_A_UNIT);
  return Math.abs(units * STEPS_A_UNIT - steps) > SLACK * STEPS_A_UNIT ? undefined : steps;
}
