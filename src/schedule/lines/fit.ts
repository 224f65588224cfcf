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
  const warmUp = drafts.some((draft) => draft.line.contacts > 0) ? VOLUME.warmUpMinutes : MINUTES.liftWarmUp;
  const lighter = drafts.some((draft) => draft.role === 'main') ? MINUTES.lighterSetsMinutes : 0;
  return (warmUp + lighter) * SECONDS_A_MINUTE;
}

/** How long a session of these lines takes in seconds, from the beginning of its warm-up. */
export function sessionSeconds(drafts: readonly Draft[]): number {
  return drafts.reduce((seconds, draft) => seconds + draft.seconds, opening(drafts));
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
  const order: number[] = [];
  for (const goes of GOES_FIRST) addFromLast(order, drafts, goes, goes === 'main' || goes === 'jumps');
  return order;
}

type Goes = 'assistance' | 'trunk' | 'main' | 'jumps';

const GOES_FIRST: readonly Goes[] = ['assistance', 'trunk', 'main', 'jumps'];

function goesAs({ role, line }: Draft): Goes {
  if (role === 'main' || role === 'trunk') return role;
  return line.kind === 'drill' || line.contacts > 0 ? 'jumps' : 'assistance';
}

/** The orders of lines of a kind from the last of them, to the first or the one behind it. */
function addFromLast(order: number[], drafts: readonly Draft[], goes: Goes, firstStays: boolean): void {
  const from = order.length;
  for (let index = drafts.length - 1; index >= 0; index -= 1) {
    const draft = drafts[index];
    if (draft !== undefined && goesAs(draft) === goes) order.push(index + 1);
  }
  if (firstStays && order.length > from) order.pop();
}
