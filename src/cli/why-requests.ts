// What `footfall why` and `footfall reach` were asked for.

import type { Day } from '../util/days.ts';

export interface WhyRequest {
  readonly athlete: string;
  readonly on: Day;
  readonly plan: string;
  readonly format: 'text' | 'json';
}

export interface ReachRequest {
  readonly athlete: string;
  /** A week. */
  readonly contacts: number;
  readonly plan: string;
  readonly format: 'text' | 'json';
}
