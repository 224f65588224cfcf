// What falls into the weeks of a season besides training, for one athlete: matches, tests, closed days. One row each,
// one cell a week, empty where nothing falls.

import { appliesTo, overlap, weekFrom } from '../plan/applies.ts';
import { contestWords } from '../library/sports.ts';
import type { Athlete, DayRange, Plan } from '../plan/types.ts';
import type { Day } from '../util/days.ts';
import { shortWeekdayName } from './calendar-words.ts';

export interface EventRow {
  readonly label: string;
  /**
   * One for each week: the weekday, `x2` for several, `all` for a whole week; of closed days `thu…` from a day on, `…fri` up
   * to one, `some` between; empty for none.
   */
  readonly cells: readonly string[];
}

export interface PeakEvent {
  readonly name: string;
  readonly day: Day;
  readonly everybody: boolean;
}

type Weeks = readonly { readonly starts: Day }[];

/** Gives the rows of an athlete; athletes with the same events get the very same rows. */
export type EventsOf = (athlete: Athlete) => readonly EventRow[];

/** The rows that hold anything, in this order: peaks, matches, tests, closed days. */
export function createEvents(plan: Plan, weeks: Weeks): EventsOf {
  const known = new Map<string, readonly EventRow[]>();
  const items = [...plan.competitions, ...plan.tests, ...plan.closures];
  return (athlete) => {
    const key = items.map(({ who }) => (appliesTo(who, athlete) ? '1' : '0')).join('');
    const rows = known.get(key) ?? eventRows(plan, athlete, weeks);
    known.set(key, rows);
    return rows;
  };
}

function eventRows(plan: Plan, athlete: Athlete, weeks: Weeks): readonly EventRow[] {
  const competitions = plan.competitions.filter(({ who }) => appliesTo(who, athlete));
  const tests = plan.tests.filter(({ who }) => appliesTo(who, athlete));
  const closures = plan.closures.filter(({ who }) => appliesTo(who, athlete));
  const peaks = competitions.filter(({ prepare }) => prepare === 'peak');
  const matches = competitions.filter(({ prepare }) => prepare !== 'peak');
  const rows: readonly (readonly [string, readonly DayRange[], Words])[] = [
    ['peak', peaks.map(({ range }) => range), firstDay],
    [contestWords(plan.season.sport)[1], matches.map(({ range }) => range), firstDay],
    ['tests', tests.map(({ day }) => ({ from: day, until: day })), firstDay],
    ['closed', closures.map(({ range }) => range), closedDays],
  ];
  return rows
    .map(([label, ranges, words]) => ({ label, cells: weeks.map(({ starts }) => cellOf(ranges, starts, words)) }))
    .filter(({ cells }) => cells.some((cell) => cell !== ''));
}

/** What stands for the part of a range that lies in a week. */
type Words = (range: DayRange, week: DayRange) => string;

function cellOf(ranges: readonly DayRange[], starts: Day, words: Words): string {
  const week = weekFrom(starts);
  const within = ranges.filter((range) => overlap(range, week));
  const [first] = within;
  if (first === undefined) return '';
  if (within.length > 1) return `x${within.length}`;
  return first.from <= week.from && week.until <= first.until ? 'all' : words(first, week);
}

const shortDay = (day: Day): string => shortWeekdayName(day).toLowerCase();

function firstDay({ from }: DayRange, week: DayRange): string {
  return shortDay(Math.max(from, week.from));
}

/** A single day by its name; of several the first of those to the week's end, or the last of those from its beginning. */
function closedDays({ from, until }: DayRange, week: DayRange): string {
  if (from === until) return shortDay(from);
  if (until >= week.until) return `${shortDay(from)}…`;
  return from <= week.from ? `…${shortDay(until)}` : 'some';
}
