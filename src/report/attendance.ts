// One athlete at one session, with each line as it stands on paper and when it is done: what the parts of a board are made
// from.

import type { BuiltSession } from '../build/types.ts';
import type { Athlete } from '../plan/types.ts';
import type { LineTime } from './line-times.ts';
import type { SheetLine } from './sheet-line.ts';

export interface Attendance {
  readonly athlete: Athlete;
  readonly name: string;
  /** Position of the group on the board. */
  readonly group: number;
  readonly session: BuiltSession;
  readonly lines: readonly SheetLine[];
  readonly times: readonly LineTime[];
  /** Exercises of this session that the athlete meets for the first time in the season. */
  readonly firsts: ReadonlySet<string>;
}
