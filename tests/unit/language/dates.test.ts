// Dates, births and days of the week as they are written.

import { describe, expect, test } from 'vitest';
import { findWeekday, readBorn, readDate } from '../../../src/language/dates.ts';
import { isoDate } from '../../../src/util/days.ts';
import { codeOf, messageOf, valueOf } from './readings.ts';

test('a date is its day', () => {
  expect(isoDate(valueOf(readDate('2027-01-04')))).toBe('2027-01-04');
  expect(isoDate(valueOf(readDate('2028-02-29')))).toBe('2028-02-29');
});

describe('a date that does not exist says what its month has', () => {
  test.each([
    ['2027-02-29', 'February 2027 has 28 days'],
    ['2027-04-31', 'April 2027 has 30 days'],
    ['2027-13-01', 'there is no month 13'],
    ['2027-00-01', 'there is no month 0'],
    ['2027-01-00', 'the first of a month is 01'],
  ])('%s', (text, why) => {
    expect(codeOf(readDate(text))).toBe('language/no-such-date');
    expect(messageOf(readDate(text))).toContain(why);
  });
});

test.each(['4.1.2027', '04/01/2027', '2027-1-4', '2027-01-04T18:00', 'tomorrow', ''])('%s is no date', (text) => {
  expect(codeOf(readDate(text))).toBe('language/date-form');
});

test('a date that is nearly one is mended', () => {
  expect(messageOf(readDate('2027-1-4'), 'help')).toBe('write 2027-01-04');
  expect(messageOf(readDate('2027/01/04'), 'help')).toBe('write 2027-01-04');
});

test.each([
  ['2003', '2003-01-01', '2003-12-31'],
  ['2003-06', '2003-06-01', '2003-06-30'],
  ['2004-02', '2004-02-01', '2004-02-29'],
  ['2003-06-14', '2003-06-14', '2003-06-14'],
])('born %s is from %s to %s', (text, earliest, latest) => {
  const born = valueOf(readBorn(text));
  expect([isoDate(born.earliest), isoDate(born.latest)]).toEqual([earliest, latest]);
});

test('a birth that does not exist', () => {
  expect(codeOf(readBorn('2003-13'))).toBe('language/no-such-date');
  expect(codeOf(readBorn('03'))).toBe('language/date-form');
});

test('days in full and short are the same, and the week begins with monday', () => {
  expect(['monday', 'tue', 'wednesday', 'sun'].map(findWeekday)).toEqual([0, 1, 2, 6]);
  expect(findWeekday('Monday')).toBeUndefined();
});
