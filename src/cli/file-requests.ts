// What the commands that write plan files were asked for, after their arguments have been read.

import type { Day } from '../util/days.ts';

export interface NewRequest {
  readonly folder: string;
  /** A day of the first week. */
  readonly starts?: Day;
}

export interface FormatRequest {
  /** A plan's folder, one of its files, or `-` for standard input. */
  readonly plan: string;
  /** Say what would change, and change nothing. */
  readonly check?: boolean;
}
