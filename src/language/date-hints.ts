// A date or a week written in another form, and how it is written here. Called when a date is refused. Where a form could be
// two days, both are told.

import { DAYS_A_WEEK, dayOf, daysInMonth, isoDate, startOfWeek } from '../util/days.ts';

const MONTH = 'jan feb mar apr may jun jul aug sep oct nov dec'.split(' ');
/** A four of January is always in the first week of ISO 8601. */
const IN_FIRST_WEEK = { month: 1, day: 4 };
const MONDAY = 0;

/** What to write instead of a text that is no date, if it can be told. */
export function dateHint(text: string): string | undefined {
  const plain = text.trim().replaceAll(/[\u2010-\u2015\u2212]/gu, '-');
  return rangeHint(plain) ?? weekHint(plain) ?? ofNumbers(plain) ?? ofWords(plain);
}

function rangeHint(text: string): string | undefined {
  const [, first, last] = /^(\d{4}-\d{2}-\d{2})\s*(?:-|to|until|\/)\s*(\d{4}-\d{2}-\d{2})$/u.exec(text) ?? [];
  return first === undefined || last === undefined
    ? undefined
    : `one day is wanted here: write ${first}, and the last day under \`until:\` where there is such a key`;
}

function weekHint(text: string): string | undefined {
  const iso = /^(\d{4})-?W(\d{1,2})$/iu.exec(text);
  const week = Number(iso?.[2]);
  if (iso !== null && week >= 1 && week <= 53) {
    const first = startOfWeek(dayOf({ year: Number(iso[1]), ...IN_FIRST_WEEK }), MONDAY);
    return `a week is named by any date in it: write ${isoDate(first + DAYS_A_WEEK * (week - 1))}`;
  }
  return /^(?:w|week|kw|wk)?\.?\s*\d{1,2}$/iu.test(text)
    ? 'a week is named by any date in it, as in 2027-03-01'
    : undefined;
}

function ofNumbers(text: string): string | undefined {
  const first = /^(\d{4})[-./ ]?(\d{1,2})[-./ ]?(\d{1,2})(?:[T ]\d{1,2}:.*)?$/u.exec(text);
  if (first !== null) {
    const swapped = isoOf(first[1], first[3], first[2]);
    return (
      written(isoOf(first[1], first[2], first[3])) ?? (swapped === undefined ? undefined : `did you mean ${swapped}?`)
    );
  }
  const last = /^(\d{1,2})([-./ ])(\d{1,2})[-./ ](\d{4}|\d{2})$/u.exec(text);
  if (last === null) return undefined;
  const [, one, mark, two, year] = last;
  const dayFirst = isoOf(year, two, one);
  // With dots the day comes first wherever dates are written so.
  const monthFirst = mark === '.' ? undefined : isoOf(year, one, two);
  if (dayFirst === undefined || monthFirst === undefined || dayFirst === monthFirst) {
    return written(dayFirst ?? monthFirst);
  }
  return `write ${dayFirst} if the day comes first, ${monthFirst} if the month does`;
}

function ofWords(text: string): string | undefined {
  const dayFirst = /^(\d{1,2})(?:st|nd|rd|th)?\.?[\s-]+([a-z]{3,9})\.?,?[\s-]+(\d{4}|\d{2})$/iu.exec(text);
  if (dayFirst !== null) return written(isoOf(dayFirst[3], monthOf(dayFirst[2]), dayFirst[1]));
  const monthFirst = /^([a-z]{3,9})\.?\s+(\d{1,2})(?:st|nd|rd|th)?,?\s+(\d{4})$/iu.exec(text);
  return monthFirst === null ? undefined : written(isoOf(monthFirst[3], monthOf(monthFirst[1]), monthFirst[2]));
}

const monthOf = (word = ''): string => String(MONTH.indexOf(word.slice(0, 3).toLowerCase()) + 1);

const written = (iso: string | undefined): string | undefined => (iso === undefined ? undefined : `write ${iso}`);

/** The date in ISO 8601, if there is such a day. A year of two digits is one of this century. */
function isoOf(year = '', month = '', day = ''): string | undefined {
  const parts = { year: Number(year.length === 2 ? `20${year}` : year), month: Number(month), day: Number(day) };
  const isMonth = parts.month >= 1 && parts.month <= MONTH.length;
  if (!isMonth || parts.day < 1 || parts.day > daysInMonth(parts.year, parts.month)) return undefined;
  return isoDate(dayOf(parts));
}
