// What the coach decides: rules changed or waived, pins, lines for always, programmes written by hand.

import type { Span } from '../source/types.ts';
import type { Day, Weekday } from '../util/days.ts';
import type { RuleId } from '../library/rules.ts';
import type { Part, PhaseId, WeekKind } from '../library/types.ts';
import type { DayRange, Who } from './common-types.ts';

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

export type { Part };

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
