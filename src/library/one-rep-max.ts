// Estimates of the one-repetition maximum from a set of several reps to failure: seven published equations, all read in
// secondary texts (S). footfall itself uses Brzycki's: of the two in widest use, Brzycki's and Epley's, it is the lower
// for 2 to 9 reps and equal at 1 and 10, so it prescribes less.

import type { Mark } from './types.ts';

export interface OneRepMaxEquation {
  readonly id: string;
  readonly name: string;
  /** As it is printed: w the load, r the reps. */
  readonly formula: string;
  readonly mark: Mark;
  readonly source: string;
  /** For 2 reps and more; a single rep is the maximum itself. */
  readonly ofSeveral: (load: number, reps: number) => number;
}

/** Fewest and most reps the equations hold for. */
export const ESTIMATE_REPS = { from: 1, to: 10 } as const;

const BRZYCKI: OneRepMaxEquation = {
  id: 'brzycki',
  name: 'Brzycki',
  formula: '36w/(37 − r)',
  mark: 'S',
  source: 'Brzycki 1993, as quoted in secondary texts',
  ofSeveral: (load, reps) => (36 * load) / (37 - reps),
};

export const ONE_REP_MAX_EQUATIONS: readonly OneRepMaxEquation[] = [
  {
    id: 'epley',
    name: 'Epley',
    formula: 'w(1 + r/30)',
    mark: 'S',
    source: 'Epley 1985, as quoted in secondary texts',
    ofSeveral: (load, reps) => load * (1 + reps / 30),
  },
  BRZYCKI,
  {
    id: 'lombardi',
    name: 'Lombardi',
    formula: 'w·r^0.10',
    mark: 'S',
    source: 'Lombardi 1989, as quoted in secondary texts',
    ofSeveral: (load, reps) => load * reps ** 0.1,
  },
  {
    id: 'oconner',
    name: "O'Conner",
    formula: 'w(1 + r/40)',
    mark: 'S',
    source: "O'Conner 1989, as quoted in secondary texts",
    ofSeveral: (load, reps) => load * (1 + reps / 40),
  },
  {
    id: 'lander',
    name: 'Lander',
    formula: '100w/(101.3 − 2.67123r)',
    mark: 'S',
    source: 'Lander 1985, as quoted in secondary texts',
    ofSeveral: (load, reps) => (100 * load) / (101.3 - 2.67123 * reps),
  },
  {
    id: 'mayhew',
    name: 'Mayhew',
    formula: '100w/(52.2 + 41.9e^(−0.055r))',
    mark: 'S',
    source: 'Mayhew 1992, as quoted in secondary texts',
    ofSeveral: (load, reps) => (100 * load) / (52.2 + 41.9 * Math.exp(-0.055 * reps)),
  },
  {
    id: 'wathan',
    name: 'Wathan',
    formula: '100w/(48.8 + 53.8e^(−0.075r))',
    mark: 'S',
    source: 'Wathan 1994, as quoted in secondary texts',
    ofSeveral: (load, reps) => (100 * load) / (48.8 + 53.8 * Math.exp(-0.075 * reps)),
  },
];

/** Whether the equations hold for this many reps. */
export function canEstimate(reps: number): boolean {
  return Number.isInteger(reps) && reps >= ESTIMATE_REPS.from && reps <= ESTIMATE_REPS.to;
}

/** The maximum by one equation, in the unit of the load and not rounded. Reps must be whole, 1 to 10. */
export function estimateBy(equation: OneRepMaxEquation, load: number, reps: number): number {
  if (!canEstimate(reps)) throw new RangeError(`no estimate of a maximum from ${reps} reps`);
  return reps === 1 ? load : equation.ofSeveral(load, reps);
}

/** The maximum footfall works with, in the unit of the load and not rounded. Reps must be whole, 1 to 10. */
export function estimateOneRepMax(load: number, reps: number): number {
  return estimateBy(BRZYCKI, load, reps);
}

/**
 * The most that is taken for a maximum, in grams, and as a multiple of body mass where it isn't lifted in a machine: over
 * it a decimal point or a unit is missing. The heaviest pulls from the floor are a little over 500 kg, the highest for body
 * mass about five times it (both from memory, M); the room above them is C.
 */
export const MOST_MAXIMUM = { grams: 600_000, inMachineGrams: 1_000_000, bodyMasses: 5 } as const;
