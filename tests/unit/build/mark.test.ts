// What the mark on a sheet tells apart: plans that say or mean something else, and not those that only look otherwise.

import { describe, expect, test } from 'vitest';
import { buildMark } from '../../../src/build/mark.ts';
import { compilePlan } from '../../../src/compile.ts';
import { DEFAULT_NOW } from '../../../src/library/levels.ts';
import { planOf } from '../plan/loaded.ts';

const season = (athlete: string, above = ''): string => `${above}footfall: 1
season: { title: Marked, starts: 2027-01-04, ends: 2027-02-28 }
places: { hall: { surface: wood } }
slots: [{ day: monday, minutes: 60, place: hall }, { day: thursday, minutes: 60, place: hall }]
athletes: { mira: ${athlete} }
`;
const markOf = (text: string): string => buildMark(planOf(text));

const { contactsASession, sessionsAWeek } = DEFAULT_NOW.beginner;
const LEFT_OUT = '{ level: beginner, born: 2001 }';
const WRITTEN = `{ level: beginner, born: 2001, now: { contacts-a-session: ${contactsASession}, sessions-a-week: ${sessionsAWeek} } }`;

describe('the mark', () => {
  test('is the same where lines stand elsewhere', () => {
    expect(markOf(season(WRITTEN, '# a comment\n\n'))).toBe(markOf(season(WRITTEN)));
  });

  test('differs with what is said', () => {
    expect(markOf(season(WRITTEN.replace('2001', '2002')))).not.toBe(markOf(season(WRITTEN)));
  });

  test('differs where last weeks are written as the default has them, as the season does', () => {
    const reasons = (text: string): string =>
      JSON.stringify([...compilePlan(planOf(text)).athletes].map(({ weeks }) => weeks.map((week) => week.sessions)));
    expect(reasons(season(LEFT_OUT))).not.toBe(reasons(season(WRITTEN)));
    expect(markOf(season(LEFT_OUT))).not.toBe(markOf(season(WRITTEN)));
  });
});
