// What a place's bars, plates, dumbbells and kettlebells make of a wanted load: the heaviest that is no heavier. Called
// for every load. Rounding is always down, so that the kit never adds to what was asked.

import type { Kit } from '../../plan/types.ts';
import type { Lift } from '../../library/types.ts';

export interface MadeLoad {
  /** All of it; for dumbbells the one in each hand. */
  readonly loadGrams: number;
  readonly barGrams: number | undefined;
  readonly perSideGrams: number | undefined;
}

/**
 * The heaviest load of the kit that is at most `grams`, or undefined when the lightest is heavier. A trap bar's own mass
 * isn't known, so its load is made in pairs of the smallest plate and nothing is said of its sides.
 */
export function makeLoad(loading: Lift['loading'], kit: Kit, grams: number): MadeLoad | undefined {
  switch (loading) {
    case 'bar':
      return onBar(kit, grams);
    case 'trap-bar':
      return someOf(inSteps(grams, 2 * kit.smallestPlateGrams));
    case 'dumbbells':
      return someOf(heaviest(kit.dumbbellsGrams, grams, kit));
    case 'kettlebell':
      return someOf(heaviest(kit.kettlebellsGrams, grams, kit));
    case 'body':
    case 'machine':
    case 'band':
    case 'medicine-ball':
      return someOf(grams);
  }
}

/** One step of the plates up from a load: the least by which it can rise. */
export function plateStep(loading: Lift['loading'], kit: Kit, grams: number): number {
  const list =
    loading === 'dumbbells' ? kit.dumbbellsGrams : loading === 'kettlebell' ? kit.kettlebellsGrams : undefined;
  const next = list?.find((one) => one > grams);
  if (next !== undefined) return next - grams;
  return loading === 'bar' || loading === 'trap-bar' ? 2 * kit.smallestPlateGrams : kit.smallestPlateGrams;
}

function onBar(kit: Kit, grams: number): MadeLoad | undefined {
  let best: MadeLoad | undefined;
  for (const barGrams of kit.barsGrams) {
    if (barGrams > grams) break;
    const perSideGrams = inSteps((grams - barGrams) / 2, kit.smallestPlateGrams);
    const loadGrams = barGrams + 2 * perSideGrams;
    if (best === undefined || loadGrams >= best.loadGrams) best = { loadGrams, barGrams, perSideGrams };
  }
  return best;
}

const inSteps = (grams: number, step: number): number => Math.floor(grams / step) * step;

function heaviest(list: readonly number[], grams: number, kit: Kit): number {
  if (list.length === 0) return inSteps(grams, kit.smallestPlateGrams);
  return list.findLast((one) => one <= grams) ?? 0;
}

/** A load as it is written, with its sides where the kit makes just that. */
export function writtenLoad(loading: Lift['loading'], kit: Kit, grams: number): MadeLoad {
  const made = makeLoad(loading, kit, grams);
  return made?.loadGrams === grams ? made : plainLoad(grams);
}

/** A load of which nothing is said of a bar or its sides. */
const plainLoad = (loadGrams: number): MadeLoad => ({
  loadGrams,
  barGrams: undefined,
  perSideGrams: undefined,
});

const someOf = (loadGrams: number): MadeLoad | undefined => (loadGrams > 0 ? plainLoad(loadGrams) : undefined);
