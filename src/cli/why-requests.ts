// What `footfall why` and `footfall reach` were asked for: the athlete's id as typed, days as days. Made by
// declare-why.ts.

import type { Day } from '../util/days.ts';

export interface AthleteRequest {
  readonly plan: string;
  readonly athlete: string;
  /** The day the season is planned on. */
  readonly asOf?: Day;
}

export interface WhyRequest extends AthleteRequest {
  readonly on: Day;
  /** A folder of a build whose sheets are out. */
  readonly near?: string;
  readonly format: 'text' | 'json';
}

export interface ReachRequest extends AthleteRequest {
  /** A week. */
  readonly contacts: number;
  readonly format: 'text' | 'json';
}
