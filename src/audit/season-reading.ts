// What the rules read: the shapes of one athlete's compiled season taken apart, so that no rule walks the whole of it to
// find a day. Filled by read-season.ts. The sums are the audit's own: contacts are added up from the lines, matches taken
// from the plan, and the adapted volume worked out anew.

import type { Athlete, Competition, DayRange, Pin, Plan, Slot, TestDay, Trained, Waiver } from '../plan/types.ts';
import type { BuiltAthlete, BuiltWeek } from '../build/types.ts';
import type { RuleId } from '../library/rules.ts';
import type { Level, PhaseRow } from '../library/types.ts';
import type { Day } from '../util/days.ts';
import type { PlanIndex } from './plan-index.ts';
import type { Parameter } from './parameters.ts';
import type { SessionReading } from './session-reading.ts';
import type { WeekMix } from './week-mix.ts';

/** A day with anything on it. */
export interface DayReading {
  readonly day: Day;
  readonly practiceJumps: number;
  readonly matchJumps: number;
  readonly testContacts: number;
  /** The athlete's competition of that day, by the plan. */
  readonly match?: Competition;
  readonly test?: TestDay;
  readonly sessions: readonly SessionReading[];
}

export interface WeekReading {
  /** From 0. */
  readonly index: number;
  readonly built: BuiltWeek;
  readonly range: DayRange;
  readonly phase: PhaseRow;
  /** In order of day. */
  readonly sessions: readonly SessionReading[];
  readonly jumpSessions: readonly SessionReading[];
  /** Planned contacts, added up from the lines; in a week under way with what was done over them. */
  readonly contacts: number;
  /** The same without primers. */
  readonly ordinary: number;
  /** What the ordinary contacts are made of. */
  readonly mix: WeekMix;
  /** Practice, matches and tests. */
  readonly otherJumps: number;
  /** The same, but of what is on record no more than was planned: what a later week is measured against. */
  readonly usualOtherJumps: number;
  /** The level on the first day with a jump session, or on the first day where there is none. */
  readonly level: Level;
  /** The level on the week's first day, which may be the lower one. */
  readonly firstDayLevel: Level;
}

export interface SeasonReading {
  readonly plan: Plan;
  readonly index: PlanIndex;
  readonly built: BuiltAthlete;
  readonly athlete: Athlete;
  readonly weeks: readonly WeekReading[];
  /** All sessions, and those that jump, in order of day. */
  readonly sessions: readonly SessionReading[];
  readonly jumpSessions: readonly SessionReading[];
  /** Days with anything on them, in order. */
  readonly days: readonly DayReading[];
  /** The athlete's own, in order of first day. */
  readonly competitions: readonly Competition[];
  readonly slots: readonly Slot[];
  readonly pins: readonly Pin[];
  /** Waivers for this athlete, of rules that can be waived. */
  readonly waivers: readonly Waiver[];
  /** The adapted volume by week, worked out anew. */
  readonly adapted: readonly AdaptedWeek[];
  /** The time away that a week belongs to, if it does. */
  readonly runsAway: readonly (RunAway | undefined)[];
  /** What is on a day, or undefined where it holds nothing or lies outside the season's weeks. */
  readonly dayAt: (day: Day) => DayReading | undefined;
  /** The week of a session. */
  readonly weekOf: (session: SessionReading) => WeekReading;
  /** Age in whole years, or undefined where no birth is written. */
  readonly age: (day: Day) => number | undefined;
  /** A rule's parameter that always has a value. */
  readonly parameter: (rule: RuleId, name: string) => Parameter<number>;
  /** A rule's parameter that has none until a plan sets it. */
  readonly openParameter: (rule: RuleId, name: string) => Parameter<number | undefined>;
}

/** One week of a run. */
export interface RunAway {
  /** Weeks of the whole run in which the athlete didn't train at all. */
  readonly counted: number;
  /** How this week was trained: the least of what closes it. */
  readonly trained: Trained;
  /** First to last day of the whole run. */
  readonly range: DayRange;
}

/** One step of the ladder that leads back after time away. */
export interface LadderStep {
  /** From 1. */
  readonly number: number;
  readonly of: number;
  /** Weeks of the time away before it. */
  readonly weeksAway: number;
}

export interface AdaptedWeek {
  /** The A on which the week's bounds rest; in the first week of a ladder already cut. */
  readonly before: number;
  readonly after: number;
  readonly ladder?: LadderStep;
  /** Most contacts by the step of the ladder. */
  readonly ladderMost?: number;
  /** Which week of a taper it is; a taper of one week is its last. */
  readonly taper?: 'first' | 'last';
  /** Whether the plan alone doesn't say what A becomes: a week as recorded, on a signed stage, or with a waived ladder. */
  readonly open: boolean;
}
