// What the six stages hand on, for one athlete: grid → phases → kinds → contacts → days → lines. Each stage is a pure
// function of the plan and of the values before it; weeks are indexed from 0 here and numbered from 1 in a Build.

import type { Athlete, Competition, DayRange, DoneRow, Slot, TestDay, Trained } from '../plan/types.ts';
import type { Bound, BoundBy, Reason, UnderWay } from '../build/types.ts';
import type { LegSparing } from '../library/leg-sparing.ts';
import type { Level, PhaseId, WeekKind } from '../library/types.ts';
import type { Day } from '../util/days.ts';
import type { Span } from '../source/types.ts';

/** Why a day can't hold a jump session. */
export type Barred =
  | 'no-slot'
  | 'closed'
  | 'away'
  | 'out-of-season'
  | 'competition'
  | 'event-gap'
  | 'after-peak'
  | 'after-event'
  | 'test'
  | 'rest-pin'
  | 'lifts-only'
  | 'congested';

export interface DayCell {
  readonly day: Day;
  /** Slots open to this athlete on this day, in order. */
  readonly slots: readonly Slot[];
  readonly usable: boolean;
  /** Set when not usable. */
  readonly barred?: Barred | undefined;
  /** The line of the plan that bars it, where one does. */
  readonly barredBy?: Span | undefined;
  readonly practiceJumps: number;
  readonly matchJumps: number;
  readonly testContacts: number;
  /** All three as the plan has them, where the record stands in their place. */
  readonly plannedJumps?: number | undefined;
  readonly competition?: Competition | undefined;
  readonly test?: TestDay | undefined;
}

export interface WeekCells {
  /** From 0. */
  readonly index: number;
  readonly starts: Day;
  readonly cells: readonly DayCell[];
  readonly empty: boolean;
  /** How an empty week counts: the least trained of what closes it. */
  readonly trained: Trained;
  /** Lines of the plan that close it. */
  readonly closedBy: readonly Span[];
  readonly otherJumps: number;
  /** The same as the plan has them, where the record stands in their place. */
  readonly plannedJumps?: number;
}

export interface AthleteGrid {
  readonly athlete: Athlete;
  /** The season's days that belong to it; weeks may reach beyond. */
  readonly range: DayRange;
  readonly weeks: readonly WeekCells[];
}

/** What the record says of a week that is over. */
export interface RecordedWeek {
  /** Rows of sessions; 0: nothing is recorded. */
  readonly sessions: number;
  /** Contacts of the sessions that say how many. */
  readonly contacts: number;
  /** Sessions that don't: done as they were written. */
  readonly asWritten: number;
  readonly rows: readonly DoneRow[];
}

export interface PhaseWeek {
  readonly phase: PhaseId;
  /** Which segment of the season, from 0; -1 after the last. */
  readonly segment: number;
  /** Ends in a peak: its taper belongs to the weeks before. */
  readonly peak?: Competition;
  readonly pinnedBy?: Span;
}

export interface AthletePhases {
  readonly weeks: readonly PhaseWeek[];
  readonly segments: readonly Segment[];
}

export interface Segment {
  /** Week indices, both included. */
  readonly from: number;
  readonly until: number;
  readonly peak?: Competition;
  /** The whole of it is a hold, foundation, in-season, or a path of phases; the part before the season opens is its own. */
  readonly form: 'path' | 'in-season' | 'hold' | 'foundation';
  /** First week of the phase that counts as its last, for the objective. */
  readonly lastPhaseFrom: number;
}

export interface KindWeek {
  readonly kind: WeekKind;
  /** Of a taper or a return ladder, from 1. */
  readonly step?: number;
  /** Of a taper or a return ladder. */
  readonly steps?: number;
  /** Of a return ladder: first day of the week of the rung before; absent on the first that holds, which cuts A. */
  readonly rungBefore?: Day;
  /** Whole per cent that A loses in this empty week (0 when trained in full). */
  readonly decayPercent?: number;
  readonly pinnedBy?: Span;
}

export interface ContactsWeek {
  /** V, a multiple of 5. */
  readonly contacts: number;
  readonly target: number;
  readonly most: number;
  readonly adaptedBefore: number;
  readonly adapted: number;
  readonly boundBy: BoundBy;
  readonly bounds: readonly Bound[];
  readonly possible: number;
  /** Sizes of the jump sessions, larger first; adds up to `contacts`. */
  readonly sessions: readonly number[];
  /** Highest contacts one session may have this week. */
  readonly sessionCeiling: number;
  readonly primer: boolean;
  readonly level: Level;
  /** Written by hand, and barred by the audit: what is over A counts for nothing. */
  readonly unwritten?: boolean;
  /** Of a week under way whose sessions to come were cut by what was done: what it was planned at, and their first day. */
  readonly underWay?: UnderWay;
  /** Of a week under way in which it began to hurt: the first session that goes by that morning is on this day or later. */
  readonly hurtsFrom?: Day;
  readonly reasons: readonly Reason[];
}

export interface ScheduledSession {
  readonly day: Day;
  readonly slot: Slot;
  /** Contacts to plan; 0 when it only lifts. */
  readonly contacts: number;
  readonly lifts: boolean;
  /** Whether its lower-body lifting may be heavy. */
  readonly heavyAllowed: boolean;
  /** Whether drops and high-tier fast drills may stand here (nothing demanding in the days after). */
  readonly dropsAllowed: boolean;
  readonly primer: boolean;
  /** Its lifting is kept short: match days crowd together. */
  readonly shortLift?: boolean;
  /** What of its lifting stays away so near a competition. */
  readonly spares?: LegSparing;
  readonly reasons: readonly Reason[];
}

export interface DaysWeek {
  /** In order of day, then slot. */
  readonly sessions: readonly ScheduledSession[];
  readonly liftSessionsWanted: number;
  readonly reasons: readonly Reason[];
}

/** Everything the stage of lines needs about one athlete. */
export interface AthleteSchedule {
  readonly grid: AthleteGrid;
  readonly phases: AthletePhases;
  readonly kinds: readonly KindWeek[];
  readonly contacts: readonly ContactsWeek[];
  readonly days: readonly DaysWeek[];
}
