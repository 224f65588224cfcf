// Day numbers against another calendar: luxon, and a few dates whose weekday is printed in any almanac.

import fc from 'fast-check';
import { DateTime } from 'luxon';
import { describe, expect, it } from 'vitest';
import {
  calendarDateOf,
  dayOf,
  daysInMonth,
  isoDate,
  parseIsoDate,
  startOfWeek,
  weekdayNameOf,
  weekdayOf,
} from '../../../src/util/days.ts';

const anyDay = fc.integer({ min: -700_000, max: 2_900_000 });

describe('days', () => {
  it('begin at 1970-01-01, a thursday', () => {
    expect(parseIsoDate('1970-01-01')).toBe(0);
    expect(weekdayNameOf(0)).toBe('thursday');
    expect(parseIsoDate('1969-12-31')).toBe(-1);
    expect(weekdayNameOf(-1)).toBe('wednesday');
  });

  it.each([
    ['2000-02-29', 'tuesday'],
    ['2027-01-04', 'monday'],
    ['2028-02-29', 'tuesday'],
    ['0001-01-01', 'monday'],
    ['9999-12-31', 'friday'],
  ])('%s is a %s', (date, weekday) => {
    const day = parseIsoDate(date);
    expect(day).toBeDefined();
    expect(weekdayNameOf(day ?? Number.NaN)).toBe(weekday);
    expect(isoDate(day ?? Number.NaN)).toBe(date);
  });

  it.each([
    '2027-02-29',
    '1900-02-29',
    '2027-04-31',
    '2027-13-01',
    '2027-00-10',
    '2027-01-00',
    '2027-1-4',
    '27-01-04',
    ' 2027-01-04',
    '2027-01-04T00:00',
    '2027/01/04',
    '+2027-01-04',
    '٢٠٢٧-٠١-٠٤',
    '',
  ])('%j is no date', (text) => {
    expect(parseIsoDate(text)).toBeUndefined();
  });

  it('agree with luxon, dates, weekdays and back', () => {
    fc.assert(
      fc.property(anyDay, (day) => {
        const other = DateTime.fromMillis(day * 86_400_000, { zone: 'utc' });
        fc.pre(other.year >= 0 && other.year <= 9999);
        expect(isoDate(day)).toBe(other.toISODate());
        expect(weekdayOf(day) + 1).toBe(other.weekday);
        expect(parseIsoDate(isoDate(day))).toBe(day);
        expect(dayOf(calendarDateOf(day))).toBe(day);
        expect(daysInMonth(other.year, other.month)).toBe(other.daysInMonth);
      }),
    );
  });

  it('have weeks of seven days from any weekday', () => {
    fc.assert(
      fc.property(anyDay, fc.constantFrom(0, 1, 2, 3, 4, 5, 6), (day, first) => {
        const start = startOfWeek(day, first);
        expect(weekdayOf(start)).toBe(first);
        expect(day - start).toBeGreaterThanOrEqual(0);
        expect(day - start).toBeLessThan(7);
      }),
    );
  });
});
