// Sessions and competitions as the events of a phone calendar, one calendar for the squad and one for each athlete. An
// event keeps its identity while its session moves within the week, so that a phone moves it instead of adding another.
// The same people read it as read the cards: no reasons of health, no names of rules.

import type { Build, BuiltAthlete, BuiltSession } from '../build/types.ts';
import { appliesTo } from '../plan/applies.ts';
import type { Athlete, Competition, Plan, Slot, TestDay } from '../plan/types.ts';
import { isoDate } from '../util/days.ts';
import type { Day } from '../util/days.ts';
import { testNames } from './card.ts';
import { selectedSessions, selectedWeeks, selectsDay } from './selection.ts';
import type { Selection } from './selection.ts';
import { sheetLine } from './sheet-line.ts';
import { createSheetNames } from './sheet-names.ts';

export interface CalendarEvent {
  /** The same in every build of the plan. */
  readonly uid: string;
  readonly summary: string;
  readonly description?: string;
  readonly place?: string;
  readonly day: Day;
  /** Last day of an event without a time. */
  readonly lastDay: Day;
  /** Minutes after midnight, and how long; absent for whole days. */
  readonly time?: { readonly at: number; readonly minutes: number };
}

export interface Calendar {
  readonly title: string;
  /** IANA name; absent: times are those of wherever the phone is. */
  readonly timeZone?: string;
  /** First day of the season: stands for the day the calendar was made, which must not come from a clock. */
  readonly stamp: Day;
  readonly events: readonly CalendarEvent[];
}

export interface CalendarMaker {
  /** Takes an athlete for the squad's calendar and gives the athlete's own. */
  readonly add: (built: BuiltAthlete) => Calendar;
  readonly finish: () => Calendar;
}

/** Takes the athletes one by one and gives each a calendar; that of the squad at the end. */
export function createCalendars({ plan }: Pick<Build, 'plan'>, selection: Selection): CalendarMaker {
  const names = createSheetNames(plan);
  const bySlot = new Map<string, SquadSession>();
  const domain = `${slugOf(plan.season.title)}.footfall`;
  const calendar = (title: string, events: readonly CalendarEvent[]): Calendar => ({
    title,
    ...(plan.season.timeZone !== undefined && { timeZone: plan.season.timeZone }),
    stamp: plan.season.starts,
    events: events.toSorted(
      (a, b) => a.day - b.day || (a.time?.at ?? 0) - (b.time?.at ?? 0) || (a.uid < b.uid ? -1 : 1),
    ),
  });
  return {
    add: (built) => {
      noteSessions(bySlot, built, selection);
      const { athlete } = built;
      return calendar(`${names.on(athlete, plan.season.starts)}: ${plan.season.title}`, [
        ...athleteSessions(plan, built, selection, `${athlete.id}@${domain}`),
        ...dayEvents(plan, selection, domain, (who) => appliesTo(who, athlete)),
      ]);
    },
    finish: () =>
      calendar(plan.season.title, [
        ...squadSessions(bySlot, selection, domain),
        ...dayEvents(plan, selection, domain, () => true),
      ]),
  };
}

/** Letters and digits of a title; two plans of one title share their identities, as they are one season. */
const slugOf = (title: string): string =>
  title
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, '-')
    .replaceAll(/^-|-$/gu, '') || 'season';

function athleteSessions(plan: Plan, built: BuiltAthlete, selection: Selection, suffix: string): CalendarEvent[] {
  return selectedWeeks(selection, built).flatMap((week) =>
    selectedSessions(selection, week).map((session) => ({
      uid: `${isoDate(week.starts)}-${week.sessions.indexOf(session) + 1}-${suffix}`,
      summary: summaryOf(session),
      description: linesOf(plan, built.athlete, session),
      ...whenAndWhere(session.day, session.slot),
    })),
  );
}

function summaryOf({ jumps, lifts }: Pick<BuiltSession, 'jumps' | 'lifts'>): string {
  return jumps && lifts ? 'Jumps and lifts' : jumps ? 'Jumps' : 'Lifts';
}

function linesOf(plan: Plan, athlete: Athlete, { lines, slot }: BuiltSession): string {
  return lines
    .map((line) => sheetLine({ plan, athlete, place: slot.place, lines }, line))
    .map(({ name, dose, load }) => `${name} ${dose}${load === undefined ? '' : `, ${load}`}`)
    .join('\n');
}

function whenAndWhere(
  day: Day,
  { at, minutes, place }: Slot,
): Pick<CalendarEvent, 'day' | 'lastDay' | 'place' | 'time'> {
  return { day, lastDay: day, place: place.id, ...(at !== undefined && { time: { at, minutes } }) };
}

interface SquadSession {
  readonly week: Day;
  readonly day: Day;
  readonly slot: Slot;
  jumps: boolean;
  lifts: boolean;
  due: number;
}

function noteSessions(bySlot: Map<string, SquadSession>, built: BuiltAthlete, selection: Selection): void {
  for (const week of selectedWeeks(selection, built)) {
    for (const { day, slot, jumps, lifts } of week.sessions) {
      const key = `${day} ${slot.span.file} ${slot.span.start}`;
      const known = bySlot.get(key);
      if (known === undefined) bySlot.set(key, { week: week.starts, day, slot, jumps, lifts, due: 1 });
      else {
        known.jumps ||= jumps;
        known.lifts ||= lifts;
        known.due += 1;
      }
    }
  }
}

/** Numbered within their whole week, by day and time, whichever of its days are asked for. */
function squadSessions(
  bySlot: ReadonlyMap<string, SquadSession>,
  selection: Selection,
  domain: string,
): CalendarEvent[] {
  const numbers = new Map<Day, number>();
  const ordered = [...bySlot.values()].toSorted(
    (a, b) => a.day - b.day || (a.slot.at ?? 0) - (b.slot.at ?? 0) || a.slot.span.start - b.slot.span.start,
  );
  const events = ordered.map((session) => {
    const number = (numbers.get(session.week) ?? 0) + 1;
    numbers.set(session.week, number);
    return {
      uid: `${isoDate(session.week)}-${number}-squad@${domain}`,
      summary: `${summaryOf(session)}, ${session.due} due`,
      ...whenAndWhere(session.day, session.slot),
    };
  });
  return events.filter(({ day }) => selectsDay(selection, day));
}

/** Competitions and tests, as whole days. */
function dayEvents(
  plan: Plan,
  selection: Selection,
  domain: string,
  isFor: (who: Competition['who']) => boolean,
): CalendarEvent[] {
  const competitions = plan.competitions
    .filter(({ who, range }) => isFor(who) && selectsDay(selection, range.from))
    .map((one) => competitionEvent(one, plan, domain));
  const tests = plan.tests
    .filter(({ who, day }) => isFor(who) && selectsDay(selection, day))
    .map((one) => testEvent(one, plan, domain));
  // The same tests on one day, written for two squads, are one event: it has one identity.
  return [...competitions, ...new Map(tests.map((one) => [one.uid, one])).values()];
}

/** Known by its name, and of several by which of them it is, so that one that is moved stays the same. */
function competitionEvent({ name, range }: Competition, { competitions }: Plan, domain: string): CalendarEvent {
  const sameName = competitions.filter((one) => one.name === name);
  const number = sameName.findIndex((one) => one.range === range) + 1;
  return {
    uid: `${slugOf(name)}-${number}-match@${domain}`,
    summary: name,
    day: range.from,
    lastDay: range.until,
  };
}

function testEvent({ day, what }: TestDay, plan: Plan, domain: string): CalendarEvent {
  const sameTests = plan.tests.filter((one) => one.what.join() === what.join());
  const number = sameTests.findIndex((one) => one.day === day) + 1;
  return {
    uid: `${what.join('-')}-${number}-tests@${domain}`,
    summary: `Tests: ${testNames(plan, what)}`,
    day,
    lastDay: day,
  };
}
