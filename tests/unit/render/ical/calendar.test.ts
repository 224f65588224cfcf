// Times of a calendar with a time zone: events point to a zone that is in the file, and nights on which the clocks change.

import { describe, expect, test } from 'vitest';
import { renderCalendar } from '../../../../src/render/ical/calendar.ts';
import { NO_LAST_EVENTS, readLastEvents } from '../../../../src/render/ical/last-events.ts';
import type { Calendar, CalendarEvent } from '../../../../src/report/calendar.ts';
import { day } from '../../date.ts';

const calendar = (timeZone: string, date: string, at: number): Calendar => ({
  title: 'Spring',
  timeZone,
  stamp: day('2027-01-04'),
  events: [{ uid: 'one@spring', summary: 'Jumps', day: day(date), lastDay: day(date), time: { at, minutes: 60 } }],
});

const linesOf = (text: string, name: string): readonly string[] =>
  text.split('\r\n').filter((one) => one.startsWith(name));

test.each(['Europe/Oslo', 'Europe/Berlin', 'Asia/Calcutta', 'US/Eastern'])(
  'an event in %s points to the zone that the file has',
  (zone) => {
    const text = renderCalendar(calendar(zone, '2027-03-01', 1080), NO_LAST_EVENTS);
    expect(linesOf(text, 'TZID')).toEqual([`TZID:${zone}`]);
    expect(linesOf(text, 'DTSTART;')).toEqual([`DTSTART;TZID=${zone}:20270301T180000`]);
  },
);

test.each([
  ['in the hour that is left out', 150, '20270328T033000', '20270328T043000'],
  ['before it', 60, '20270328T010000', '20270328T030000'],
  ['behind it', 180, '20270328T030000', '20270328T040000'],
])('a session %s ends after it begins, and stays where it is', (_, at, start, end) => {
  const night = calendar('Europe/Oslo', '2027-03-28', at);
  const text = renderCalendar(night, NO_LAST_EVENTS);
  expect(linesOf(text, 'DTSTART;')).toEqual([`DTSTART;TZID=Europe/Oslo:${start}`]);
  expect(linesOf(text, 'DTEND;')).toEqual([`DTEND;TZID=Europe/Oslo:${end}`]);
  expect(renderCalendar(night, readLastEvents(text))).toBe(text);
});

describe('an event of the last file', () => {
  const event = { uid: 'one@spring', summary: 'Jumps', description: 'Pogo 3 × 10', place: 'hall' };
  const on = (date: string, change: Partial<CalendarEvent> = {}): Calendar => ({
    title: 'Spring',
    stamp: day('2027-01-04'),
    events: [{ ...event, day: day(date), lastDay: day(date), time: { at: 1080, minutes: 60 }, ...change }],
  });
  const sequence = (...calendars: readonly Calendar[]): readonly string[] => {
    let text = '';
    for (const one of calendars) text = renderCalendar(one, readLastEvents(text));
    return linesOf(text, 'SEQUENCE');
  };
  const first = on('2027-03-02');

  test('that says the same keeps its number', () => {
    expect(sequence(first, first, first)).toEqual(['SEQUENCE:0']);
  });

  test.each([
    ['has moved', on('2027-03-04')],
    ['has other doses', on('2027-03-02', { description: 'Pogo 2 × 10' })],
    ['is a longer one', on('2027-03-02', { time: { at: 1080, minutes: 75 } })],
    ['is elsewhere', on('2027-03-02', { place: 'track' })],
    ['is of another kind', on('2027-03-02', { summary: 'Jumps and lifts' })],
  ])('that %s has the next number, once', (_, changed) => {
    expect(sequence(first, changed)).toEqual(['SEQUENCE:1']);
    expect(sequence(first, changed, changed)).toEqual(['SEQUENCE:1']);
    expect(sequence(first, changed, first)).toEqual(['SEQUENCE:2']);
  });

  test('that has a long description is known again', () => {
    const long = on('2027-03-02', { description: 'Pogo 3 × 10, ünd sö wéiter\n'.repeat(20) });
    expect(sequence(long, long)).toEqual(['SEQUENCE:0']);
  });
});
