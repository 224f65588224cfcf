// What falls into the weeks of a season besides training, for one athlete: matches, tests, closed days. One row each,
// one cell a week, empty where nothing falls.

import { appliesTo, overlap, weekFrom } from '../plan/applies.ts';
import type { Athlete, DayRange, Plan } from '../plan/types.ts';
import type { Day } from '../util/days.ts';
import { shortWeekdayName } from './calendar-words.ts';

export interface EventRow {
  readonly label: string;
  /** One for each week: the weekday, `x2` for several, `all` for a whole week; empty for none. */
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
  const rows: readonly (readonly [string, readonly DayRange[]])[] = [
    ['peak', peaks.map(({ range }) => range)],
    ['matches', matches.map(({ range }) => range)],
    ['tests', tests.map(({ day }) => ({ from: day, until: day }))],
    ['closed', closures.map(({ range }) => range)],
  ];
  return rows
    .map(([label, ranges]) => ({ label, cells: weeks.map(({ starts }) => cellOf(ranges, starts)) }))
    .filter(({ cells }) => cells.some((cell) => cell !== ''));
}

function cellOf(ranges: readonly DayRange[], starts: Day): string {
  const week = weekFrom(starts);
  const within = ranges.filter((range) => overlap(range, week));
  const [first] = within;
  if (first === undefined) return '';
  if (within.length > 1) return `x${within.length}`;
  if (first.from <= week.from && week.until <= first.until) return 'all';
  return shortWeekdayName(Math.max(first.from, week.from)).toLowerCase();
}
