// Dates as whole days, so that a week is seven and nothing depends on a time zone. Used by every stage that reckons
// with dates. All of it is the proleptic Gregorian calendar in UTC; no time of day, no locale.

import { MILLISECONDS_A_DAY } from './units.ts';

export const DAYS_A_WEEK = 7;

/** Whole days since 1970-01-01; negative before it. */
export type Day = number;

/** 0 monday … 6 sunday. */
export type Weekday = 0 | 1 | 2 | 3 | 4 | 5 | 6;

const ISO_DATE = /^(\d{4})-(\d{2})-(\d{2})$/;

/** The names of the days, by Weekday. */
export const WEEKDAY_NAMES = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'] as const;

/** The names of the months, from January. */
export const MONTH_NAMES = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

export type WeekdayName = (typeof WEEKDAY_NAMES)[number];

export interface CalendarDate {
  readonly year: number;
  /** 1 to 12. */
  readonly month: number;
  /** 1 to 31. */
  readonly day: number;
}

/** Days in a month; `month` from 1 to 12. */
export const daysInMonth = (year: number, month: number): number =>
  month === 2 ? (isLeapYear(year) ? 29 : 28) : month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;

/** By the Gregorian rule, for years before it came too. */
export const isLeapYear = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;

/** The day of a calendar date that exists; years 0 to 9999. */
export function dayOf({ year, month, day }: CalendarDate): Day {
  // Date.UTC takes the years 0 to 99 for 1900 to 1999; 400 years are a whole number of days.
  const shifted = Date.UTC(year + 400, month - 1, day) / MILLISECONDS_A_DAY;
  // It is whole already. Rounded it is one for V8 too, which otherwise makes an object of it and of each day reckoned from it.
  return Math.round(shifted) - 146_097;
}

/** Dates of a few seasons are asked for again and again: remembered up to here, then from anew. */
const MOST_REMEMBERED = 4_096;

function remembered<T>(make: (day: Day) => T): (day: Day) => T {
  const made = new Map<Day, T>();
  return (day) => {
    const known = made.get(day);
    if (known !== undefined) return known;
    const fresh = make(day);
    if (made.size >= MOST_REMEMBERED) made.clear();
    made.set(day, fresh);
    return fresh;
  };
}

/** The calendar date of a day. */
export const calendarDateOf = remembered(dateOf);

function dateOf(day: Day): CalendarDate {
  const date = new Date(day * MILLISECONDS_A_DAY);
  return { year: date.getUTCFullYear(), month: date.getUTCMonth() + 1, day: date.getUTCDate() };
}

/** The day of `YYYY-MM-DD`, or undefined if the text has another form or the date doesn't exist. */
export function parseIsoDate(text: string): Day | undefined {
  const match = ISO_DATE.exec(text);
  if (match === null) return undefined;
  const date = { year: Number(match[1]), month: Number(match[2]), day: Number(match[3]) };
  if (date.month < 1 || date.month > 12 || date.day < 1) return undefined;
  return date.day > daysInMonth(date.year, date.month) ? undefined : dayOf(date);
}

/** `YYYY-MM-DD`; years 0 to 9999. */
export const isoDate = remembered(isoText);

function isoText(day: Day): string {
  const { year, month, day: dayOfMonth } = calendarDateOf(day);
  return `${padded(year, 4)}-${padded(month, 2)}-${padded(dayOfMonth, 2)}`;
}

/** 1970-01-01 was a thursday. */
export const weekdayOf = (day: Day): Weekday => ((((day + 3) % 7) + 7) % 7) as Weekday;

/** The day of the week in full: `monday`. */
export const weekdayNameOf = (day: Day): WeekdayName => WEEKDAY_NAMES[weekdayOf(day)];

/** The last day at or before `day` that is `first`: the start of the week `day` is in. */
export const startOfWeek = (day: Day, first: Weekday): Day => day - ((weekdayOf(day) - first + 7) % 7);

const padded = (value: number, width: number): string => String(value).padStart(width, '0');
