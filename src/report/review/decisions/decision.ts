// The kinds of what a coach has to decide, and one of them. Called by every file of this folder.

import type { ToldItem } from '../told-item.ts';

/** The gravest first, as the page lists them. */
export const DECISION_KINDS = [
  'pain stop',
  'pain hold',
  'week blocked',
  'record missing',
  'record leap',
  'return stage',
  'limit ends',
  'new maximum',
  'old maximum',
  'test missing',
] as const;

export interface ToldDecision extends ToldItem {
  readonly kind: (typeof DECISION_KINDS)[number];
}
