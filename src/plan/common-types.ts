// What many parts of a plan have: a stretch of days, where a value comes from, whom an item is for.

import type { Span } from '../source/types.ts';
import type { Day } from '../util/days.ts';

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
