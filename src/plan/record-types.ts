// What was done and what was tested, row by row.

import type { Span } from '../source/types.ts';
import type { Day } from '../util/days.ts';

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
  /** Of a row that counts as the one with fewer contacts: the one beside it that doesn't, but may be what was done. */
  readonly mayBe?: { readonly contacts: number; readonly span: Span };
  /** Of the row that its pain stands in, where that is one beside it that doesn't count. */
  readonly painSpan?: Span;
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

export interface SeasonRecord {
  /** In order of day, athlete. */
  readonly done: readonly DoneRow[];
  readonly tests: readonly TestRow[];
}
