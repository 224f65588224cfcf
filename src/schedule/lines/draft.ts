// A line before it has its number in the session, with the seconds it takes and what may be cut from it. Made by the
// files that write jumps, lifts and hand-written lines; numbered when the session is laid together. Drafts are shared
// between athletes and weeks, and so are the numbered lines they have made.

import type { BuiltLine } from '../../build/types.ts';
import type { Athlete } from '../../plan/types.ts';
import type { LoadHistory } from './load-history.ts';

export type LineDraft = Omit<BuiltLine, 'order' | 'pairedWith'>;

/** By whose maxima loads are worked out, and the loads before them. */
export interface Lifter {
  readonly athlete: Athlete;
  readonly history: LoadHistory;
}

/** Makes a draft by a lifter's maxima; undefined where the kit makes no load as light as it needs. */
export type Loading = (lifter: Lifter) => Draft | undefined;

/** What was asked of the kit for the first lifter, and whether it could. */
export interface Tried {
  readonly loading: Loading;
  readonly fits: boolean;
}

export interface Draft {
  readonly line: LineDraft;
  readonly seconds: number;
  /** What the minutes may take: assistance first, then trunk; `fixed` is the coach's or jumping, and stays. */
  readonly role: 'main' | 'assistance' | 'trunk' | 'fixed';
  /** Lower-body lifting that counts as heavy. */
  readonly heavy: boolean;
  /** The same line with fewer sets. */
  readonly withSets?: (sets: number) => Draft;
  /** Where the kilos hang on a maximum: what makes the draft, before any of its sets are cut. */
  readonly loading?: Loading;
  /** Done in the same set as the draft before it. */
  readonly paired?: boolean;
  /** The lines it has made, by their place in a session. */
  readonly numbered: BuiltLine[];
}

/** The draft's line at this place in a session. Asked twice, it is the same object. */
export function lineAt(draft: Draft, order: number, pairedWith: number | undefined): BuiltLine {
  if (pairedWith !== undefined) return numberedLine(draft.line, order, pairedWith);
  const known = draft.numbered[order];
  if (known !== undefined) return known;
  const line = numberedLine(draft.line, order, undefined);
  draft.numbered[order] = line;
  return line;
}

/** Field by field, as a draft that is spread gives its line a shape of its own each time. */
function numberedLine(draft: LineDraft, order: number, pairedWith: number | undefined): BuiltLine {
  return {
    order,
    part: draft.part,
    exercise: draft.exercise,
    kind: draft.kind,
    sets: draft.sets,
    reps: draft.reps,
    contacts: draft.contacts,
    loadGrams: draft.loadGrams,
    perSideGrams: draft.perSideGrams,
    barGrams: draft.barGrams,
    percent: draft.percent,
    reserve: draft.reserve,
    dropCm: draft.dropCm,
    restSeconds: draft.restSeconds,
    tempo: draft.tempo,
    note: draft.note,
    family: draft.family,
    own: draft.own,
    estimated: draft.estimated,
    pairedWith,
    origin: draft.origin,
    reasons: draft.reasons,
  };
}
