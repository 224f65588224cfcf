// Makes a session fit its slot: when it runs over by more than the rule allows, assistance lines go first, then sets of
// the assistance that is left, then trunk; last, further main lifts and their sets, as some lifting must stay. Jumps and
// their rest stay whole. Called for every session; also gives the order for when time is short on the day.

import type { BuiltLine } from '../../build/types.ts';
import { MINUTES } from '../../library/minutes.ts';
import { VOLUME } from '../../library/volume.ts';
import type { Draft } from './draft.ts';

export interface Fitted {
  readonly drafts: readonly Draft[];
  readonly seconds: number;
  /** Exercises that went, in the order they went. */
  readonly leftOut: readonly string[];
  /** Sets that went from lines that stayed. */
  readonly setsCut: number;
}

const SECONDS = 60;

/** Seconds before the first set, and of the lighter sets before the first main lift. */
function opening(drafts: readonly Draft[]): number {
  const jumps = drafts.some((draft) => draft.line.contacts > 0);
  const warmUp = jumps ? VOLUME.warmUpMinutes : MINUTES.liftWarmUp;
  const lighter = drafts.some((draft) => draft.role === 'main') ? MINUTES.lighterSetsMinutes : 0;
  return (warmUp + lighter) * SECONDS;
}

export function sessionSeconds(drafts: readonly Draft[]): number {
  return opening(drafts) + drafts.reduce((sum, draft) => sum + draft.seconds, 0);
}

/** Cuts until the session takes no more than `mostSeconds`, or nothing is left that may go. */
export function fitSession(drafts: readonly Draft[], mostSeconds: number): Fitted {
  let kept = drafts;
  const leftOut: string[] = [];
  let setsCut = 0;
  while (sessionSeconds(kept) > mostSeconds) {
    const cut = nextCut(kept);
    if (cut === undefined) break;
    if (cut.to === undefined) leftOut.push(cut.from.line.exercise);
    else setsCut += 1;
    kept = kept.flatMap((draft) => (draft === cut.from ? (cut.to ?? []) : draft));
  }
  return { drafts: kept, seconds: sessionSeconds(kept), leftOut, setsCut };
}

interface Cut {
  readonly from: Draft;
  /** Absent: it goes altogether. */
  readonly to?: Draft;
}

function nextCut(drafts: readonly Draft[]): Cut | undefined {
  const of = (role: Draft['role']): readonly Draft[] => drafts.filter((draft) => draft.role === role);
  const assistance = of('assistance');
  const main = of('main');
  const lastOf = (list: readonly Draft[]): Cut | undefined => {
    const last = list.at(-1);
    return last === undefined ? undefined : { from: last };
  };
  return (
    (assistance.length > 1 ? lastOf(assistance) : undefined) ??
    fewerSets(assistance, 1) ??
    lastOf(of('trunk')) ??
    lastOf(assistance) ??
    (main.length > 1 ? lastOf(main) : undefined) ??
    fewerSets(main, MINUTES.leastMainSets)
  );
}

/** One set less of the line with the most. */
function fewerSets(drafts: readonly Draft[], least: number): Cut | undefined {
  const from = drafts.toSorted((a, b) => b.line.sets - a.line.sets)[0];
  if (from?.withSets === undefined || from.line.sets <= least) return undefined;
  return { from, to: from.withSets(from.line.sets - 1) };
}

/**
 * Orders of lines by what to leave out first on a day with little time: assistance from the last, trunk, further main
 * lifts, then jump lines from the last; the first jump line and the first main lift stay.
 */
export function shortOnTime(lines: readonly BuiltLine[], drafts: readonly Draft[]): readonly number[] {
  const orders = (test: (draft: Draft) => boolean): number[] =>
    lines.flatMap((line, index) => {
      const draft = drafts[index];
      return draft !== undefined && test(draft) ? line.order : [];
    });
  const lifts = (draft: Draft): boolean => draft.line.kind === 'lift' && draft.line.contacts === 0;
  return [
    ...orders((draft) => draft.role === 'assistance' || (draft.role === 'fixed' && lifts(draft))).toReversed(),
    ...orders((draft) => draft.role === 'trunk').toReversed(),
    ...orders((draft) => draft.role === 'main')
      .slice(1)
      .toReversed(),
    ...orders((draft) => draft.role === 'fixed' && !lifts(draft))
      .slice(1)
      .toReversed(),
  ];
}
