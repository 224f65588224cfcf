// What a lift session holds: which patterns on which day, sets, reps and share of the maximum by phase and by loading
// week of a block, and what age, level and easy weeks take off. Read by the stage that writes the lines. The ranges are
// those of the handbook (P3 to P7, P11); the exact steps within them are common practice (C). Shares are whole or half
// per cents of the one-repetition maximum; every row leaves a rep in reserve on the load chart.

import type { ByLevel, LiftPattern, Mark, PhaseId } from './types.ts';

/** One loading week of a block. */
export interface LoadStep {
  readonly sets: number;
  readonly reps: number;
  /** Share of the one-repetition maximum, in per cent. */
  readonly percent: number;
}

/** Work without a share of a maximum: as many reps as leave so many in reserve. */
export interface ReserveStep {
  readonly sets: number;
  readonly reps: number;
  readonly reserve: number;
}

export interface PhaseLifting {
  readonly phase: PhaseId;
  /** Main lifts, by loading week of the block. */
  readonly main: readonly LoadStep[];
  /** What follows the last row: it stays, or the rows begin again (in phases that last a season). */
  readonly afterLast: 'stay' | 'again';
  readonly restSeconds: number;
  readonly assistance: ReserveStep;
  readonly trunk: { readonly sets: number; readonly reps: number; readonly reserve: number };
  /** Jumps with a load, by loading week; absent before the phases that use them. */
  readonly loadedJump?: readonly LoadStep[];
  /** Pulls from the floor done fast, by loading week. */
  readonly fastPull?: readonly LoadStep[];
  readonly mark: Mark;
  /** Ids of the facts behind it. */
  readonly basis: readonly string[];
}

const step = (sets: number, reps: number, percent: number): LoadStep => ({ sets, reps, percent });
const reserve = (sets: number, reps: number, left: number): ReserveStep => ({ sets, reps, reserve: left });

/** Shares of what stands for a whole in a loaded jump, itself 30 % of a squat's maximum at most (P11, P: 0 to 30 %). */
const LOADED_JUMPS: readonly LoadStep[] = [step(3, 5, 60), step(3, 5, 65), step(3, 5, 70), step(3, 5, 75)];
/** Cleans and their like at 70 % and over (P11, P). */
const FAST_PULLS: readonly LoadStep[] = [step(3, 3, 70), step(3, 3, 75), step(3, 3, 77.5)];

export const PHASE_LIFTING: readonly PhaseLifting[] = [
  {
    phase: 'foundation',
    main: [step(2, 10, 55), step(2, 10, 60), step(3, 10, 60), step(3, 8, 65), step(3, 8, 67.5)],
    afterLast: 'stay',
    restSeconds: 90,
    assistance: reserve(2, 10, 3),
    trunk: reserve(2, 10, 3),
    mark: 'C',
    basis: ['P15'],
  },
  {
    phase: 'hypertrophy',
    main: [step(3, 10, 67.5), step(3, 10, 70), step(4, 8, 72.5), step(4, 8, 75)],
    afterLast: 'stay',
    restSeconds: 90,
    assistance: reserve(3, 10, 2),
    trunk: reserve(3, 10, 3),
    mark: 'S',
    basis: ['P3', 'S6'],
  },
  {
    phase: 'strength',
    main: [step(4, 5, 80), step(4, 5, 82.5), step(4, 4, 85), step(5, 3, 87.5), step(4, 3, 90), step(4, 2, 92.5)],
    afterLast: 'stay',
    restSeconds: 180,
    assistance: reserve(3, 6, 3),
    trunk: reserve(3, 8, 3),
    mark: 'S',
    basis: ['P4', 'S5', 'S6'],
  },
  {
    phase: 'strength-power',
    main: [step(4, 4, 82.5), step(4, 3, 85), step(4, 3, 87.5), step(3, 3, 90), step(3, 2, 92.5)],
    afterLast: 'stay',
    restSeconds: 180,
    assistance: reserve(2, 6, 3),
    trunk: reserve(2, 8, 3),
    loadedJump: LOADED_JUMPS,
    fastPull: FAST_PULLS,
    mark: 'S',
    basis: ['P5', 'P11', 'S5', 'S6'],
  },
  {
    phase: 'power',
    main: [step(3, 3, 85), step(3, 3, 87.5), step(3, 2, 90), step(2, 2, 92.5)],
    afterLast: 'stay',
    restSeconds: 180,
    assistance: reserve(2, 6, 3),
    trunk: reserve(2, 8, 3),
    loadedJump: LOADED_JUMPS,
    fastPull: FAST_PULLS,
    mark: 'M',
    basis: ['P6', 'P11', 'S5', 'S6'],
  },
  {
    phase: 'maintenance',
    main: [step(2, 4, 85), step(3, 4, 85), step(3, 3, 87.5)],
    afterLast: 'again',
    restSeconds: 180,
    assistance: reserve(2, 6, 3),
    trunk: reserve(2, 8, 3),
    mark: 'M',
    basis: ['P7', 'R7'],
  },
  {
    phase: 'sharpening',
    main: [step(2, 3, 87.5), step(2, 3, 87.5), step(2, 2, 90)],
    afterLast: 'stay',
    restSeconds: 180,
    assistance: reserve(1, 6, 3),
    trunk: reserve(2, 8, 3),
    loadedJump: LOADED_JUMPS,
    fastPull: FAST_PULLS,
    mark: 'C',
    basis: ['P6', 'R7'],
  },
  {
    phase: 'hold',
    main: [step(2, 3, 85)],
    afterLast: 'stay',
    restSeconds: 180,
    assistance: reserve(1, 6, 3),
    trunk: reserve(1, 8, 3),
    mark: 'C',
    basis: ['R7'],
  },
];

const BY_PHASE: ReadonlyMap<PhaseId, PhaseLifting> = new Map(PHASE_LIFTING.map((row) => [row.phase, row]));

/** The lifting of a phase, or undefined where the phase has none of its own (transition, closed). */
export function findPhaseLifting(phase: PhaseId): PhaseLifting | undefined {
  return BY_PHASE.get(phase);
}

/** The row of a loading week, counted from 1 within its block. */
export function getLoadStep(rows: readonly LoadStep[], afterLast: 'stay' | 'again', loadingWeek: number): LoadStep {
  const index = afterLast === 'again' ? (loadingWeek - 1) % rows.length : Math.min(loadingWeek, rows.length) - 1;
  const row = rows[index];
  if (row === undefined) throw new Error(`no lifting row for loading week ${loadingWeek}`);
  return row;
}

/** One place in a session that a lift of the pattern fills. */
export interface PatternPlace {
  readonly pattern: LiftPattern;
  readonly part: 'main' | 'assistance' | 'trunk';
  /** Only by a lift of this depth. */
  readonly depth?: 'half';
  /** Only by a lift that isn't lowered slowly. */
  readonly brisk?: boolean;
  /** Only by a lift whose own maximum is known. */
  readonly withMax?: boolean;
}

const main = (pattern: LiftPattern): PatternPlace => ({ pattern, part: 'main' });
const assistance = (pattern: LiftPattern): PatternPlace => ({ pattern, part: 'assistance' });
const TRUNK: PatternPlace = { pattern: 'trunk', part: 'trunk' };
const LOADED_JUMP: PatternPlace = { pattern: 'loaded-jump', part: 'assistance', withMax: true };
const FAST_PULL: PatternPlace = { pattern: 'pull-from-floor', part: 'main', withMax: true };
const HALF_SQUAT: PatternPlace = { pattern: 'squat', part: 'main', depth: 'half', withMax: true };

/**
 * What the lift sessions of a week hold, by how many there are, in the order they are done (S11: fast before heavy, many
 * joints before one). A week with a single session alternates between the two rows of `1`. Assistance stands in the
 * order of its worth: the last is left out first. C.
 */
const DAYS: Readonly<Record<1 | 2 | 3, readonly (readonly PatternPlace[])[]>> = {
  1: [
    [main('squat'), assistance('hamstring-eccentric'), assistance('upper-pull'), assistance('calf'), TRUNK],
    [main('squat'), assistance('single-leg'), assistance('upper-push'), assistance('hinge'), TRUNK],
  ],
  2: [
    [main('squat'), assistance('hamstring-eccentric'), assistance('upper-push'), assistance('calf'), TRUNK],
    [main('hinge'), assistance('single-leg'), assistance('upper-pull'), TRUNK],
  ],
  3: [
    [main('squat'), assistance('hamstring-eccentric'), assistance('upper-push'), TRUNK],
    [main('hinge'), assistance('single-leg'), assistance('upper-pull'), TRUNK],
    [main('squat'), assistance('calf'), assistance('upper-push'), assistance('upper-pull'), TRUNK],
  ],
};

/**
 * The trunk lift that opens the choice of a phase: another one in each block of a path, as holds have no load to go on from.
 * From power on it stays, so that nothing is new near a competition. All of them need no kit and are for everybody; those
 * of each side take longer, so strength has none. Lifts of the other patterns stay all season: their loads step up from
 * the week before, and legs get sore of what is new. C.
 */
const TRUNK_OF_PHASE: Partial<Record<PhaseId, string>> = {
  foundation: 'plank',
  hypertrophy: 'side-plank',
  strength: 'plank',
  'strength-power': 'dead-bug',
  power: 'side-plank',
  sharpening: 'side-plank',
  maintenance: 'side-plank',
  hold: 'side-plank',
};

/** Lifts with that of the phase in front, where it is among them. */
export function inTurn<T extends { readonly id: string }>(lifts: readonly T[], phase: PhaseId): readonly T[] {
  const first = lifts.find(({ id }) => id === TRUNK_OF_PHASE[phase]);
  return first === undefined ? lifts : [first, ...lifts.filter((lift) => lift !== first)];
}

/** How far along the path of phases each is; those of a season in play count as the phase whose work they keep. */
const PHASE_RANK: Readonly<Record<PhaseId, number>> = {
  closed: 0,
  transition: 0,
  foundation: 0,
  hypertrophy: 1,
  strength: 2,
  maintenance: 2,
  hold: 2,
  'strength-power': 3,
  power: 4,
  sharpening: 4,
};

/** Whether a phase is as far along the path as the one from which an exercise comes in, or further. */
export function isFromPhase(phase: PhaseId, from: PhaseId): boolean {
  return PHASE_RANK[phase] >= PHASE_RANK[from];
}

/**
 * The places of a lift session: `index` from 0 among the `sessions` of its week, `week` from 0 in the season. In the
 * late phases the first day may open with loaded jumps and the second with a fast pull, or with half squats where no
 * fast pull fits.
 */
export function sessionPatterns(
  phase: PhaseId,
  sessions: number,
  index: number,
  week: number,
): readonly PatternPlace[] {
  const days = DAYS[sessions <= 1 ? 1 : sessions === 2 ? 2 : 3];
  const turn = sessions <= 1 ? week : index;
  const places = days[turn % days.length] ?? [];
  if (!isFromPhase(phase, 'strength-power')) return places;
  return turn % days.length === 1 && sessions > 1 ? [FAST_PULL, HALF_SQUAT, ...places] : [LOADED_JUMP, ...places];
}

/** What takes a load or a set off. All C. */
export const LIFTING = {
  /** Heaviest share of a maximum by level, in per cent. */
  mostPercent: { beginner: 85, intermediate: 90, advanced: 95 } satisfies ByLevel<number>,
  /** Sets left in a deload, a taper and the first step of a return, in per cent. */
  easySets: 60,
  /** A load that was this heavy stays so in a deload or taper, in per cent. */
  keptLoad: 80,
  /** Heaviest share of a maximum where a session may not be heavy: under the rule's share by this, in per cent. */
  lightBelow: 2.5,
  /** Reserve of a main lift without a known maximum, in reps. */
  unknownMaxReserve: 2,
  /** Kilos count as far under their share of a maximum where they miss it by more than so many points of it, in per cent … */
  farUnderPoints: 5,
  /** … and by more than a pair of the smallest common plates, in grams. */
  farUnderGrams: 2500,
  /** Further reps in reserve below the age of the youth rule. */
  youthReserve: 1,
  /** Reps of a main lift without a maximum where a session may not be heavy. */
  lightReps: 5,
  /** Largest reserve that an athlete can judge, in reps. */
  mostReserve: 5,
  /** Heaviest share of a maximum for more reps than the load chart has, in per cent. */
  beyondChart: 60,
  /** How long a lift is held, by level: share of the way from its shortest to its longest, in per cent, and the step in seconds. */
  holdShare: { beginner: 20, intermediate: 50, advanced: 80 } satisfies ByLevel<number>,
  holdStep: 5,
  /** Sets and reps of a main lift that nothing but the body loads, at most and at least. */
  bodySets: 3,
  bodyReps: 10,
  /** Lifts that may have this many reps are light by nature, and get the reps above as assistance too. */
  manyReps: 15,
  /** Loaded jumps: contacts a session must have before it gives some to them. */
  loadedJumpFromContacts: 50,
  /** … and the most of the session that they take, in per cent. */
  loadedJumpShare: 20,
  /** Rest after assistance and trunk sets, in seconds (S6: 30 to 90 s, S). */
  assistanceRestSeconds: 75,
  trunkRestSeconds: 45,
  /** Rest of a loaded jump and of a fast pull, in seconds (S6: 2 to 5 min, S). */
  fastRestSeconds: 150,
} as const;

/** How the landings of a loaded jump count in a week's shares (C). */
export const LOADED_JUMP_COUNTS_AS = {
  direction: { vertical: 100, horizontal: 0, lateral: 0 },
  cycle: 'slow',
  tier: 'moderate',
} as const;
