// The phases as rows of data: what a week of each aims at, and the lengths and steps from which the path to a peak is
// chosen. Read by the scheduler and the audit. Every number is a default and common practice (C) unless said otherwise;
// the order of the path follows P1 and P2, its block lengths P9, strength in every phase R7 and R9.

import type { PathPhase, PhaseId, PhaseRow } from './types.ts';

const EARLY_DIRECTIONS = { vertical: 50, horizontal: 25, lateral: 25 };
const MIDDLE_DIRECTIONS = { vertical: 50, horizontal: 30, lateral: 20 };
const LATE_DIRECTIONS = { vertical: 55, horizontal: 25, lateral: 20 };

/** Directions are those of the general profile; a sport's own take their place. */
export const PHASES: readonly PhaseRow[] = [
  {
    id: 'foundation',
    words: 'Learn to land, and get used to jumping',
    goalShare: 60,
    jumpSessions: { beginner: 2, intermediate: 2, advanced: 2 },
    liftSessions: 2,
    directions: EARLY_DIRECTIONS,
    fastShare: { from: 0, to: 20 },
    highShareMost: 0,
    contactsPerMinuteTenths: 25,
    deloads: false,
    reach: false,
  },
  {
    id: 'hypertrophy',
    words: 'Build muscle, and many easy jumps',
    goalShare: 70,
    jumpSessions: { beginner: 2, intermediate: 2, advanced: 2 },
    liftSessions: 3,
    directions: EARLY_DIRECTIONS,
    fastShare: { from: 0, to: 20 },
    highShareMost: 0,
    contactsPerMinuteTenths: 40,
    deloads: true,
    reach: true,
  },
  {
    id: 'strength',
    words: 'Lift heavy, and jump well',
    goalShare: 85,
    jumpSessions: { beginner: 2, intermediate: 2, advanced: 2 },
    liftSessions: 3,
    directions: MIDDLE_DIRECTIONS,
    fastShare: { from: 10, to: 30 },
    highShareMost: 10,
    contactsPerMinuteTenths: 35,
    deloads: true,
    reach: true,
  },
  {
    id: 'strength-power',
    words: 'Turn strength into quick force',
    goalShare: 100,
    jumpSessions: { beginner: 2, intermediate: 2, advanced: 3 },
    liftSessions: 2,
    directions: MIDDLE_DIRECTIONS,
    fastShare: { from: 25, to: 50 },
    highShareMost: 25,
    contactsPerMinuteTenths: 30,
    deloads: true,
    reach: true,
  },
  {
    id: 'power',
    words: 'Jump as high and as fast as you can',
    goalShare: 100,
    jumpSessions: { beginner: 2, intermediate: 3, advanced: 3 },
    liftSessions: 2,
    directions: LATE_DIRECTIONS,
    fastShare: { from: 35, to: 60 },
    highShareMost: 35,
    contactsPerMinuteTenths: 25,
    deloads: true,
    reach: false,
  },
  {
    id: 'maintenance',
    words: 'Keep what you have through the season',
    goalShare: 50,
    jumpSessions: { beginner: 1, intermediate: 1, advanced: 2 },
    liftSessions: 1,
    directions: EARLY_DIRECTIONS,
    fastShare: { from: 30, to: 60 },
    highShareMost: 20,
    contactsPerMinuteTenths: 25,
    deloads: false,
    reach: false,
  },
  {
    id: 'sharpening',
    words: 'Get sharp for the last competitions',
    goalShare: 60,
    jumpSessions: { beginner: 1, intermediate: 2, advanced: 2 },
    liftSessions: 1,
    directions: LATE_DIRECTIONS,
    fastShare: { from: 35, to: 60 },
    highShareMost: 35,
    contactsPerMinuteTenths: 25,
    deloads: false,
    reach: false,
  },
  {
    id: 'hold',
    words: 'Stay fresh between two peaks',
    jumpSessions: { beginner: 1, intermediate: 2, advanced: 2 },
    liftSessions: 1,
    directions: EARLY_DIRECTIONS,
    fastShare: { from: 30, to: 60 },
    highShareMost: 20,
    contactsPerMinuteTenths: 25,
    deloads: false,
    reach: false,
  },
  {
    id: 'transition',
    words: 'Rest from jumping, move as you like',
    liftSessions: 0,
    contactsPerMinuteTenths: 25,
    deloads: false,
    reach: false,
  },
  {
    id: 'closed',
    words: 'No training here this week',
    liftSessions: 0,
    contactsPerMinuteTenths: 25,
    deloads: false,
    reach: false,
  },
];

const BY_ID: ReadonlyMap<PhaseId, PhaseRow> = new Map(PHASES.map((row) => [row.id, row]));

/** The row of a phase. */
export function getPhase(id: PhaseId): PhaseRow {
  const row = BY_ID.get(id);
  if (row === undefined) throw new Error(`no row for the phase ${id}`);
  return row;
}

/** The phases a path to a peak may hold, in the order that breaks ties. Lengths in weeks, weights in tenths. */
export const PATH_PHASES: readonly PathPhase[] = [
  { id: 'hypertrophy', least: 2, ideal: 4, most: 6, weightTenths: 10 },
  { id: 'strength', least: 3, ideal: 4, most: 6, weightTenths: 12 },
  { id: 'strength-power', least: 2, ideal: 4, most: 5, weightTenths: 10 },
  { id: 'power', least: 2, ideal: 4, most: 5, weightTenths: 20 },
];

/** One step of a path, with what it costs in tenths. Steps that aren't listed aren't taken. */
export interface PathStep {
  readonly from: PathPhase['id'] | 'start';
  readonly to: PathPhase['id'] | 'end';
  readonly costTenths: number;
}

export const PATH_STEPS: readonly PathStep[] = [
  { from: 'start', to: 'hypertrophy', costTenths: 0 },
  { from: 'start', to: 'strength', costTenths: 60 },
  { from: 'start', to: 'strength-power', costTenths: 200 },
  { from: 'start', to: 'power', costTenths: 290 },
  { from: 'hypertrophy', to: 'strength', costTenths: 0 },
  { from: 'strength', to: 'strength-power', costTenths: 0 },
  { from: 'strength', to: 'power', costTenths: 90 },
  { from: 'strength', to: 'hypertrophy', costTenths: 60 },
  { from: 'strength-power', to: 'power', costTenths: 0 },
  { from: 'strength-power', to: 'hypertrophy', costTenths: 30 },
  { from: 'power', to: 'end', costTenths: 0 },
];

/** The phase of a segment of a single week, which is shorter than any path. */
export const SINGLE_WEEK_PHASE: PathPhase['id'] = 'power';

/** Weeks that a season's shape asks for outside the paths. */
export const SEASON_SHAPE = {
  /** A segment after a peak of this many calendar weeks or fewer holds what is there: too short to build and ease. */
  holdMostWeeks: 3,
  /** Weeks without jumps after the last peak. */
  transitionWeeks: 2,
  /** A segment after a peak with this many weeks or more gives its first to transition. */
  transitionFromWeeks: 8,
  /** Last weeks of an in-season stretch that sharpen … */
  sharpeningWeeks: 4,
  /** … and how many of a stretch that is shorter than `shortStretchUnder` weeks. */
  shortSharpeningWeeks: 3,
  shortStretchUnder: 8,
  /** Segments with this many weeks or more taper for two of them, shorter ones for one. */
  longTaperFromWeeks: 10,
  longTaperWeeks: 2,
  shortTaperWeeks: 1,
  /** Nothing is planned for a child under this age, in years. */
  leastAge: 8,
  /** Athletes under this age, in years, are in foundation throughout … */
  foundationUnderAge: 14,
  /** … and beginners whose sessions have been under this many contacts. */
  foundationUnderContacts: 30,
  /** So many weeks in a row that nobody recorded hold the volume, and are asked for. */
  askedAfterWeeks: 2,
} as const;
