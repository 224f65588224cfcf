// What a command was asked for, after its arguments have been read: plain values, checked as far as they can be without
// a plan.

import type { Paper } from '../render/html/paper.ts';
import type { Direction, Tier } from '../library/types.ts';
import type { Day } from '../util/days.ts';
import type { ReviewTableName } from '../report/review-table-names.ts';
import type { TableName } from '../report/table-names.ts';
import type { Amount, Shard } from './option-values.ts';

export interface SelectionRequest {
  readonly athletes: readonly string[];
  readonly squads: readonly string[];
  readonly from?: Day;
  readonly until?: Day;
}

export interface BuildRequest extends SelectionRequest {
  readonly plan: string;
  /** Only one part of the athletes, so that several machines write a table together. */
  readonly shard?: Shard;
  readonly table?: TableName;
  readonly format: 'text' | 'csv' | 'json' | 'html' | 'ics';
  /** A folder for every artefact. */
  readonly out?: string;
  /** What pages are printed on; A4 unless it is said. */
  readonly paper?: Paper;
  /** Weeks wholly before it are what the record says. */
  readonly asOf?: Day;
  readonly strict?: boolean;
  readonly quiet?: boolean;
  /** A folder of a build whose sheets are out. */
  readonly near?: string;
  /** Once more with every save, until it is ended. */
  readonly watch?: boolean;
}

export interface CheckRequest {
  readonly plan: string;
  readonly asOf?: Day;
  readonly format: 'text' | 'json' | 'sarif';
  readonly strict?: boolean;
  readonly quiet?: boolean;
  readonly watch?: boolean;
  /** A code to explain instead. */
  readonly explain?: string;
}

export interface RulesRequest {
  readonly id?: string;
  readonly plan?: string;
  readonly format: 'text' | 'csv' | 'json';
}

export interface LibraryRequest {
  readonly name?: string;
  readonly plan?: string;
  readonly kind?: 'drill' | 'lift';
  readonly tier?: Tier;
  readonly direction?: Direction;
  readonly family?: string;
  readonly kit?: readonly string[];
  readonly athlete?: string;
  readonly on?: Day;
  readonly format: 'text' | 'csv' | 'json';
}

export interface JumpRequest {
  /** A CSV of trials; otherwise a test is typed. */
  readonly trials?: string;
  readonly countermovement?: readonly Amount[];
  readonly squat?: readonly Amount[];
  readonly drop?: readonly Amount[];
  /** On the ground in a drop jump, one for each of its trials. */
  readonly contact?: readonly Amount[];
  /** To leaving the ground in a counter-movement jump, one for each of its trials. */
  readonly takeOff?: readonly Amount[];
  /** Peak forces of a counter-movement jump and of an isometric pull. */
  readonly force?: readonly Amount[];
  readonly isometric?: readonly Amount[];
  /** In kg. */
  readonly mass?: number;
  readonly before?: Amount;
  readonly method?: string;
  readonly arms?: boolean;
  readonly format: 'text' | 'csv' | 'json';
}

export interface ReviewRequest {
  readonly plan: string;
  readonly athletes: readonly string[];
  readonly squads: readonly string[];
  /** The day of the review. */
  readonly asOf?: Day;
  /** A folder of a build whose sheets are out. */
  readonly near?: string;
  readonly table?: ReviewTableName;
  readonly format: 'text' | 'csv' | 'json' | 'html';
  /** What the page is printed on; A4 unless it is said. */
  readonly paper?: Paper;
}

export interface DiffRequest {
  /** A git revision, or the path of a plan or of what a build wrote. */
  readonly old: string;
  /** Likewise; absent: the plan as it is now. */
  readonly fresh?: string;
  /** The plan looked up in a revision, and compared with it. */
  readonly plan: string;
  readonly printed?: Day;
  /** Of both sides, as far as they are compiled. */
  readonly asOf?: Day;
  /** Likewise: a folder of a build whose sheets are out. */
  readonly near?: string;
  readonly exitCode?: boolean;
  readonly format: 'text' | 'json' | 'markdown';
}
