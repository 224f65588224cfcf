// Who: an athlete as the plan says, with limits, stages of a return and days away, and the squads.

import type { Span } from '../source/types.ts';
import type { Day } from '../util/days.ts';
import type { Cycle, Direction, Level, Tier } from '../library/types.ts';
import type { DayRange, Origin, Sourced } from './common-types.ts';
import type { Trained } from './calendar-types.ts';

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
  /** Written for a whole squad, and so for nobody in particular. */
  readonly ofSquad?: true;
  readonly span: Span;
}

/** What a limit bars: a word of the trade's, or an id of the library. */
export type Avoid =
  | { readonly kind: 'drops' }
  | { readonly kind: 'single-leg' }
  | { readonly kind: 'direction'; readonly id: Direction }
  | { readonly kind: 'cycle'; readonly id: Exclude<Cycle, 'none'> }
  | { readonly kind: 'tier'; readonly id: Tier }
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
  /** The id of a sport profile. Absent: the season's. */
  readonly sport?: Sourced<string>;
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
