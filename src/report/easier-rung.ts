// What somebody does instead who can't do a line as written today: the next easier rung of the drill's family that asks
// for nothing new, or the lift with less on it. Never harder in any respect than what is written, so that nobody who may
// do the one has to ask about the other.

import { ALLOTTING } from '../library/families.ts';
import { contactsOfRep } from '../library/drill-facts.ts';
import { getFamily } from '../library/index.ts';
import type { Library } from '../library/index.ts';
import { SHEETS } from '../library/sheets.ts';
import { DIRECTIONS, LEVELS, TIERS } from '../library/types.ts';
import type { Drill, Lift } from '../library/types.ts';
import { appliesTo } from '../plan/applies.ts';
import type { Athlete, Kit, Pin, Plan, TrainingPlace } from '../plan/types.ts';
import type { BuiltLine } from '../build/types.ts';

const NONE: ReadonlySet<string> = new Set();

/**
 * The rung to fall back on, or undefined when there is none and the line is left out. `unwanted` are drills that the
 * coach has taken out. Limits count whatever their days: a card may be read later.
 */
export function findEasierRung(
  library: Library,
  drill: Drill,
  { kit }: TrainingPlace,
  { limits }: Pick<Athlete, 'limits'>,
  unwanted: ReadonlySet<string> = NONE,
): Drill | undefined {
  const avoids = limits.flatMap(({ avoid }) => avoid);
  // An easier rung may be of a slower cycle; all else that a limit names it has no more of than the drill itself.
  const isBarred = ({ id, cycle }: Drill): boolean =>
    unwanted.has(id) ||
    avoids.some((one) => (one.kind === 'drill' && one.id === id) || (one.kind === 'cycle' && one.id === cycle));
  return getFamily(library, drill).findLast(
    (other) => other.rung < drill.rung && !isBarred(other) && asksNoMore(other, drill) && isThere(other, kit),
  );
}

const known = new WeakMap<Plan, WeakMap<Athlete, ReadonlySet<string>>>();

/** Exercises that pins leave out for an athlete, or swap for another, on any day. */
export function unwantedBy(plan: Plan, athlete: Athlete): ReadonlySet<string> {
  const ofPlan = known.get(plan) ?? new WeakMap<Athlete, ReadonlySet<string>>();
  known.set(plan, ofPlan);
  const unwanted = ofPlan.get(athlete) ?? unwantedIn(plan.pins, athlete);
  ofPlan.set(athlete, unwanted);
  return unwanted;
}

function unwantedIn(pins: readonly Pin[], athlete: Athlete): ReadonlySet<string> {
  const effects = pins.filter(({ who }) => appliesTo(who, athlete)).flatMap((pin) => pin.effects);
  return new Set(
    effects.flatMap((effect): readonly string[] => {
      if (effect.kind === 'leave-out') return effect.exercises;
      return effect.kind === 'swap' ? [...effect.swaps.keys()] : [];
    }),
  );
}

function asksNoMore(other: Drill, drill: Drill): boolean {
  return (
    TIERS.indexOf(other.tier) <= TIERS.indexOf(drill.tier) &&
    LEVELS.indexOf(other.fromLevel) <= LEVELS.indexOf(drill.fromLevel) &&
    other.stage <= drill.stage &&
    DIRECTIONS.every((direction) => drill.direction[direction] > 0 || other.direction[direction] === 0) &&
    (other.legs === 'both' || other.legs === drill.legs) &&
    (other.dropCm === undefined || (drill.dropCm !== undefined && other.dropCm < drill.dropCm)) &&
    (other.unstable !== true || drill.unstable === true) &&
    (other.cycle === drill.cycle || other.cycle !== 'fast') &&
    contactsOfRep(other) <= contactsOfRep(drill)
  );
}

function isThere(drill: Drill, kit: Kit): boolean {
  if (drill.kit.some((item) => (kit.counts.get(item) ?? 0) === 0)) return false;
  const height = drill.dropCm ?? (drill.kit.includes('boxes') ? drill.boxCm : undefined);
  if (height === undefined || !drill.kit.includes('boxes')) return true;
  return kit.boxesCm.some((box) => box >= height - ALLOTTING.boxLowerCm && box <= height + ALLOTTING.boxHigherCm);
}

/**
 * The lift made lighter with the place's plates, dumbbells or kettlebells, and what is then on each side of the bar;
 * undefined where there is no load to take from, or nothing lighter.
 */
export function lighterLoad(
  { loadGrams, barGrams }: Pick<BuiltLine, 'loadGrams' | 'barGrams'>,
  loading: Lift['loading'],
  kit: Kit,
): { readonly grams: number; readonly perSideGrams?: number } | undefined {
  if (loadGrams === undefined) return undefined;
  const wanted = (loadGrams * (100 - SHEETS.lighterPercent)) / 100;
  if (barGrams === undefined) {
    const grams = loading === 'trap-bar' ? lighterBar(loadGrams, wanted, kit) : heaviestUpTo(wanted, loading, kit);
    return grams > 0 ? { grams } : undefined;
  }
  const perSideGrams = inSteps(Math.max(0, wanted - barGrams) / 2, kit.smallestPlateGrams);
  const grams = barGrams + 2 * perSideGrams;
  return grams < loadGrams ? { grams, perSideGrams } : undefined;
}

/** A bar of unknown weight is made lighter by the same plate on each side. */
function lighterBar(loadGrams: number, wanted: number, { smallestPlateGrams }: Kit): number {
  const pair = 2 * smallestPlateGrams;
  return loadGrams - Math.ceil((loadGrams - wanted) / pair) * pair;
}

function heaviestUpTo(grams: number, loading: Lift['loading'], kit: Kit): number {
  const list =
    loading === 'dumbbells' ? kit.dumbbellsGrams : loading === 'kettlebell' ? kit.kettlebellsGrams : undefined;
  if (list === undefined || list.length === 0) return inSteps(grams, kit.smallestPlateGrams);
  return list.findLast((one) => one <= grams) ?? 0;
}

const inSteps = (grams: number, step: number): number => Math.floor(grams / step) * step;
