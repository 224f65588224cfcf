// A compiled season: what the stages made, with the reason of every number. The audit, the diff and the reports read
// this and nothing of the scheduler. Athletes are compiled one after the other, so that a big squad needn't fit in memory.

import type { Athlete, Competition, Origin, Part, Plan, Slot, TestDay, Waiver } from '../plan/types.ts';
import type { RuleId } from '../library/rules.ts';
import type { PhaseId, WeekKind } from '../library/types.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import type { Span } from '../source/types.ts';
import type { Day } from '../util/days.ts';

/** What held a week's contacts where they are. */
export type BoundBy =
  | 'target'
  | 'reach'
  | 'weekly-rise'
  | 'session-rise'
  | 'session-ceiling'
  | 'slot-minutes'
  | 'deload-depth'
  | 'taper-cut'
  | 'return-ramp'
  | 'all-jumps-rise'
  | 'youth-ceiling'
  | 'limit'
  | 'open-days'
  | 'budget'
  | 'hold'
  | 'pin'
  | 'programme'
  | 'record'
  | 'returning-stage'
  | 'pain-hold'
  | 'last-week'
  | 'transition'
  | 'empty';

/** What can hold a week's contacts down; the rest of BoundBy says where else they come from. */
export type BoundRule = Exclude<BoundBy, 'target' | 'reach' | 'pin' | 'programme' | 'transition' | 'empty'>;

/** One step of the chain behind a number: data, put into words by the report. */
export interface Reason {
  /** `phase`, `kind`, `adapted`, `target`, `grow`, `session`, `ceiling`, `possible`, `sessions`, `day`, `drill`, `load`, `minutes` … */
  readonly about: string;
  /** The rule, table or fact that decided. */
  readonly by: string;
  readonly params: Readonly<Record<string, string | number>>;
  /** The lines of the plan behind it. */
  readonly spans: readonly Span[];
}

/** A bound on a week's contacts that was in force, whether or not it was the one that held. */
export interface Bound {
  readonly by: BoundRule;
  /** Contacts a week. */
  readonly most: number;
  /** The rule it comes from, where `by` isn't that rule itself. */
  readonly rule?: (BoundRule & RuleId) | undefined;
  /** The numbers it was made of: `percent`, `contacts`, `adapted`, `session`, `possible`, `usual`, `minutes`, `jumps` … */
  readonly params?: Readonly<Record<string, number>> | undefined;
  /** The bound that takes its place where its rule is waived; absent where none does. */
  readonly otherwise?: number | undefined;
  /** The lines of the plan behind it: a limit, a slot, a changed rule. */
  readonly spans?: readonly Span[] | undefined;
}

/** A line has all of its fields, those that say nothing too: of one shape V8 finds a field where it found it before. */
export interface BuiltLine {
  /** From 1 within its session. */
  readonly order: number;
  readonly part: Part;
  readonly exercise: string;
  readonly kind: 'drill' | 'lift';
  readonly sets: number;
  /** Of one side, where the exercise is done on each. Seconds, for a held one. */
  readonly reps: number;
  /** The line's total; 0 for lifts that don't leave the ground. */
  readonly contacts: number;
  readonly loadGrams: number | undefined;
  /** Grams to put on each side of the bar; absent where there is no bar. */
  readonly perSideGrams: number | undefined;
  readonly barGrams: number | undefined;
  readonly percent: number | undefined;
  readonly reserve: number | undefined;
  readonly dropCm: number | undefined;
  readonly restSeconds: number;
  readonly tempo: string | undefined;
  readonly note: string | undefined;
  /** The family the group does at this time. */
  readonly family: string | undefined;
  /** Not the group's family: this athlete's own. */
  readonly own: boolean;
  /** The load rests on an estimated maximum. */
  readonly estimated: boolean;
  /** Order of the line it is paired with. */
  readonly pairedWith: number | undefined;
  readonly origin: Origin;
  readonly reasons: readonly Reason[];
}

export interface BuiltSession {
  readonly day: Day;
  readonly slot: Slot;
  readonly kind: WeekKind | 'primer';
  /** Planned contacts: the sum of its lines'. */
  readonly contacts: number;
  readonly jumps: boolean;
  readonly lifts: boolean;
  /** Lower-body lifting at the share of the maximum that counts as heavy. */
  readonly heavy: boolean;
  /** Estimated length in whole minutes. */
  readonly minutes: number;
  readonly lines: readonly BuiltLine[];
  /** Orders of lines, the first to leave out when time is short first. */
  readonly shortOnTime: readonly number[];
  /** What was left out to fit the slot, in the order it went: exercise ids. */
  readonly leftOut: readonly string[];
  readonly reasons: readonly Reason[];
}

export interface UnderWay {
  /** The first day that is still to come. */
  readonly from: Day;
  /** Contacts the week was planned at. */
  readonly planned: number;
  /** Contacts its sheets had for the days still to come. */
  readonly wereLeft: number;
}

export interface BuiltWeek {
  /** From 1. */
  readonly week: number;
  readonly starts: Day;
  readonly phase: PhaseId;
  readonly kind: WeekKind;
  /** Which block of the season's path, from 1: weeks of one phase in a row. */
  readonly block: number;
  /** From 1 within the block. */
  readonly weekOfBlock: number;
  /** V. */
  readonly contacts: number;
  readonly target: number;
  /** The ceiling line: the highest safe volume of this week. */
  readonly mostContacts: number;
  /** A before the week, and after it. */
  readonly adaptedBefore: number;
  readonly adapted: number;
  /** Written by hand, and barred by the audit: its contacts over A add nothing to A. */
  readonly unwritten?: boolean;
  /** Set where more was done of a week under way than was written, and the sessions to come were cut for it. */
  readonly underWay?: UnderWay;
  readonly otherJumps: number;
  readonly boundBy: BoundBy;
  readonly bounds: readonly Bound[];
  /** Jump sessions the days allow. */
  readonly possible: number;
  /** Lift sessions asked for by the phase, whether or not the slots hold them. */
  readonly liftSessionsWanted: number;
  readonly reasons: readonly Reason[];
  readonly sessions: readonly BuiltSession[];
  /** Whether the record, not the plan, says what happened. */
  readonly done: boolean;
}

/** A day with something on it that isn't a planned session. */
export interface BuiltDay {
  readonly day: Day;
  readonly practiceJumps: number;
  readonly matchJumps: number;
  readonly testContacts: number;
  /** All three as the plan has them, where the record stands in their place. */
  readonly plannedJumps?: number;
  readonly competition?: Competition;
  readonly test?: TestDay;
}

export interface BuiltAthlete {
  readonly athlete: Athlete;
  readonly weeks: readonly BuiltWeek[];
  /** Days with practice, matches or tests, in order: with the sessions, the ledger of all jumping. */
  readonly days: readonly BuiltDay[];
  /** Weeks (from 1) that an error keeps from being written. */
  readonly blocked: ReadonlySet<number>;
  /** Waivers of the plan that freed something for this athlete. */
  readonly freed: ReadonlySet<Waiver>;
  /** Findings of scheduler and audit for this athlete. */
  readonly diagnostics: readonly Diagnostic[];
}

export interface BuildWeek {
  readonly week: number;
  readonly starts: Day;
}

export interface Build {
  readonly plan: Plan;
  /** Digest of what the plan means, 7 characters: an old sheet is recognised by it. */
  readonly mark: string;
  /** Weeks wholly before this day are what the record says; absent where nothing is recorded. */
  readonly asOf?: Day;
  readonly weeks: readonly BuildWeek[];
  /** May be walked more than once; each walk gives the same. */
  readonly athletes: Iterable<BuiltAthlete>;
  /** One of the plan's athletes, without compiling the others; the same as a walk gives. */
  readonly athlete: (athlete: Athlete) => BuiltAthlete;
}
