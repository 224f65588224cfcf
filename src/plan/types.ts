// The plan as the scheduler reads it: ids bound, squads' defaults filled in, units made one (whole days, centimetres,
// grams, seconds), every item with its place. Made by plan/resolve.ts from the authored files; never changed after.

import type { Span, SourceFile } from '../source/types.ts';
import type { Day, Weekday } from '../util/days.ts';
import type { Library } from '../library/index.ts';
import type { RuleId } from '../library/rules.ts';
import type { DirectionShares, KitId, Level, PhaseId, WeekKind } from '../library/types.ts';

/** Both ends belong to it. */
export interface DayRange {
  readonly from: Day;
  readonly until: Day;
}

/** Where a value comes from: a line of the plan, a default with its basis, or the working-out of a rule. */
export type Origin =
  | { readonly kind: 'written'; readonly span: Span }
  | { readonly kind: 'default'; readonly basis: string }
  | { readonly kind: 'derived'; readonly rule: string };

export interface Sourced<T> {
  readonly value: T;
  readonly origin: Origin;
}

/** Whom an item is for. An item with squads and athletes is for either. */
export type Who =
  | { readonly kind: 'everybody' }
  | { readonly kind: 'some'; readonly squads: readonly string[]; readonly athletes: readonly string[] };

export interface Season {
  readonly title: string;
  readonly sport: string;
  readonly starts: Day;
  /** Last day of the season. */
  readonly ends: Day;
  readonly endsOrigin: Origin;
  readonly weekStarts: Weekday;
  readonly units: 'metric' | 'imperial';
  /** IANA name; absent: times are floating. */
  readonly timeZone?: string;
  /** Ordered, not overlapping. */
  readonly inSeason: readonly (DayRange & { readonly span: Span })[];
  /** Directions by the sport's profile, or absent: the phase's own. */
  readonly directions?: DirectionShares;
  readonly span: Span;
}

export interface Kit {
  /** How many of each; heights and masses below count their members here as well. */
  readonly counts: ReadonlyMap<KitId, number>;
  /** Ascending, in cm. */
  readonly boxesCm: readonly number[];
  /** Ascending, in grams. */
  readonly barsGrams: readonly number[];
  readonly smallestPlateGrams: number;
  /** Ascending, in grams; empty: any load in steps of the smallest plate. */
  readonly dumbbellsGrams: readonly number[];
  readonly kettlebellsGrams: readonly number[];
}

export interface TrainingPlace {
  readonly id: string;
  readonly surface?: string;
  readonly kit: Kit;
  readonly span: Span;
}

export interface Slot {
  /** `tuesday`, or `tuesday-morning` when the slot is named. Stable across builds. */
  readonly id: string;
  readonly day: Weekday;
  readonly name?: string;
  /** Minutes after midnight. */
  readonly at?: number;
  readonly minutes: number;
  readonly place: TrainingPlace;
  readonly use: 'jumps' | 'lifts' | 'both';
  readonly range: DayRange;
  readonly who: Who;
  readonly span: Span;
}

export interface Competition {
  readonly name: string;
  /** First to last day. */
  readonly range: DayRange;
  readonly prepare: 'peak' | 'freshen' | 'through';
  /** Jumps on each of its days. */
  readonly jumps: number;
  readonly who: Who;
  readonly span: Span;
}

export type Trained = 'none' | 'some' | 'full';

export interface Closure {
  readonly range: DayRange;
  readonly because: string;
  readonly trained: Trained;
  /** Absent: every place. */
  readonly places?: readonly string[];
  readonly who: Who;
  readonly span: Span;
}

export interface Practice {
  readonly day: Weekday;
  readonly jumps: number;
  readonly range: DayRange;
  readonly who: Who;
  readonly span: Span;
}

export interface TestDay {
  readonly day: Day;
  /** Drill, lift or test ids. */
  readonly what: readonly string[];
  readonly contacts: number;
  readonly who: Who;
  readonly span: Span;
}

export interface LevelStep {
  readonly is: Level;
  /** Absent: from the start. */
  readonly from?: Day;
  readonly span: Span;
}

export interface Volume {
  readonly contactsASession: number;
  readonly sessionsAWeek: number;
}

export interface LiftMax {
  readonly lift: string;
  readonly grams: number;
  /** True when worked out from a set of several repetitions. */
  readonly estimated: boolean;
  readonly on?: Day;
  readonly span: Span;
}

/** What a limit bars: a word of the trade's, or an id of the library. */
export type Avoid =
  | { readonly kind: 'drops' }
  | { readonly kind: 'single-leg' }
  | { readonly kind: 'direction'; readonly id: string }
  | { readonly kind: 'cycle'; readonly id: string }
  | { readonly kind: 'tier'; readonly id: string }
  | { readonly kind: 'family'; readonly id: string }
  | { readonly kind: 'drill'; readonly id: string }
  | { readonly kind: 'pattern'; readonly id: string }
  | { readonly kind: 'lift'; readonly id: string };

export interface Limit {
  readonly range: DayRange;
  readonly avoid: readonly Avoid[];
  readonly contactsASession?: number;
  readonly contactsAWeek?: number;
  /** A health reason: printed on coach pages only. */
  readonly because: string;
  readonly span: Span;
}

export interface ReturnStage {
  /** 1 … of. */
  readonly stage: number;
  readonly of: number;
  readonly since: Day;
  readonly signed: string;
  readonly span: Span;
}

export interface Away {
  readonly range: DayRange;
  readonly because: string;
  readonly trained: Trained;
  readonly span: Span;
}

/** As exact as the coach wrote it: a year, a month or a date. Ages are worked out on the latest birthday it allows. */
export interface Born {
  readonly earliest: Day;
  readonly latest: Day;
}

export interface Athlete {
  readonly id: string;
  readonly name: string;
  readonly squad?: string;
  readonly group?: string;
  readonly born?: Born;
  readonly sex?: 'female' | 'male';
  readonly massGrams?: number;
  /** In order of date, at least one. */
  readonly levels: readonly LevelStep[];
  readonly levelOrigin: Origin;
  /** The last weeks as they were. */
  readonly now: Sourced<Volume>;
  /** Contacts in a session at the height of the block; absent: the foot of the level's band. */
  readonly goal?: Sourced<number>;
  readonly lifts: ReadonlyMap<string, LiftMax>;
  readonly cleared: ReadonlySet<string>;
  readonly limits: readonly Limit[];
  /** In order of `since`; empty when not returning. */
  readonly returning: readonly ReturnStage[];
  readonly away: readonly Away[];
  /** The athlete's key in the plan. */
  readonly span: Span;
}

export interface Squad {
  readonly id: string;
  readonly span: Span;
}

/** A changed rule parameter; where several are in force for one athlete and day the strictest counts. */
export interface RuleChange {
  readonly rule: RuleId;
  readonly parameters: ReadonlyMap<string, number>;
  readonly range: DayRange;
  readonly who: Who;
  readonly because: string;
  readonly span: Span;
}

/** A line written by hand, in a programme, a pin or `always`. */
export interface WrittenLine {
  readonly exercise: { readonly kind: 'drill' | 'lift'; readonly id: string };
  readonly sets: number;
  readonly reps: number;
  readonly percent?: number;
  readonly loadGrams?: number;
  readonly reserve?: number;
  readonly dropCm?: number;
  readonly restSeconds?: number;
  readonly tempo?: string;
  readonly note?: string;
  /** Done in the same set, after the first. */
  readonly pair?: WrittenLine;
  readonly span: Span;
}

export type PinEffect =
  | { readonly kind: 'contacts'; readonly contactsAWeek: number }
  | { readonly kind: 'phase'; readonly phase: PhaseId }
  | { readonly kind: 'rest' }
  | { readonly kind: 'week-kind'; readonly weekKind: WeekKind }
  | { readonly kind: 'swap'; readonly swaps: ReadonlyMap<string, string> }
  | { readonly kind: 'leave-out'; readonly exercises: readonly string[] }
  | { readonly kind: 'keep'; readonly exercises: readonly string[] }
  | { readonly kind: 'add'; readonly part: Part; readonly lines: readonly WrittenLine[] }
  | { readonly kind: 'sets'; readonly sets: ReadonlyMap<string, number> }
  | { readonly kind: 'load'; readonly loadsGrams: ReadonlyMap<string, number> }
  /** Jump sessions of the week on these days. */
  | { readonly kind: 'on'; readonly days: readonly Weekday[] };

export interface Pin {
  readonly range: DayRange;
  readonly who: Who;
  readonly effects: readonly PinEffect[];
  readonly because: string;
  readonly span: Span;
}

export type Part = 'prepare' | 'jumps' | 'lifts' | 'trunk';

export interface Always {
  readonly part: Part;
  readonly minutes?: number;
  readonly lines: readonly WrittenLine[];
  readonly range: DayRange;
  readonly who: Who;
  readonly because: string;
  readonly span: Span;
}

export interface Waiver {
  readonly rule: RuleId;
  readonly range: DayRange;
  readonly who: Who;
  readonly because: string;
  /** Who decided, where the rule asks for it. */
  readonly decided?: string;
  readonly span: Span;
}

export interface ProgrammeDay {
  readonly day: Weekday;
  readonly lines: readonly WrittenLine[];
  readonly span: Span;
}

export interface ProgrammeWeek {
  /** From 1, counted from the week of its use. */
  readonly week: number;
  readonly days: readonly ProgrammeDay[];
}

export interface Programme {
  readonly id: string;
  readonly weeks: readonly ProgrammeWeek[];
  readonly span: Span;
}

export interface ProgrammeUse {
  readonly programme: Programme;
  /** A day in the programme's first week. */
  readonly from: Day;
  readonly who: Who;
  readonly span: Span;
}

export interface DoneRow {
  readonly day: Day;
  readonly athlete: string;
  readonly kind: 'session' | 'practice' | 'match' | 'test';
  readonly contacts?: number;
  readonly minutes?: number;
  readonly effort?: number;
  /** 0 to 10, the next morning. */
  readonly pain?: number;
  readonly note?: string;
  readonly span: Span;
}

export interface TestRow {
  readonly day: Day;
  readonly athlete: string;
  readonly test: string;
  readonly trial: number;
  readonly value: number;
  readonly unit: string;
  readonly method?: string;
  readonly arms?: boolean;
  readonly note?: string;
  readonly span: Span;
}

export interface Record {
  /** In order of day, athlete. */
  readonly done: readonly DoneRow[];
  readonly tests: readonly TestRow[];
}

export interface Plan {
  readonly files: readonly SourceFile[];
  readonly season: Season;
  readonly library: Library;
  readonly places: ReadonlyMap<string, TrainingPlace>;
  /** In order of day, time, name. */
  readonly slots: readonly Slot[];
  /** In order of first day, name. */
  readonly competitions: readonly Competition[];
  readonly closures: readonly Closure[];
  readonly practice: readonly Practice[];
  readonly tests: readonly TestDay[];
  readonly squads: ReadonlyMap<string, Squad>;
  /** In order of id (by code unit). */
  readonly athletes: readonly Athlete[];
  readonly ruleChanges: readonly RuleChange[];
  readonly pins: readonly Pin[];
  readonly always: readonly Always[];
  readonly waivers: readonly Waiver[];
  readonly programmes: ReadonlyMap<string, Programme>;
  readonly uses: readonly ProgrammeUse[];
  readonly record: Record;
}
