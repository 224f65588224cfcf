// What the commands that write plan files were asked for, after their arguments have been read: paths as typed, days as
// days. Made by the declare-*.ts files.

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

export interface DoneRequest {
  readonly plan: string;
  /** The day whose sessions were done; absent: print what is to confirm. */
  readonly date?: Day;
  /** What was done; absent: sessions are recorded, and everything is listed. */
  readonly kind?: 'session' | 'practice' | 'match' | 'test';
  /** A drill, lift or test whose trials are recorded instead. */
  readonly test?: string;
  /** How it was measured, and whether the arms were swung. */
  readonly method?: string;
  readonly arms?: boolean;
  /** As they were typed: `mira=40`, `mira.pain=3`; with a test `mira=33 cm,34 cm`. */
  readonly exceptions: readonly string[];
  readonly athletes: readonly string[];
  readonly squads: readonly string[];
  /** The first day of the sheet. */
  readonly from?: Day;
  /** A folder of a build whose sheets are out. */
  readonly near?: string;
  readonly format: 'text' | 'csv' | 'json';
}
