// Makes a session fit its slot: when it runs over by more than the rule allows, assistance lines go first, then sets of
// the assistance that is left, then trunk; last, further main lifts and their sets, as some lifting must stay. Jumps and
// their rest stay whole. Called for every session; also gives the order for when time is short on the day.

import { MINUTES } from '../../library/minutes.ts';
import { VOLUME } from '../../library/volume.ts';
import type { Draft } from './draft.ts';
import { SECONDS_A_MINUTE } from '../../util/units.ts';

export interface Fitted {
  readonly drafts: readonly Draft[];
  readonly seconds: number;
  /** Exercises that went, in the order they went. */
  readonly leftOut: readonly string[];
  /** Sets that went from lines that stayed. */
  readonly setsCut: number;
}

/** Seconds before the first set, and of the lighter sets before the first main lift. */
function opening(drafts: readonly Draft[]): number {
  let warmUp: number = MINUTES.liftWarmUp;
  let lighter = 0;
  for (const draft of drafts) {
    if (draft.line.contacts > 0) warmUp = VOLUME.warmUpMinutes;
    if (draft.role === 'main') lighter = MINUTES.lighterSetsMinutes;
  }
  return (warmUp + lighter) * SECONDS_A_MINUTE;
}

/** How long a session of these lines takes in seconds, from the beginning of its warm-up. */
export function sessionSeconds(drafts: readonly Draft[]): number {
  let seconds = opening(drafts);
  for (const draft of drafts) seconds += draft.seconds;
  return seconds;
}

/** Cuts until the session takes no more than `mostSeconds`, or nothing is left that may go. */
export function fitSession(drafts: readonly Draft[], mostSeconds: number): Fitted {
  let kept = drafts;
  let seconds = sessionSeconds(kept);
  const leftOut: string[] = [];
  let setsCut = 0;
  while (seconds > mostSeconds) {
    const cut = nextCut(kept);
    if (cut === undefined) break;
    if (cut.to === undefined) leftOut.push(cut.from.line.exercise);
    else setsCut += 1;
    kept = kept.flatMap((draft) => (draft === cut.from ? (cut.to ?? []) : draft));
    seconds = sessionSeconds(kept);
  }
  return { drafts: kept, seconds, leftOut, setsCut };
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
export function shortOnTime(drafts: readonly Draft[]): readonly number[] {
  const assistance: number[] = [];
  const trunk: number[] = [];
  const main: number[] = [];
  const jumps: number[] = [];
  for (let index = drafts.length - 1; index >= 0; index -= 1) {
    const draft = drafts[index];
    if (draft === undefined) continue;
    const jumping = draft.line.kind === 'drill' || draft.line.contacts > 0;
    const list = draft.role === 'main' ? main : draft.role === 'trunk' ? trunk : jumping ? jumps : assistance;
    list.push(index + 1);
  }
  return [...assistance, ...trunk, ...main.slice(0, -1), ...jumps.slice(0, -1)];
}
