// Days, weeks and times of day as people write them: `Tuesday`, `2 Mar`, `18:00`. English, the same in every locale.

import { calendarDateOf, MONTH_NAMES, weekdayNameOf } from '../util/days.ts';
import type { Day } from '../util/days.ts';
import { MINUTES_AN_HOUR } from '../util/units.ts';

const SHORT = 3;

/** `January`. */
export const monthName = (day: Day): string => MONTH_NAMES[calendarDateOf(day).month - 1] ?? '';

/** `Jan`. */
export const shortMonthName = (day: Day): string => monthName(day).slice(0, SHORT);

/** `Monday`. */
export function weekdayName(day: Day): string {
  const name = weekdayNameOf(day);
  return name.charAt(0).toUpperCase() + name.slice(1);
}

/** `Mon`. */
export const shortWeekdayName = (day: Day): string => weekdayName(day).slice(0, SHORT);

/** The day of the month, from 1. */
export const dayOfMonth = (day: Day): number => calendarDateOf(day).day;

/** `2027`. */
export const yearOf = (day: Day): number => calendarDateOf(day).year;

/** `4 Jan`. */
export const dateWords = (day: Day): string => `${dayOfMonth(day)} ${shortMonthName(day)}`;

/** `4 Jan 2027`. */
export const dateWithYear = (day: Day): string => `${dateWords(day)} ${yearOf(day)}`;

/** `Mon 4 Jan`. */
export const dayWords = (day: Day): string => `${shortWeekdayName(day)} ${dateWords(day)}`;

/** `Monday 4 January`. */
export const longDayWords = (day: Day): string => `${weekdayName(day)} ${dayOfMonth(day)} ${monthName(day)}`;

/** `18:00` of minutes after midnight. */
export const timeWords = (minutes: number): string =>
  `${padded(Math.floor(minutes / MINUTES_AN_HOUR))}:${padded(minutes % MINUTES_AN_HOUR)}`;

const padded = (value: number): string => String(value).padStart(2, '0');
