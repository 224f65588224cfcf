// Turns the days chosen for a week into its sessions: the slot of each, its contacts, whether it lifts and how. Larger
// sizes come first in the week, but sessions with a competition close ahead take the smaller ones. A day that jumps and
// lifts is one session where its slot takes both: jumps first, then lifts (S11). Called by ../days.ts.

import type { Reason } from '../../build/types.ts';
import { SMALLER_BEFORE_MATCH_DAYS } from '../../library/days.ts';
import type { Slot } from '../../plan/types.ts';
import type { Day } from '../../util/days.ts';
import { jumpSlot } from '../contacts/week-facts.ts';
import type { DayCell, ScheduledSession } from '../types.ts';
import { findDemand } from './demands.ts';
import type { Demand } from './demands.ts';
import { daysOf, includesDay } from './day-sets.ts';
import { findLightCause } from './heavy-days.ts';
import type { LightCause } from './heavy-days.ts';
import type { PlacedWeek } from './place-days.ts';
import type { SeasonDays } from './season-days.ts';
import { takesLifts } from './week-days.ts';
import type { WeekDays } from './week-days.ts';

/** What is known of a session before its reasons are told. */
export interface PlacedSession {
  /** From 0 in its week. */
  readonly place: number;
  readonly cell: DayCell;
  readonly slot: Slot;
  readonly jumps: boolean;
  readonly lifts: boolean;
  readonly contacts: number;
  /** What keeps its lifting light. */
  readonly light: LightCause | undefined;
  /** What keeps drops out of it. */
  readonly demand: Demand | undefined;
}

/** The sessions of a week in order of day and slot. `jumpDates` are those of the whole season. */
export function placeSessions(
  season: SeasonDays,
  days: WeekDays,
  placed: PlacedWeek,
  jumpDates: ReadonlySet<Day>,
): readonly PlacedSession[] {
  const sizes = sessionSizes(season, days, placed);
  return days.week.cells.flatMap((cell, place) => {
    const uses = {
      jumps: includesDay(placed.jumps, place),
      lifts: includesDay(placed.lifts, place),
    };
    return sharedSlots(cell, uses.jumps, uses.lifts).map(({ slot, jumps, lifts }) => ({
      place,
      cell,
      slot,
      jumps,
      lifts,
      contacts: jumps ? (sizes.get(place) ?? 0) : 0,
      light: lifts ? findLightCause(season, days.rules, days.week, cell) : undefined,
      demand: jumps ? findDemand(season, days.rules, cell.day, jumpDates) : undefined,
    }));
  });
}

/** The session as the stage of lines reads it. */
export function sessionOf(session: PlacedSession, days: WeekDays, reasons: readonly Reason[]): ScheduledSession {
  const primer = session.jumps && session.cell === days.primerDay;
  return {
    day: session.cell.day,
    slot: session.slot,
    contacts: session.contacts,
    lifts: session.lifts,
    heavyAllowed: session.lifts && session.light === undefined,
    dropsAllowed: session.jumps && !primer && session.demand === undefined,
    primer,
    ...(session.lifts && days.crowded ? { shortLift: true } : {}),
    reasons,
  };
}

interface SharedSlot {
  readonly slot: Slot;
  readonly jumps: boolean;
  readonly lifts: boolean;
}

/** Which slots of a day hold its jumps and its lifts, in the day's order. */
function sharedSlots(cell: DayCell, jumps: boolean, lifts: boolean): readonly SharedSlot[] {
  const forJumps = jumps ? (jumpSlot(cell) ?? cell.slots[0]) : undefined;
  const forLifts = lifts ? liftSlot(cell, forJumps) : undefined;
  return cell.slots.flatMap((slot) =>
    slot === forJumps || slot === forLifts
      ? [{ slot, jumps: slot === forJumps, lifts: slot === forLifts }]
      : [],
  );
}

/** The jumps' own slot if it takes lifts, else one behind it, else the longest; lines written by hand take what is open. */
function liftSlot(cell: DayCell, forJumps: Slot | undefined): Slot | undefined {
  const slots = cell.slots.filter(takesLifts);
  if (slots.length === 0) return forJumps ?? cell.slots[0];
  if (forJumps === undefined) return slots.reduce((best, slot) => (slot.minutes > best.minutes ? slot : best));
  if (takesLifts(forJumps)) return forJumps;
  const behind = cell.slots.indexOf(forJumps);
  return slots.find((slot) => cell.slots.indexOf(slot) > behind) ?? slots[0];
}

/** Contacts by place of the day in the week. Days written by hand have their own. */
function sessionSizes(season: SeasonDays, days: WeekDays, placed: PlacedWeek): ReadonlyMap<number, number> {
  const places = daysOf(placed.jumps);
  if (days.written !== undefined) {
    return new Map(days.written.map((day) => [day.cell.day - days.week.starts, day.contacts]));
  }
  const isNear = (place: number): number => (competesSoon(season, days.week.starts + place) ? 1 : 0);
  const ranked = places.toSorted((a, b) => isNear(a) - isNear(b) || a - b);
  return new Map(ranked.map((place, rank) => [place, days.contacts.sessions[rank] ?? 0]));
}

function competesSoon(season: SeasonDays, day: Day): boolean {
  return season.competitions.some(({ range }) => range.from > day && range.from - day <= SMALLER_BEFORE_MATCH_DAYS);
}
