// The lifting of one session: for each place of the day's pattern a lift, shared by athletes who stand alike where no pin
// and no maximum asks for more thought. Called for every session that lifts.

import type { Reason } from '../../build/types.ts';
import type { Lift } from '../../library/types.ts';
import type { PatternPlace } from '../../library/lifting.ts';
import { NO_PINS } from './day-pins.ts';
import type { Draft } from './draft.ts';
import type { LiftChoice } from './lift-choice.ts';
import { liftBars } from './lift-choice.ts';
import { draftOf, draftWithout } from './lift-draft.ts';
import type { LiftSession } from './lift-draft.ts';
import { hasMax } from './maxima.ts';

/** A place of the day's pattern with what athletes who stand alike share. */
export interface SharedPlace {
  readonly place: PatternPlace;
  /** Lifts that the gates and the kit allow, in order of preference. */
  readonly allowed: readonly Lift[];
  /** The line of an athlete without a maximum or a pin, made for the first who needs it; undefined where there is none. */
  plain?: Draft | undefined;
}

/** What the athletes of one standing share of a session: reads nothing of the athlete but the ladder. */
export function sharePlaces(
  places: readonly PatternPlace[],
  choice: LiftChoice,
  { ladder, phase }: LiftSession,
): readonly SharedPlace[] {
  return places.map((place) => ({ place, allowed: choice(place, ladder, phase) }));
}

/** Drafts in the order of the places. A place that nothing fills stays empty. */
export function liftDrafts(places: readonly SharedPlace[], session: LiftSession): readonly Draft[] {
  const drafts: Draft[] = [];
  const used = new Set<string>(session.there);
  const covered = new Set([...session.there].map((id) => session.lifts.get(id)?.pattern));
  if (session.pins !== NO_PINS) reportBarredKeeps(session);
  for (const shared of places) {
    const { place } = shared;
    if (place.pattern === 'loaded-jump' && session.mostLoadedContacts === 0) continue;
    if (place.part !== 'main' && covered.has(place.pattern)) continue;
    if (place.depth === 'half' && used.has(FAST_PULL)) continue;
    const draft = plainDraft(shared, session, used) ?? fillPlace(shared, session, used);
    if (draft === undefined) continue;
    used.add(draft.line.exercise);
    drafts.push(draft);
    if (place.pattern === 'pull-from-floor') used.add(FAST_PULL);
  }
  return drafts;
}

/** Half squats open a day only where no fast pull does. */
const FAST_PULL = 'pull-from-floor';

/** The shared line, unless a pin, a known maximum or another line of the session asks for more thought. */
function plainDraft(shared: SharedPlace, session: LiftSession, used: ReadonlySet<string>): Draft | undefined {
  const { place, allowed } = shared;
  const [first] = allowed;
  if (first === undefined || place.withMax === true || session.pins !== NO_PINS || used.has(first.id)) return undefined;
  const known = (lift: Lift): boolean => hasMax(lift, session);
  const { size } = session.athlete.lifts;
  if (size > 0 && (place.part === 'main' ? allowed.some(known) : known(first))) return undefined;
  if (!('plain' in shared)) shared.plain = draftWithout(first, place, session);
  return shared.plain;
}

function fillPlace(
  { place, allowed }: SharedPlace,
  session: LiftSession,
  used: ReadonlySet<string>,
): Draft | undefined {
  let barTooHeavy = false;
  for (const lift of candidates(place, allowed, session)) {
    const leftOut = session.pins.leaveOut.get(lift.id);
    if (used.has(lift.id)) continue;
    if (leftOut !== undefined) {
      session.left(lift.id, leftOut);
      continue;
    }
    if (barTooHeavy && lift.loading === 'bar') continue;
    const swapped = swappedLift(lift, session);
    const draft = draftOf(swapped.lift, place, session, swapped.reasons);
    if (draft !== undefined) return draft;
    barTooHeavy ||= place.part === 'main' && swapped.lift.loading === 'bar';
  }
  return undefined;
}

/** Lifts for a place, the coach's kept ones first, and for a main place those with a known maximum. */
function candidates(place: PatternPlace, allowed: readonly Lift[], session: LiftSession): readonly Lift[] {
  const kept = session.pins.keep.size === 0 ? [] : allowed.filter((lift) => session.pins.keep.has(lift.id));
  const known = (lift: Lift): boolean => hasMax(lift, session);
  if (place.withMax === true) return kept.length > 0 ? kept : allowed.filter(known);
  if (place.part !== 'main') return kept.length > 0 ? [...kept, ...allowed] : allowed;
  const first = allowed.find(known);
  return first === undefined ? [...kept, ...allowed] : [...kept, first, ...allowed];
}

/** What a swap pin puts in a lift's place, where the gates and the kit allow it. */
function swappedLift(lift: Lift, session: LiftSession): { readonly lift: Lift; readonly reasons: readonly Reason[] } {
  const swap = session.pins.swaps.get(lift.id);
  const to = swap === undefined ? undefined : session.lifts.get(swap.value);
  if (swap === undefined || to === undefined) return { lift, reasons: [] };
  const bars = liftBars(to, session.ladder, session.phase);
  if (bars.length > 0) {
    session.barred(to.id, bars, swap.pin);
    return { lift, reasons: [] };
  }
  const reason: Reason = { about: 'lift', by: 'pin', params: { from: lift.id, to: to.id }, spans: [swap.pin.span] };
  return { lift: to, reasons: [reason] };
}

function reportBarredKeeps(session: LiftSession): void {
  for (const [id, pin] of session.pins.keep) {
    const lift = session.lifts.get(id);
    const bars = lift === undefined ? [] : liftBars(lift, session.ladder, session.phase);
    if (bars.length > 0) session.barred(id, bars, pin);
  }
}
