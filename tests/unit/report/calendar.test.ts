// Identities of events: the same whichever days are asked for, and no two the same.

import { expect, test } from 'vitest';
import type { TestDay } from '../../../src/plan/types.ts';
import { createCalendars } from '../../../src/report/calendar.ts';
import type { Calendar } from '../../../src/report/calendar.ts';
import { EVERYTHING } from '../../../src/report/selection.ts';
import type { Selection } from '../../../src/report/selection.ts';
import { builtAthlete, day, HERE, line, madeBuild, madePlan, session, week } from './made-build.ts';

const built = builtAthlete([
  week(
    1,
    ['2027-01-05', '2027-01-07', '2027-01-09'].map((date) => session(date, [line('pogo')])),
  ),
]);

function squadCalendar(selection: Selection, tests: readonly TestDay[] = []): Calendar {
  const calendars = createCalendars(madeBuild([built], madePlan({ tests })), selection);
  calendars.add(built);
  return calendars.finish();
}

test('a session of the squad is the same event, whichever days are asked for', () => {
  const uidOn = ({ events }: Calendar, date: string): string | undefined =>
    events.find((event) => event.day === day(date))?.uid;
  const whole = squadCalendar(EVERYTHING);
  const part = squadCalendar({ ...EVERYTHING, from: day('2027-01-07'), until: day('2027-01-08') });
  expect(part.events).toHaveLength(1);
  expect(uidOn(part, '2027-01-07')).toBe(uidOn(whole, '2027-01-07'));
});

test('the same tests of one day, written for two squads, are one event', () => {
  const of = (squad: string, date: string): TestDay => ({
    day: day(date),
    what: ['countermovement-jump'],
    contacts: 6,
    who: { kind: 'some', squads: [squad], athletes: [] },
    span: HERE,
  });
  const tests = [of('blues', '2027-01-08'), of('reds', '2027-01-08'), of('blues', '2027-01-10')];
  const uids = squadCalendar(EVERYTHING, tests).events.flatMap(({ uid }) => (uid.includes('-tests@') ? [uid] : []));
  expect(uids).toHaveLength(2);
  expect(new Set(uids).size).toBe(2);
});
