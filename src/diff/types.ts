// What differs between two builds, as data: what was edited in the plan, and what changed on the sheets. Sheets are
// compared without loss, so that the changes laid on the old one give the new one; what is too small to tell is left out
// by the report.

import type { PhaseId, WeekKind } from '../library/types.ts';
import type { DayRange, Part, Plan, Who } from '../plan/types.ts';
import type { Span } from '../source/types.ts';
import type { Day } from '../util/days.ts';

/** A line as it stands on a sheet. Matched by part, exercise and how often the exercise stood before it. */
export interface SheetLine {
  readonly part: Part;
  readonly exercise: string;
  /** From 0: the how-manieth line of this exercise in its part of the session. */
  readonly occurrence: number;
  readonly order: number;
  readonly sets: number;
  readonly reps: number;
  readonly contacts: number;
  readonly loadGrams?: number;
  readonly percent?: number;
  readonly reserve?: number;
  readonly dropCm?: number;
  readonly restSeconds: number;
  readonly tempo?: string;
  readonly note?: string;
  /** Done in turns with another line of the session. */
  readonly paired?: true;
}

/** Matched by day and slot. */
export interface SheetSession {
  readonly day: Day;
  readonly slot: string;
  readonly place: string;
  /** Minutes after midnight. */
  readonly at?: number;
  readonly contacts: number;
  readonly smallestPlateGrams: number;
  readonly lines: readonly SheetLine[];
}

export type SheetWeek = WrittenWeek | BlockedWeek;

export interface WrittenWeek extends WeekVolume {
  readonly blocked?: undefined;
  readonly phase: PhaseId;
  readonly kind: WeekKind;
}

/** An error keeps the week from being written: no contacts, no sessions. */
export interface BlockedWeek extends WeekVolume {
  readonly blocked: true;
}

interface WeekVolume {
  readonly starts: Day;
  readonly contacts: number;
  /** Whether a line of the plan gives the number itself. */
  readonly written: boolean;
  /** Whether the week is over and holds what was done, without sessions. */
  readonly done: boolean;
  readonly sessions: readonly SheetSession[];
}

export interface LineChange {
  readonly before?: SheetLine;
  readonly after?: SheetLine;
}

export type SessionChange =
  | { readonly kind: 'added'; readonly session: SheetSession }
  | { readonly kind: 'removed'; readonly session: SheetSession }
  /** Of the same week; `from` and `to` are the same place where it wasn't moved. Lines that are equal aren't named. */
  | {
      readonly kind: 'changed';
      readonly from: SheetSession;
      readonly to: SheetSession;
      readonly lines: readonly LineChange[];
    };

export interface WeekChange {
  readonly starts: Day;
  /** Absent where one of the seasons doesn't have the week. */
  readonly before?: SheetWeek;
  readonly after?: SheetWeek;
  readonly sessions: readonly SessionChange[];
}

/** What may be edited in a plan. */
export type EditSection =
  | 'season'
  | 'place'
  | 'slot'
  | 'competition'
  | 'closure'
  | 'practice'
  | 'test'
  | 'athlete'
  | 'rule'
  | 'pin'
  | 'always'
  | 'waiver'
  | 'programme'
  | 'use'
  | 'drill'
  | 'lift'
  | 'done'
  | 'tested';

export interface FieldChange {
  readonly name: string;
  /** As in the plan's types; undefined where it isn't said. */
  readonly before: unknown;
  readonly after: unknown;
}

/** The objects of the plans that an edit puts in or takes out; with a field that member of theirs alone. */
export interface EditPart {
  readonly before?: object;
  readonly after?: object;
  readonly field?: string;
}

/** One edit of the plan: an item, or one field of an athlete or of the season. */
export interface Edit {
  readonly section: EditSection;
  readonly what: 'added' | 'removed' | 'changed';
  /** Its name, where it has one. */
  readonly name: string;
  /** Of a changed one. */
  readonly fields: readonly FieldChange[];
  /** In the old plan for what was removed, else in the new one; absent for the built-in library. */
  readonly span?: Span;
  readonly who: Who;
  /** The days it speaks of, old and new; absent: all. */
  readonly range?: DayRange;
  readonly part: EditPart;
}

/** What was edited as one: a line that reaches several athletes, the rows of one record, otherwise a single edit. */
export type EditGroup = readonly Edit[];

export interface AthleteChange {
  readonly athlete: string;
  readonly name: string;
  readonly squad?: string;
  readonly kind: 'added' | 'removed' | 'kept';
  /** The id before, where it is another. */
  readonly renamedFrom?: string;
  readonly weeks: readonly WeekChange[];
}

export interface SheetTotals {
  readonly athletes: number;
  /** In weeks that are over on neither side: a week that is over has contacts and no sessions. */
  readonly sessions: number;
  readonly contacts: number;
}

export interface BuildDiff {
  /** Absent where one of the sides has no plan to compare. */
  readonly edits?: readonly EditGroup[];
  /** Likewise; athletes with another id have the new one in both. */
  readonly plans?: { readonly before: Plan; readonly after: Plan };
  /** Only athletes with changes. */
  readonly athletes: readonly AthleteChange[];
  readonly before: SheetTotals;
  readonly after: SheetTotals;
  /** Whether some weeks are over on either side. */
  readonly underWay: boolean;
}
