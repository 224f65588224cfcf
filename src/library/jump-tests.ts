// The numbers of jump tests: gravity, the equations of peak power, how much a jump varies by itself, and what jump
// training gave on the average. Read by src/record, which does the sums. What a test is for is left to the coach.

import type { Mark } from './types.ts';

/** Standard gravity in m/s², exact by definition. J1. */
export const STANDARD_GRAVITY = 9.806_65;

export const JUMP_TESTS = ['countermovement-jump', 'squat-jump', 'drop-jump'] as const;

export type JumpTest = (typeof JUMP_TESTS)[number];

/** Higher than anybody jumps: what is over it is a slip of the unit. C. */
export const MOST_JUMP_METRES = 1.2;
/** Lower than the jump of any test. C. */
export const LEAST_JUMP_METRES = 0.02;

/**
 * Times on the ground and up to leaving it, and peak forces: what lies outside is a slip of the unit. Wide enough for the
 * quickest hop of a child and for the slowest dip, for a light pull and for the heaviest. C.
 */
export const PLAUSIBLE_SECONDS = { from: 0.05, to: 5 } as const;
export const PLAUSIBLE_NEWTONS = { from: 50, to: 20_000 } as const;

/** Peak power in W is perCentimetre x height in cm + perKilogram x mass in kg + constant. */
export interface PowerEquation {
  readonly id: string;
  readonly name: string;
  readonly test: 'countermovement-jump' | 'squat-jump';
  /** Whom it was made from; of Sayers and Harman from memory. */
  readonly people: string;
  /** Absent: of both sexes. */
  readonly sex?: 'female' | 'male';
  /** In whole years; of all but Amonette what students, men and women are taken to be (C). */
  readonly ages: { readonly from: number; readonly to?: number };
  readonly perCentimetre: number;
  readonly perKilogram: number;
  readonly constant: number;
  readonly mark: Mark;
  /** Id of its source in the library. */
  readonly basis: string;
}

export const POWER_EQUATIONS: readonly PowerEquation[] = [
  {
    id: 'sayers',
    name: 'Sayers 1999',
    test: 'countermovement-jump',
    people: 'students of both sexes',
    ages: { from: 18 },
    perCentimetre: 51.9,
    perKilogram: 48.9,
    constant: -2007,
    mark: 'M',
    basis: 'J7',
  },
  {
    id: 'sayers-squat-jump',
    name: 'Sayers 1999',
    test: 'squat-jump',
    people: 'students of both sexes',
    ages: { from: 18 },
    perCentimetre: 60.7,
    perKilogram: 45.3,
    constant: -2055,
    mark: 'M',
    basis: 'J7',
  },
  {
    id: 'harman',
    name: 'Harman 1991',
    test: 'countermovement-jump',
    people: 'men',
    sex: 'male',
    ages: { from: 18 },
    perCentimetre: 61.9,
    perKilogram: 36,
    constant: -1822,
    mark: 'M',
    basis: 'J8',
  },
  {
    id: 'canavan-vescovi',
    name: 'Canavan & Vescovi 2004',
    test: 'countermovement-jump',
    people: 'women',
    sex: 'female',
    ages: { from: 18 },
    perCentimetre: 65.1,
    perKilogram: 25.8,
    constant: -1413.1,
    mark: 'P',
    basis: 'J9',
  },
  {
    id: 'amonette',
    name: 'Amonette 2012',
    test: 'countermovement-jump',
    people: 'males of 12 to 24 years',
    sex: 'male',
    ages: { from: 12, to: 24 },
    perCentimetre: 63.6,
    perKilogram: 42.7,
    constant: -1846.5,
    mark: 'P',
    basis: 'J10',
  },
];

/** Where the dynamic strength index is read as asking for one kind of work or the other. Contested. J6 (P). */
export const DYNAMIC_STRENGTH = { ballisticUnder: 0.6, maximalOver: 0.8 } as const;

/** What tells a change from chance. */
export const TEST_NOISE = {
  /**
   * Typical error of a jump height from one day to another, in per cent: the largest of the published ones, so that
   * chance is less often taken for a change. J11 (P).
   */
  jumpPercent: 5.8,
  /** Typical errors within which a change is noise; Hopkins 2000, Sports Med 30:1–15, has 1.5 to 2 (from memory, M). */
  typicalErrors: 2,
  /** Share of the standard deviation between athletes that is worth having. J13 (M). */
  worthwhileShare: 0.2,
} as const;

/** Weeks that the programmes lasted from which the gains are known, from memory (M): Markovic 2007. */
export const TRAINING_GAIN_WEEKS = { from: 4, to: 24 } as const;

/** What groups gained on the average, in per cent, with the 95 % interval of the mean. J15 (P). */
export interface TrainingGain {
  readonly test: JumpTest;
  readonly arms: boolean;
  readonly mean: number;
  readonly low: number;
  readonly high: number;
}

export const TRAINING_GAINS: readonly TrainingGain[] = [
  { test: 'squat-jump', arms: false, mean: 4.7, low: 1.8, high: 7.6 },
  { test: 'countermovement-jump', arms: false, mean: 8.7, low: 7, high: 10.4 },
  { test: 'countermovement-jump', arms: true, mean: 7.5, low: 4.2, high: 10.8 },
  { test: 'drop-jump', arms: false, mean: 4.7, low: 0.8, high: 8.6 },
];
