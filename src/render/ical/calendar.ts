// A calendar as an iCalendar file after RFC 5545: UTF-8, CRLF, lines folded at 75 octets. Times are local ones, with the
// rules of their time zone where the plan names one; nothing in it comes from a clock. An event that has moved since the
// last file, or has other doses, says so by a higher sequence number: a phone may keep the old one otherwise.

import ical, { escape } from 'ical-generator';
import type { ICalEventData } from 'ical-generator';
import { DateTime } from 'luxon';
import { tzlib_get_ical_block } from 'timezones-ical-library';
import type { Calendar, CalendarEvent } from '../../report/calendar.ts';
import { calendarDateOf } from '../../util/days.ts';
import type { Day } from '../../util/days.ts';
import type { LastEvents } from './last-events.ts';
import { readLastEvents, sequenceOf } from './last-events.ts';
import { MINUTES_AN_HOUR, MINUTES_A_DAY } from '../../util/units.ts';

const PRODUCT = { company: 'footfall', product: 'footfall', language: 'EN' };
const LINE_BREAKS = /\s*[\r\n]+\s*/gu;
const MILLISECONDS_A_DAY = 86_400_000;
const MILLISECONDS_A_MINUTE = 60_000;

/** The file; `last` is what the last one said, nothing for a first. */
export function renderCalendar(calendar: Calendar, last: LastEvents): string {
  const first = fileOf(calendar, () => 0);
  if (last.size === 0) return first;
  const fresh = readLastEvents(first);
  return fileOf(calendar, (uid) => sequenceOf(last, fresh, uid));
}

function fileOf(calendar: Calendar, sequenceFor: (uid: string) => number): string {
  const file = ical({ name: escape(oneLine(calendar.title), false), prodId: PRODUCT });
  file.timezone({ name: null, generator: timeZoneBlock });
  const stamp = new Date(calendar.stamp * MILLISECONDS_A_DAY);
  for (const event of calendar.events) {
    file.createEvent({ ...eventOf(event, calendar), stamp, sequence: sequenceFor(event.uid) });
  }
  const text = file.toString();
  return text.endsWith('\r\n') ? text : `${text}\r\n`;
}

const oneLine = (text: string): string => text.replaceAll(LINE_BREAKS, ' ');

/**
 * The rules of a zone as a component; null for a zone the library doesn't know, whose name alone is then given. Zones that
 * share their rules with another are told by that one's name, and events would point to nothing.
 */
function timeZoneBlock(zone: string): string | null {
  const found = tzlib_get_ical_block(zone);
  const block = Array.isArray(found) ? found[0] : undefined;
  return block?.replaceAll(/^(TZID|X-LIC-LOCATION):[^\r\n]*/gmu, `$1:${zone}`) ?? null;
}

function eventOf({ uid, summary, description, place, ...when }: CalendarEvent, calendar: Calendar): ICalEventData {
  return {
    id: oneLine(uid),
    summary: oneLine(summary),
    ...(description !== undefined && { description }),
    ...(place !== undefined && { location: oneLine(place) }),
    ...timesOf(when, calendar),
  };
}

type Times = Pick<ICalEventData, 'start' | 'end' | 'allDay' | 'floating' | 'timezone'>;

function timesOf({ day, lastDay, time }: Pick<CalendarEvent, 'day' | 'lastDay' | 'time'>, calendar: Calendar): Times {
  if (time === undefined) return { start: midnight(day), end: midnight(lastDay + 1), allDay: true };
  const until = time.at + time.minutes;
  const { timeZone } = calendar;
  if (timeZone === undefined) {
    return { start: floating(day, time.at), end: floating(day, until), floating: true };
  }
  const start = zoned(day, time.at, timeZone);
  const end = zoned(day, until, timeZone);
  // In the hour that is left out in spring a session begins when the clocks have been put forward, and ends after that.
  const ends = end > start ? end : start.plus({ minutes: time.minutes });
  return { start, end: ends, timezone: timeZone };
}

const midnight = (day: Day): Date => new Date(day * MILLISECONDS_A_DAY);

/** The library writes the parts of these in UTC, as they are here. */
const floating = (day: Day, minutes: number): Date =>
  new Date(day * MILLISECONDS_A_DAY + minutes * MILLISECONDS_A_MINUTE);

function zoned(day: Day, minutes: number, zone: string): DateTime {
  const date = calendarDateOf(day + Math.floor(minutes / MINUTES_A_DAY));
  const ofDay = minutes % MINUTES_A_DAY;
  const time = { hour: Math.floor(ofDay / MINUTES_AN_HOUR), minute: ofDay % MINUTES_AN_HOUR };
  return DateTime.fromObject({ ...date, ...time }, { zone });
}
