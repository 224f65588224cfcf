// A line before it has its number in the session, with the seconds it takes and what may be cut from it. Made by the
// files that write jumps, lifts and hand-written lines; numbered when the session is laid together.

import type { BuiltLine } from '../../build/types.ts';

export type LineDraft = Omit<BuiltLine, 'order' | 'pairedWith'>;

export interface Draft {
  readonly line: LineDraft;
  readonly seconds: number;
  /** What the minutes may take: assistance first, then trunk; `fixed` is the coach's or jumping, and stays. */
  readonly role: 'main' | 'assistance' | 'trunk' | 'fixed';
  /** The same line with fewer sets. */
  readonly withSets?: (sets: number) => Draft;
  /** Done in the same set as the draft before it. */
  readonly paired?: boolean;
}
