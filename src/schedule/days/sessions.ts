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
import { findLightCause, findSparing } from './heavy-days.ts';
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
  const sessions: PlacedSession[] = [];
  for (const place of daysOf(placed.jumps | placed.lifts)) {
    const cell = days.week.cells[place];
    if (cell === undefined) continue;
    const forJumps = includesDay(placed.jumps, place) ? (jumpSlot(cell) ?? cell.slots[0]) : undefined;
    const forLifts = includesDay(placed.lifts, place) ? liftSlot(cell, forJumps) : undefined;
    for (const slot of cell.slots) {
      const jumps = slot === forJumps;
      const lifts = slot === forLifts;
      if (!jumps && !lifts) continue;
      const contacts = jumps ? (sizes[place] ?? 0) : 0;
      const light = lifts ? findLightCause(season, days.rules, days.week, cell) : undefined;
      const demand = jumps ? findDemand(season, days.rules, cell.day, jumpDates) : undefined;
      sessions.push({ place, cell, slot, jumps, lifts, contacts, light, demand });
    }
  }
  return sessions;
}

/** The session as the stage of lines reads it. */
export function sessionOf(session: PlacedSession, days: WeekDays, reasons: readonly Reason[]): ScheduledSession {
  const primer = session.jumps && session.cell === days.primerDay;
  const scheduled = {
    day: session.cell.day,
    slot: session.slot,
    contacts: session.contacts,
    lifts: session.lifts,
    heavyAllowed: session.lifts && session.light === undefined,
    dropsAllowed: session.jumps && !primer && session.demand === undefined,
    primer,
    reasons,
  };
  const spares = session.light === undefined ? undefined : findSparing(session.light);
  if (session.lifts && days.crowded) return { ...scheduled, shortLift: true };
  return spares === undefined ? scheduled : { ...scheduled, spares };
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
function sessionSizes(season: SeasonDays, days: WeekDays, placed: PlacedWeek): readonly number[] {
  const sizes: number[] = [0, 0, 0, 0, 0, 0, 0];
  if (days.written !== undefined) {
    for (const day of days.written) sizes[day.cell.day - days.week.starts] = day.contacts;
    return sizes;
  }
  const places = daysOf(placed.jumps);
  const near = places.filter((place) => competesSoon(season, days.week.starts + place));
  const ranked = near.length === 0 ? places : [...places.filter((place) => !near.includes(place)), ...near];
  ranked.forEach((place, rank) => {
    sizes[place] = days.contacts.sessions[rank] ?? 0;
  });
  return sizes;
}

function competesSoon(season: SeasonDays, day: Day): boolean {
  return season.competitions.some(({ range }) => range.from > day && range.from - day <= SMALLER_BEFORE_MATCH_DAYS);
}
