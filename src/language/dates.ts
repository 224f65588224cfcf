// Dates, days of the week, times of day and births as they are written. Called by the shapes. A date in another form is
// refused with the ISO form, and one that doesn't exist with what its month has; nothing is guessed.

import type { ScalarNode } from '../read/types.ts';
import { dayOf, daysInMonth, MONTH_NAMES, parseIsoDate, WEEKDAY_NAMES } from '../util/days.ts';
import type { Day, Weekday } from '../util/days.ts';
import { leaf, refuse } from './reading.ts';
import type { Reading } from './reading.ts';
import type { Shape } from './shape.ts';
import { dateHint } from './date-hints.ts';
import { meantHelp } from './words.ts';
import { MINUTES_AN_HOUR } from '../util/units.ts';

const ISO_FORM = /^(\d{4})-(\d{2})-(\d{2})$/;
const DATE_PATTERN = '^\\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\\d|3[01])$';

/**
 * A day of the calendar from its ISO form, `2027-03-01`; else a refusal that says the date as it should be, where it
 * can be told.
 */
export function readDate(text: string): Reading<Day> {
  const day = parseIsoDate(text);
  if (day !== undefined) return { value: day };
  const match = ISO_FORM.exec(text);
  if (match === null) return refuse('language/date-form', { params: { found: text }, help: dateHint(text) });
  return refuse('language/no-such-date', {
    params: { found: text, why: whyNot(Number(match[1]), Number(match[2]), Number(match[3])) },
    help: dateHint(text),
  });
}

function whyNot(year: number, month: number, day: number): string {
  const name = MONTH_NAMES[month - 1];
  if (name === undefined) return `there is no month ${String(month)}`;
  if (day === 0) return 'the first of a month is 01';
  return `${name} ${String(year)} has ${String(daysInMonth(year, month))} days`;
}

const DATE = leaf(
  ({ text, value }): Reading<Day> =>
    value === null
      ? refuse('language/empty-value', { params: { wanted: 'a date, as in 2027-01-04' } })
      : readDate(text),
  { id: 'date', type: 'string', pattern: DATE_PATTERN, examples: ['2027-01-04'] },
);

/** The shape of one day. */
export const date = (): Shape<Day> => DATE;

const SHORT_DAYS = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'];
const WEEKDAYS: ReadonlyMap<string, Weekday> = new Map(
  [...WEEKDAY_NAMES, ...SHORT_DAYS].map((name, index) => [name, (index % WEEKDAY_NAMES.length) as Weekday]),
);

/** The day of a name in full or of three letters. */
export function findWeekday(name: string): Weekday | undefined {
  return WEEKDAYS.get(name);
}

function dayHelp(text: string): { readonly help?: string } {
  const days = text.toLowerCase().split(/\s*(?:[/,&+]|\band\b)\s*/u);
  const isSeveral = days.length > 1 && days.every((day) => findWeekday(day) !== undefined);
  return isSeveral ? { help: 'write an item for each day' } : meantHelp(text, WEEKDAY_NAMES);
}

const WEEKDAY = leaf(
  ({ text }): Reading<Weekday> => {
    const day = findWeekday(text);
    if (day !== undefined) return { value: day };
    return refuse('language/no-such-day', { params: { found: text }, ...dayHelp(text) });
  },
  { id: 'weekday', enum: [...WEEKDAY_NAMES, ...SHORT_DAYS] },
);

/** The shape of a day of the week, whole or by three letters: 0 is Monday. */
export const weekday = (): Shape<Weekday> => WEEKDAY;

const TIME = /^([01]?\d|2[0-3]):([0-5]\d)$/;

const CLOCK = /^(\d{1,2})(?:\s*[.:,h ]\s*([0-5]\d))?\s*(?:h|uhr|o'clock)?\s*([ap]\.?m\.?)?$/iu;

/** `18.00`, `18h30`, `6pm` in the form that is read. */
function timeHint(text: string): string | undefined {
  const match = CLOCK.exec(text.replaceAll(/[\u2018-\u201f]/gu, '')) ?? /^(\d{2})([0-5]\d)()$/u.exec(text);
  if (match === null) return undefined;
  const half = match[3]?.charAt(0).toLowerCase();
  const hour = half === undefined || half === '' ? Number(match[1]) : (Number(match[1]) % 12) + (half === 'p' ? 12 : 0);
  return hour > 23 ? undefined : `write "${String(hour).padStart(2, '0')}:${match[2] ?? '00'}"`;
}

/** Minutes after midnight. */
export function timeOfDay(): Shape<number> {
  const read = ({ text }: ScalarNode): Reading<number> => {
    const match = TIME.exec(text);
    if (match === null) return refuse('language/time-form', { params: { found: text }, help: timeHint(text) });
    return { value: Number(match[1]) * MINUTES_AN_HOUR + Number(match[2]) };
  };
  return leaf(read, { type: 'string', pattern: '^([01]?\\d|2[0-3]):[0-5]\\d$', examples: ['18:00'] });
}

/** Earliest and latest day that what is written allows. */
export interface BornDays {
  readonly earliest: Day;
  readonly latest: Day;
}

const YEAR = /^\d{4}$/;
const YEAR_MONTH = /^(\d{4})-(\d{2})$/;

/** A birth from a year, a month or a day: the earliest and the latest day it may have been. */
export function readBorn(text: string): Reading<BornDays> {
  if (YEAR.test(text)) {
    const year = Number(text);
    return { value: { earliest: dayOf({ year, month: 1, day: 1 }), latest: dayOf({ year, month: 12, day: 31 }) } };
  }
  const match = YEAR_MONTH.exec(text);
  if (match === null) {
    const day = readDate(text);
    return 'value' in day ? { value: { earliest: day.value, latest: day.value } } : day;
  }
  const year = Number(match[1]);
  const month = Number(match[2]);
  if (month < 1 || month > 12) {
    return refuse('language/no-such-date', { params: { found: text, why: whyNot(year, month, 1) } });
  }
  return {
    value: { earliest: dayOf({ year, month, day: 1 }), latest: dayOf({ year, month, day: daysInMonth(year, month) }) },
  };
}

/** The shape of a birth, as `readBorn` reads it; a year may stand as a number. */
export function born(): Shape<BornDays> {
  const read = ({ text, value }: ScalarNode): Reading<BornDays> =>
    value === null
      ? refuse('language/empty-value', { params: { wanted: 'a year, a month or a date, as in 2003-06' } })
      : readBorn(text);
  return leaf(read, {
    anyOf: [
      { type: 'integer', minimum: 1900, maximum: 2999 },
      { type: 'string', pattern: '^\\d{4}(-(0[1-9]|1[0-2])(-(0[1-9]|[12]\\d|3[01]))?)?$' },
    ],
    examples: ['2003-06'],
  });
}
