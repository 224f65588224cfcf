// Says why a session stands on its day, why its lifting stays light and why drops stay out of it, and why a week has
// fewer sessions than wanted. Called by ../days.ts once all days are chosen; words are made from these by the report.

import type { Reason } from '../../build/types.ts';
import { isoDate, weekdayNameOf } from '../../util/days.ts';
import type { Span } from '../../source/types.ts';
import type { DayCell } from '../types.ts';
import type { UseOfWeek } from './chain.ts';
import { closingLines } from '../closed-days.ts';
import { countDays, daysOf, firstDay, includesDay, listSpacedSets, NO_DAYS, setOf } from './day-sets.ts';
import type { DaySet } from './day-sets.ts';
import { findSparing } from './heavy-days.ts';
import type { PlacedWeek } from './place-days.ts';
import type { SeasonDays } from './season-days.ts';
import type { PlacedSession } from './sessions.ts';
import { liftsWanted, namesDay } from './week-days.ts';
import type { WeekDays } from './week-days.ts';

/** One of the two uses of a day, as the reasons look at it. */
interface UseTold {
  readonly about: 'day' | 'lift-day';
  readonly use: UseOfWeek;
  readonly chosen: DaySet;
  /** Days of the last week that had any. */
  readonly pattern: DaySet;
  readonly usual: DaySet;
  readonly published: DaySet;
  /** Lines of the plan that keep days with a slot from it. */
  readonly closing: () => readonly Span[];
}

/** A week with what its reasons are told from. */
export interface WeekTold {
  readonly days: WeekDays;
  readonly jumps: UseTold;
  readonly lifts: UseTold;
}

/** `before` holds the days of the last weeks that had any jumps and any lifts. */
export function weekTold(season: SeasonDays, days: WeekDays, placed: PlacedWeek, before: PlacedWeek): WeekTold {
  const published = publishedSets(season, days);
  const told = (of: 'jumps' | 'lifts'): UseTold => ({
    about: of === 'jumps' ? 'day' : 'lift-day',
    use: days.toPlace[of],
    chosen: placed[of],
    pattern: before[of],
    usual: days.usual[of],
    published: published[of],
    closing: () => closingOf(season, days, of),
  });
  return { days, jumps: told('jumps'), lifts: told('lifts') };
}

/** A week that has more days than it asks for has nothing to name. */
function closingOf({ plan, grid }: SeasonDays, { week, toPlace }: WeekDays, of: 'jumps' | 'lifts'): readonly Span[] {
  return countDays(toPlace[of].days) > toPlace[of].wanted ? [] : closingLines(plan, grid.athlete, week.cells, of);
}

const NOTHING: PlacedWeek = { jumps: NO_DAYS, lifts: NO_DAYS };

function publishedSets({ published }: SeasonDays, { week }: WeekDays): PlacedWeek {
  if (published.size === 0) return NOTHING;
  const places = (of: 'jumps' | 'lifts'): DaySet =>
    setOf(week.cells.flatMap((cell, place) => (published.get(cell.day)?.[of] === true ? [place] : [])));
  return { jumps: places('jumps'), lifts: places('lifts') };
}

/** The reasons of one session. */
export function sessionReasons({ days, jumps, lifts }: WeekTold, session: PlacedSession): readonly Reason[] {
  const reasons: Reason[] = [];
  if (session.jumps) {
    reasons.push(jumpDayReason(days, jumps, session.cell));
    if (days.rules.jumpsWaiver !== undefined) reasons.push(waived('session-spacing', days.rules.jumpsWaiver.span));
    if (session.demand !== undefined) reasons.push(demandReason(session.demand));
  }
  if (session.lifts) {
    reasons.push(chosenReason(days, lifts, session.cell));
    if (days.rules.liftsWaiver !== undefined) reasons.push(waived('lift-spacing', days.rules.liftsWaiver.span));
    if (session.light !== undefined) reasons.push(lightReason(session.light));
  }
  return reasons;
}

function waived(rule: string, span: Span): Reason {
  return { about: 'spacing', by: 'waiver', params: { rule }, spans: [span] };
}

function jumpDayReason(days: WeekDays, told: UseTold, cell: DayCell): Reason {
  if (cell === days.primerDay) return primerReason(days, cell);
  const pin = days.pins.find((one) => namesDay(one, cell));
  if (pin !== undefined && days.written === undefined) return dayReason('day', 'pin', cell, {}, [pin.span]);
  return chosenReason(days, told, cell);
}

function dayReason(
  about: UseTold['about'],
  by: string,
  cell: DayCell,
  params: Reason['params'],
  spans: readonly Span[],
): Reason {
  return { about, by, params: { weekday: weekdayNameOf(cell.day), ...params }, spans };
}

const NO_SPANS: readonly Span[] = [];

/** Most days of most weeks have one of these, so they say nothing but the weekday. */
function plainReason(
  about: UseTold['about'],
  by: 'published' | 'pattern' | 'usual-day' | 'least-cost',
  cell: DayCell,
): Reason {
  return { about, by, params: { weekday: weekdayNameOf(cell.day) }, spans: NO_SPANS };
}

function primerReason({ week }: WeekDays, cell: DayCell): Reason {
  const event = week.cells.find((one) => one.day > cell.day && one.competition !== undefined)?.competition;
  const spans = event === undefined ? [] : [event.span];
  return dayReason('day', 'last-week', cell, event === undefined ? {} : { event: event.name }, spans);
}

function chosenReason(days: WeekDays, told: UseTold, cell: DayCell): Reason {
  const written = days.written?.find((day) => day.cell === cell);
  if (written !== undefined) {
    return dayReason(told.about, 'programme', cell, { programme: written.use.programme.id }, [written.written.span]);
  }
  const place = cell.day - days.week.starts;
  if (includesDay(told.published, place)) return plainReason(told.about, 'published', cell);
  if (includesDay(told.pattern, place)) return plainReason(told.about, 'pattern', cell);
  const only = onlyWay(told, cell);
  if (only !== undefined) return only;
  if (includesDay(told.usual, place)) return plainReason(told.about, 'usual-day', cell);
  return leftReason(days, cell, told) ?? plainReason(told.about, 'least-cost', cell);
}

/** Where the week leaves no choice. */
function onlyWay({ about, use, chosen, closing }: UseTold, cell: DayCell): Reason | undefined {
  const open = countDays(use.days);
  const held = countDays(chosen);
  if (open <= held) return dayReason(about, 'open-days', cell, { open }, closing());
  const ways = listSpacedSets(use.days, use.apart).filter((set) => countDays(set) === held).length;
  if (ways > 1) return undefined;
  const by = about === 'day' ? 'session-spacing' : 'lift-spacing';
  return dayReason(about, by, cell, { open, apart: use.apart }, []);
}

/** Why a day of the week before was left: the first of its days that isn't open. */
function leftReason(days: WeekDays, cell: DayCell, { about, use, chosen, pattern }: UseTold): Reason | undefined {
  const shut = pattern & ~chosen & ~use.days;
  if (shut === NO_DAYS) return undefined;
  const left = days.week.cells[firstDay(shut)];
  if (left === undefined) return undefined;
  const params = { instead: weekdayNameOf(left.day), ...(left.barred === undefined ? {} : { barred: left.barred }) };
  return dayReason(about, 'open-days', cell, params, left.barredBy === undefined ? [] : [left.barredBy]);
}

function demandReason(demand: NonNullable<PlacedSession['demand']>): Reason {
  return {
    about: 'drops',
    by: 'fast-spacing',
    params: { next: demand.kind, on: isoDate(demand.day) },
    spans: demand.competition === undefined ? [] : [demand.competition.span],
  };
}

function lightReason(light: NonNullable<PlacedSession['light']>): Reason {
  const { by, days } = light;
  if (light.by === 'test-fresh') return { about: 'heavy', by, params: { days }, spans: [light.test.span] };
  const spares = findSparing(light);
  const params = { days, event: light.competition.name, ...(spares === undefined ? {} : { spares }) };
  return { about: 'heavy', by, params, spans: [light.competition.span] };
}

/** Reasons of the week itself: how many lift sessions it should have, and what kept sessions out. */
export function weekReasons({ days, jumps, lifts }: WeekTold, placed: PlacedWeek): readonly Reason[] {
  const reasons: Reason[] = [liftCountReason(days, placed)];
  if (countDays(placed.lifts) < lifts.use.wanted) reasons.push(fewerLifts(days, lifts));
  if (days.written === undefined && countDays(placed.jumps) < jumps.use.wanted) {
    reasons.push(fewerReason('sessions', 'session-spacing', jumps));
  }
  return reasons;
}

function liftCountReason(days: WeekDays, placed: PlacedWeek): Reason {
  const wanted = liftsWanted(days);
  return {
    about: 'lift-sessions',
    by: liftCountBy(days),
    params: { wanted, held: countDays(placed.lifts) },
    spans: days.written?.slice(0, 1).map((day) => day.use.span) ?? [],
  };
}

function liftCountBy(days: WeekDays): string {
  if (days.written !== undefined) return 'programme';
  if (days.kind.kind === 'transition' || days.kind.kind === 'empty') return days.kind.kind;
  if (days.crowded && liftsWanted({ ...days, crowded: false }) > days.rules.crowdedLifts) return 'congested-week';
  return days.phase.liftSessions < days.rules.leastLifts ? 'strength-always' : days.phase.id;
}

function fewerLifts({ sparedEve }: WeekDays, lifts: UseTold): Reason {
  const fewer = fewerReason('lift-sessions', 'lift-spacing', lifts);
  if (sparedEve === undefined) return fewer;
  return {
    ...fewer,
    by: 'lift-event-gap',
    params: { ...fewer.params, event: sparedEve.name },
    spans: [sparedEve.span],
  };
}

function fewerReason(about: string, spacing: string, { use, chosen, closing }: UseTold): Reason {
  const open = countDays(use.days);
  return {
    about,
    by: open < use.wanted ? 'open-days' : spacing,
    params: { wanted: use.wanted, held: daysOf(chosen).length, open, apart: use.apart },
    spans: closing(),
  };
}
