// What every file that resolves a part of the plan needs: the authored items, the season's days, the library, and where
// problems go. Made once by resolve.ts.

import type { Authored } from '../language/authored.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import type { Library } from '../library/index.ts';
import type { Weekday } from '../util/days.ts';
import type { Units } from '../util/quantities.ts';
import type { DayRange } from './types.ts';

export interface Scope {
  readonly authored: Authored;
  readonly library: Library;
  /** Patterns of the library's lifts. */
  readonly patterns: ReadonlySet<string>;
  /** First to last day of the season; everything there is, when the season itself has mistakes. */
  readonly frame: DayRange;
  /** Whether those days are the season's. */
  readonly isFramed: boolean;
  readonly weekStarts: Weekday;
  readonly units: Units;
  readonly report: (diagnostic: Diagnostic) => void;
  /** `did you mean …?` for a name that isn't known; asked for the first few only, as each is a search through all. */
  readonly guess: (name: string, known: Iterable<string>) => string | undefined;
}
