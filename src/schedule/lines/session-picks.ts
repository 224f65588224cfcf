// The drills of one session with the coach's pins put in: swapped, kept, left out. Called for every session with jumps,
// through a cache. A pinned drill that a gate bars is not put in, and that is said.

import type { Reason } from '../../build/types.ts';
import type { Pin } from '../../plan/types.ts';
import type { Span } from '../../source/types.ts';
import { contactsOfRep, isDrop } from '../../library/drill-facts.ts';
import type { Drill } from '../../library/types.ts';
import type { DayPins } from './day-pins.ts';
import type { Refusal } from './gates.ts';
import { drillPlaceRefusal, pinnedDrillRefusals } from './gates.ts';
import type { Ladder } from './ladders.ts';
import type { Choosing, Pick, SessionGates } from './picks.ts';
import { mostOf, pickDrills, shareRefusal } from './picks.ts';

/** An exercise that the coach asks for and the athlete may not do. */
export interface BarredWish {
  readonly exercise: string;
  /** Never empty. */
  readonly bars: readonly Refusal[];
  /** The line that asks for it. */
  readonly span: Span;
  /** Where the line stands in an item of its own: a pin that adds it, or `always`. */
  readonly block?: Span;
}

export interface Picked {
  /** Numbered in the order of making, for use in keys. */
  readonly number: number;
  readonly picks: readonly Pick[];
  readonly barred: readonly BarredWish[];
  /** Drills that would stand here if no pin left them out. */
  readonly left: readonly LeftOut[];
}

/** An exercise that a pin leaves out of a session. */
export interface LeftOut {
  readonly exercise: string;
  readonly pin: Pin;
}

export interface PickRequest {
  readonly families: readonly string[];
  readonly ladder: Ladder;
  readonly gates: SessionGates;
  readonly choosing: Choosing;
  readonly pins: DayPins;
  readonly drills: ReadonlyMap<string, Drill>;
  readonly waived: (rule: string) => boolean;
}

/** The drills as they will stand, the pins that a gate bars, and the drills that pins leave out. */
export function sessionPicks(request: PickRequest): Omit<Picked, 'number'> {
  const { pins, choosing } = request;
  const leftOut = (drill: Drill): Refusal | undefined => {
    const pin = pins.leaveOut.get(drill.id);
    return pin === undefined ? choosing.leftOut(drill) : { by: 'pin', params: {}, spans: [pin.span] };
  };
  const picks = pickDrills(request.families, request.ladder, request.gates, { ...choosing, leftOut });
  const barred: BarredWish[] = [];
  const swapped = picks.map((pick) => swap(pick, request, barred));
  return { picks: oneOfTheHighTier(withKept(swapped, request, barred)), barred, left: leftOf(request) };
}

function leftOf({ families, ladder, gates, choosing, pins }: PickRequest): readonly LeftOut[] {
  if (pins.leaveOut.size === 0) return [];
  return pickDrills(families, ladder, gates, choosing).flatMap(({ drill }) => {
    const pin = pins.leaveOut.get(drill.id);
    return pin === undefined ? [] : [{ exercise: drill.id, pin }];
  });
}

/** A pinned drill of the high tier takes the place of the session's own. */
function oneOfTheHighTier(picks: readonly Pick[]): readonly Pick[] {
  const high = picks.filter((pick) => pick.drill.tier === 'high');
  const kept = high.find((pick) => pick.reasons.some((reason) => reason.by === 'pin')) ?? high[0];
  return high.length < 2 ? picks : picks.filter((pick) => pick === kept || pick.drill.tier !== 'high');
}

function swap(pick: Pick, request: PickRequest, barred: BarredWish[]): Pick {
  const wanted = request.pins.swaps.get(pick.drill.id);
  const drill = wanted === undefined ? undefined : request.drills.get(wanted.value);
  if (wanted === undefined || drill === undefined) return pick;
  const bars = barsOf(drill, request);
  if (bars.length > 0) barred.push({ exercise: drill.id, bars, span: wanted.pin.span });
  if (bars.length > 0 || isFull(drill, request)) return pick;
  return pinnedPick(drill, pick, wanted.pin, request);
}

/** A kept drill takes its family's place, or comes in as the athlete's own. */
function withKept(picks: readonly Pick[], request: PickRequest, barred: BarredWish[]): readonly Pick[] {
  let kept = picks;
  for (const [id, pin] of request.pins.keep) {
    const drill = request.drills.get(id);
    if (drill === undefined || kept.some((pick) => pick.drill.id === id)) continue;
    const bars = barsOf(drill, request);
    if (bars.length > 0) barred.push({ exercise: id, bars, span: pin.span });
    if (bars.length > 0 || isFull(drill, request)) continue;
    const standIn = kept.find((pick) => pick.drill.family === drill.family);
    const pick = pinnedPick(drill, standIn, pin, request);
    kept = standIn === undefined ? [pick, ...kept] : kept.map((one) => (one === standIn ? pick : one));
  }
  return kept;
}

function pinnedPick(drill: Drill, instead: Pick | undefined, pin: Pin, { gates }: PickRequest): Pick {
  const reason: Reason = { about: 'drill', by: 'pin', params: { drill: drill.id }, spans: [pin.span] };
  return {
    drill,
    family: instead?.family ?? drill.family,
    own: instead === undefined || instead.own,
    most: mostOf(drill, gates),
    reasons: [reason],
  };
}

/** Whether the week's shares have no room left for a pinned drill: it waits for a session that has. */
function isFull(drill: Drill, { gates, waived }: PickRequest): boolean {
  const by = shareRefusal(drill, gates)?.by;
  return by !== undefined && !waived(by);
}

/** All that bars a pinned drill: gates and kit; where these don't, what of this session and the days round it does. */
function barsOf(drill: Drill, { ladder, gates, waived }: PickRequest): readonly Refusal[] {
  const here = drillPlaceRefusal(drill, ladder.place);
  const held = [...pinnedDrillRefusals(drill, ladder.standing, waived), ...(here === undefined ? [] : [here])];
  const round = held.length > 0 ? undefined : barredRound(drill, gates, waived);
  return round === undefined ? held : [{ by: round, params: {}, spans: [] }];
}

function barredRound(drill: Drill, gates: SessionGates, waived: (rule: string) => boolean): string | undefined {
  if (drill.cycle === 'fast' && gates.noFast === 'pain-hold') return gates.noFast;
  if (drill.tier === 'high' && gates.noHigh !== undefined) return gates.noHigh;
  if (isDrop(drill) && !gates.drops && !waived('fast-spacing')) return 'fast-spacing';
  if (drill.tier === 'high' && drill.cycle === 'fast' && !gates.fastHigh && !waived('fast-spacing'))
    return 'fast-spacing';
  return undefined;
}

/** A drill that makes any number of contacts, to stand beside picks that can't: the first two-legged one that fits. */
export function fillIn(picks: readonly Pick[], request: PickRequest): Pick | undefined {
  const taken = new Set(picks.map((pick) => pick.drill.family));
  const plain: PickRequest = {
    ...request,
    gates: { ...request.gates, drops: false, fastHigh: false, mostHigh: 0, mostStill: 0 },
  };
  for (const [family, rungs] of request.ladder.families) {
    if (taken.has(family) || rungs.every((rung) => contactsOfRep(rung.drill) > 1)) continue;
    const [pick] = pickDrills([family], plain.ladder, plain.gates, plain.choosing);
    if (pick !== undefined && contactsOfRep(pick.drill) === 1) return { ...pick, own: true };
  }
  return undefined;
}
