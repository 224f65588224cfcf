// What cannot be held as asked: pinned days that are barred or too close, sessions that fit on no days, and what
// written-problems.ts finds. Called by ../days.ts once all days are chosen; a pin that fails in many
// weeks is told once, with the first of them.

import { problem } from '../../diagnostics/problem.ts';
import type { Diagnostic, RelatedPlace } from '../../diagnostics/types.ts';
import type { Pin, ProgrammeUse } from '../../plan/types.ts';
import { isoDate, weekdayNameOf } from '../../util/days.ts';
import type { Day } from '../../util/days.ts';
import type { DayCell } from '../types.ts';
import { countDays, includesDay, NO_DAYS } from './day-sets.ts';
import { namesDay } from './week-days.ts';
import type { WeekDays } from './week-days.ts';
import type { SeasonDays } from './season-days.ts';
import type { PlacedWeek } from './place-days.ts';
import { writtenProblems } from './written-problems.ts';

/** A line of the plan that stands against what is asked, and what it is to it. */
interface Against {
  readonly against: readonly RelatedPlace[];
  /** Whether taking out any one of them is enough. */
  readonly each: boolean;
  readonly instead: readonly Day[];
  readonly waivers: readonly string[];
}

/** Finds what stands against a pinned day. */
export type ExplainDays = (pin: Pin, day: Day) => Against;

const UNEXPLAINED: Against = { against: [], each: false, instead: [], waivers: [] };

/** The problems of a season, each kind in order of week. */
export function dayProblems(
  season: SeasonDays,
  weeks: readonly WeekDays[],
  placed: readonly PlacedWeek[],
  explain?: ExplainDays,
): readonly Diagnostic[] {
  return [
    ...pinProblems(season, weeks, placed, explain),
    ...writtenProblems(season, weeks),
    ...weeks.flatMap((days, index) => {
      const chosen = placed[index];
      return chosen === undefined ? [] : shortProblems(season, days, chosen);
    }),
  ];
}

interface Unmet {
  readonly pin: Pin;
  readonly cell: DayCell;
  readonly days: WeekDays;
}

function pinProblems(
  season: SeasonDays,
  weeks: readonly WeekDays[],
  placed: readonly PlacedWeek[],
  explain: ExplainDays | undefined,
): readonly Diagnostic[] {
  if (season.dayPins.length === 0) return [];
  const met = new Set(weeks.flatMap((days, index) => metKeys(days, placed[index])));
  const first = new Map<string, Unmet>();
  const seen = new Map<string, number>();
  weeks.forEach((days, index) => {
    for (const unmet of unmetPins(days, placed[index])) {
      const key = keyOf(unmet.pin, unmet.cell);
      if (!first.has(key)) first.set(key, unmet);
      seen.set(key, (seen.get(key) ?? 0) + 1);
    }
  });
  return [...first].map(([key, unmet]) =>
    pinProblem(season, unmet, { weeks: seen.get(key) ?? 1, metElsewhere: met.has(key) }, explain),
  );
}

const keyOf = ({ span }: Pin, { day }: DayCell): string => `${span.file} ${span.start} ${weekdayNameOf(day)}`;

/** The weekdays of pins that hold a session in this week. */
function metKeys(days: WeekDays, placed: PlacedWeek | undefined): readonly string[] {
  const held = days.week.cells.filter((_, place) => includesDay(placed?.jumps ?? NO_DAYS, place));
  return days.pins.flatMap((pin) => held.filter((cell) => namesDay(pin, cell)).map((cell) => keyOf(pin, cell)));
}

/**
 * Days a pin names that hold no session: open ones while a session stands elsewhere, while no session can stand at all,
 * or where they are too close for as many as the phase has; barred ones where they leave the week without a pinned day or
 * with fewer sessions than its phase has.
 */
function unmetPins(days: WeekDays, placed: PlacedWeek | undefined): readonly Unmet[] {
  if (days.pins.length === 0 || placed === undefined || restsAnyway(days)) return [];
  const { jumps } = days.toPlace;
  const { possible, level } = days.contacts;
  const short = possible < (days.phase.jumpSessions?.[level] ?? 0);
  const tooClose = short && countDays(jumps.pinned) > possible;
  const open = jumps.wanted > heldOnPins(days, placed) || (placed.jumps === NO_DAYS && possible === 0) || tooClose;
  const barred = jumps.pinned === NO_DAYS || short;
  return days.pins.flatMap((pin) =>
    days.week.cells.flatMap((cell, place) => {
      const counts = includesDay(jumps.days, place) ? open : barred;
      return counts && namesDay(pin, cell) && !includesDay(placed.jumps, place) ? [{ pin, cell, days }] : [];
    }),
  );
}

function restsAnyway({ kind }: WeekDays): boolean {
  return kind.kind === 'empty' || kind.kind === 'transition';
}

function heldOnPins(days: WeekDays, placed: PlacedWeek): number {
  return days.week.cells.filter(
    (cell, place) => includesDay(placed.jumps, place) && days.pins.some((pin) => namesDay(pin, cell)),
  ).length;
}

/** A warning where that weekday of the pin is met in other weeks; an error where it is met in none. */
function pinProblem(
  season: SeasonDays,
  { pin, cell, days }: Unmet,
  { weeks, metElsewhere }: { readonly weeks: number; readonly metElsewhere: boolean },
  explain: ExplainDays | undefined,
): Diagnostic {
  const athlete = season.grid.athlete;
  const { against, each, instead, waivers } = explain?.(pin, cell.day) ?? UNEXPLAINED;
  const severity = metElsewhere ? ('warning' as const) : undefined;
  const about = { span: pin.span, athlete: athlete.id, week: days.week.starts, severity };
  const whatWorks = {
    others: against.filter(({ span }) => span !== pin.span).length,
    each,
    instead: instead.map(weekdayNameOf).join(' or '),
    waivers: waivers.join(' or '),
  };
  const params = { athlete: athlete.name, day: weekdayNameOf(cell.day), date: isoDate(cell.day), weeks, ...whatWorks };
  if (cell.barred !== undefined && days.written === undefined) {
    return problem('schedule/pinned-day-barred', {
      params: { ...params, why: cell.barred },
      related: against.length > 0 ? against : barredBy(cell),
      ...about,
    });
  }
  return problem('schedule/pinned-day-not-held', {
    params: { ...params, apart: days.rules.jumpsApart, written: days.written !== undefined },
    related: against.length > 0 ? against : (days.written ?? []).slice(0, 1).map(programmePlace),
    rule: 'session-spacing',
    ...about,
  });
}

function programmePlace({ use }: { readonly use: ProgrammeUse }): RelatedPlace {
  return { span: use.span, message: 'a programme sets the days of this week' };
}

function barredBy(cell: DayCell): readonly RelatedPlace[] {
  return cell.barredBy === undefined ? [] : [{ span: cell.barredBy, message: 'this keeps the day free of jumps' }];
}

function shortProblems(season: SeasonDays, days: WeekDays, placed: PlacedWeek): readonly Diagnostic[] {
  const { athlete } = season.grid;
  const held = days.week.cells.filter((_, place) => includesDay(placed.jumps, place)).length;
  const wanted = days.contacts.sessions.length;
  if (held >= wanted) return [];
  return [
    problem('schedule/sessions-not-held', {
      params: {
        athlete: athlete.name,
        week: isoDate(days.week.starts),
        wanted,
        held,
        apart: days.rules.jumpsApart,
      },
      span: days.pins[0]?.span ?? days.written?.[0]?.use.span ?? athlete.span,
      related: days.week.cells.flatMap((cell) => (cell.barred === 'rest-pin' ? barredBy(cell) : [])),
      rule: 'session-spacing',
      athlete: athlete.id,
      week: days.week.starts,
    }),
  ];
}
