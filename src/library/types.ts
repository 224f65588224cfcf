// The shapes of everything the library holds as data: drills, lifts, phases, sport profiles, rules and sources.
// All numbers of the trade stand in this folder, each with its mark of evidence; no other code holds one.

export type Mark = 'P' | 'S' | 'M' | 'C';

export type Level = 'beginner' | 'intermediate' | 'advanced';
export const LEVELS: readonly Level[] = ['beginner', 'intermediate', 'advanced'];

export type ByLevel<T> = Readonly<Record<Level, T>>;

export type Direction = 'vertical' | 'horizontal' | 'lateral';
export const DIRECTIONS: readonly Direction[] = ['vertical', 'horizontal', 'lateral'];
/** Whole per cents that add up to 100. */
export type DirectionShares = Readonly<Record<Direction, number>>;

export const CYCLES = ['fast', 'slow', 'none'] as const;
export type Cycle = (typeof CYCLES)[number];
export type Tier = 'low' | 'moderate' | 'high';
export const TIERS: readonly Tier[] = ['low', 'moderate', 'high'];
export const LEGS = ['both', 'each', 'alternate'] as const;
export type Legs = (typeof LEGS)[number];
export const LANDINGS = ['ground', 'box', 'pit', 'stick'] as const;
export type Landing = (typeof LANDINGS)[number];

/** Of a squat. */
export const DEPTHS = ['full', 'parallel', 'half', 'quarter'] as const;

/** Plates on a bar, a pair of dumbbells, one kettlebell, body weight alone, a machine or a band. */
export const LOADINGS = [
  'bar',
  'trap-bar',
  'dumbbells',
  'kettlebell',
  'body',
  'machine',
  'band',
  'medicine-ball',
] as const;

export type PhaseId =
  | 'foundation'
  | 'hypertrophy'
  | 'strength'
  | 'strength-power'
  | 'power'
  | 'maintenance'
  | 'sharpening'
  | 'hold'
  | 'transition'
  | 'closed';

export const WEEK_KINDS = ['transition', 'empty', 'return', 'taper', 'hold', 'deload', 'load'] as const;

export type WeekKind = (typeof WEEK_KINDS)[number];

/** Of a session, in the order in which they are done. */
export const PARTS = ['prepare', 'jumps', 'lifts', 'trunk'] as const;

export type Part = (typeof PARTS)[number];

/** Kit a place may have. Counts unless said otherwise in KitItem. */
export type KitId =
  | 'boxes'
  | 'hurdles'
  | 'racks'
  | 'bars'
  | 'trap-bars'
  | 'dumbbells'
  | 'kettlebells'
  | 'benches'
  | 'medicine-balls'
  | 'mats'
  | 'pull-up-bars'
  | 'bands'
  | 'cables'
  | 'sand-pit'
  | 'sled'
  | 'cones'
  | 'balance-pads'
  | 'leg-machines';

export interface Range {
  readonly from: number;
  readonly to: number;
}

export interface Drill {
  readonly id: string;
  readonly name: string;
  /** The same movement, easier and harder. */
  readonly family: string;
  /** 1 is the easiest of its family. */
  readonly rung: number;
  readonly direction: DirectionShares;
  readonly cycle: Cycle;
  readonly tier: Tier;
  /** `each`: the reps are done on each leg, so contacts count twice. */
  readonly legs: Legs;
  /** Foot contacts in one repetition (on one leg, for `each`). Absent when the drill is given as distance. */
  readonly contactsPerRep?: number;
  /** Metres covered by one contact, for drills given as distance. */
  readonly metresPerContact?: number;
  readonly lands: Landing;
  readonly fromLevel: Level;
  readonly kit: readonly KitId[];
  readonly reps: Range;
  readonly sets: Range;
  readonly restSeconds: number;
  /** Height dropped from, in cm: only depth landings and drop jumps have one. */
  readonly dropCm?: number;
  /** Height jumped onto or over, in cm, where the drill needs one. */
  readonly boxCm?: number;
  /** Lowest stage of a return (1 to 4) that allows it. */
  readonly stage: 1 | 2 | 3 | 4;
  /** True for single-leg or stick landings done on a pad or board. */
  readonly unstable?: boolean;
  readonly cue: string;
  /** When to stop, in words an athlete reads. */
  readonly stop: string;
}

export const LIFT_PATTERNS = [
  'squat',
  'hinge',
  'single-leg',
  'calf',
  'hamstring-eccentric',
  'upper-push',
  'upper-pull',
  'trunk',
  'loaded-jump',
  'pull-from-floor',
] as const;
export type LiftPattern = (typeof LIFT_PATTERNS)[number];

export interface Lift {
  readonly id: string;
  readonly name: string;
  readonly pattern: LiftPattern;
  readonly depth?: (typeof DEPTHS)[number];
  /** Works the legs or hips, so that spacing of lower-body days counts it. */
  readonly lower: boolean;
  readonly kit: readonly KitId[];
  /** How the load is made. */
  readonly loading: (typeof LOADINGS)[number];
  /** The lift whose one-repetition maximum the percentage is of; absent: no percentage, reps with reserve. */
  readonly maxOf?: string;
  /** Whole per cent of that maximum that stands for 100 % here (100 when it is the lift's own). */
  readonly maxShare?: number;
  /** The lift it is a kind of, where its maximum isn't that lift's: who may not do that one may not do this one. */
  readonly kindOf?: string;
  /** Ids of all lifts it is a kind of, through as many steps as there are; the library works them out. */
  readonly kinds?: readonly string[];
  /** `main` lifts carry the phase's loads; `assistance` and `trunk` are dropped first when minutes run out. */
  readonly role: 'main' | 'assistance' | 'trunk';
  readonly eccentricSeconds: number;
  readonly unstable?: boolean;
  readonly fromLevel: Level;
  /** First phase of the path it belongs to: half squats and loaded jumps come in with strength-power. */
  readonly fromPhase?: PhaseId;
  /** Reps done on each side in turn. */
  readonly each?: boolean;
  /** Held for seconds instead of repeated. */
  readonly held?: boolean;
  readonly reps: Range;
  readonly stage: 1 | 2 | 3 | 4;
  readonly cue: string;
  readonly stop: string;
}

export interface Source {
  /** `V1`, `R3` … */
  readonly id: string;
  readonly fact: string;
  readonly mark: Mark;
  readonly source: string;
}

export type Unit =
  | 'percent'
  | 'contacts'
  | 'jumps'
  | 'days'
  | 'weeks'
  | 'sessions'
  | 'cm'
  | 'kg'
  | 'seconds'
  | 'years'
  | 'times'
  | 'points'
  | 'drops'
  | 'drills'
  | 'reps'
  | 'pain';

export interface RuleParameter {
  readonly name: string;
  /** An integer in `unit`; ratios like 1.3 or 1.2 are kept in per cent (130, 120). Absent: none until a plan sets it. */
  readonly value?: number;
  readonly unit: Unit;
  /** What it bounds, in a few words. */
  readonly says: string;
  /** Which way is stricter: a smaller number or a larger one. */
  readonly stricter: 'smaller' | 'larger';
}

export interface Rule {
  readonly id: string;
  /** The rule in one sentence. */
  readonly holds: string;
  readonly parameters: readonly RuleParameter[];
  readonly severity: 'error' | 'warning' | 'notice';
  /** When it is graver than `severity`, in words; the audit decides. */
  readonly graver?: string;
  readonly waivable: boolean;
  /** A waiver must also say who decided. */
  readonly whoDecided?: boolean;
  /** Why it can't be waived, for those that can't. */
  readonly refusal?: string;
  /** Ids in sources.ts. */
  readonly basis: readonly string[];
  readonly mark: Mark | null;
}

export interface PhaseRow {
  readonly id: PhaseId;
  /** In plain words, for people who are not the coach. */
  readonly words: string;
  /** Whole per cent of the goal per session; absent where nothing is aimed at. */
  readonly goalShare?: number;
  readonly jumpSessions?: ByLevel<number>;
  readonly liftSessions: number;
  /** Shares in whole per cent. */
  readonly directions?: DirectionShares;
  readonly fastShare?: Range;
  readonly highShareMost?: number;
  /** Contacts per working minute, in tenths (40 = 4 a minute). */
  readonly contactsPerMinuteTenths: number;
  readonly deloads: boolean;
  /** V may exceed its target by the reach in this phase. */
  readonly reach: boolean;
}

/** A phase that a path of a segment may hold: lengths in weeks, weight of the cost in tenths. */
export interface PathPhase {
  readonly id: 'hypertrophy' | 'strength' | 'strength-power' | 'power';
  readonly least: number;
  readonly ideal: number;
  readonly most: number;
  readonly weightTenths: number;
}

export interface SportProfile {
  readonly id: string;
  readonly name: string;
  /** Absent: the phase's own shares. */
  readonly directions?: DirectionShares;
  /** Usual jumps in one practice, printed when a plan names a sport but no practice. */
  readonly practiceJumps?: number;
  /** What it competes in; absent: competitions. */
  readonly contest?: 'match';
  readonly mark: Mark;
  readonly basis: readonly string[];
}
