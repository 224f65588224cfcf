// When and where: the season, its places, slots and practice, and what stands in the calendar.

import type { Span } from '../source/types.ts';
import type { Day, Weekday } from '../util/days.ts';
import type { DirectionShares, KitId } from '../library/types.ts';
import type { DayRange, Origin, Who } from './common-types.ts';
import type { Units } from '../util/quantities.ts';

export interface Season {
  readonly title: string;
  /** Of who has none of their own. */
  readonly sport: string;
  readonly sportOrigin: Origin;
  readonly starts: Day;
  /** Last day of the season. */
  readonly ends: Day;
  readonly endsOrigin: Origin;
  readonly weekStarts: Weekday;
  readonly units: Units;
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
  /** Jumps on each of its days. Absent: those of a practice in the sport of who competes. */
  readonly jumps?: number;
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
