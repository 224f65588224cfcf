// The sport of an athlete: one's own, the squad's, the season's, in that order, each with the place where it is written;
// and a name that none has, with the one that is near.

import { expect, test } from 'vitest';
import { directionsOf, sportOf, sportOriginOf } from '../../../src/plan/sport-of.ts';
import { athleteOf, load, planOf } from './loaded.ts';

const season = (sport: string): string => `footfall: 1
season: { title: Jumps, ${sport}starts: 2027-01-04, ends: 2027-03-28 }
places: { track: { surface: grass, kit: {} } }
slots: [{ day: tuesday, minutes: 60, place: track }]
squads:
  high: { sport: high-jump, level: beginner, now: { contacts-a-session: 50, sessions-a-week: 2 } }
  mixed: { level: beginner, now: { contacts-a-session: 50, sessions-a-week: 2 } }
athletes:
  ann: { squad: high }
  bea: { squad: high, sport: long-jump }
  cy: { squad: mixed }
  dot: { squad: mixed, sport: general }
`;

const lineOf = (text: string, start: number): number => text.slice(0, start).split('\n').length;

test.each([
  ['ann', 'high-jump', { vertical: 65, horizontal: 35, lateral: 0 }, 6],
  ['bea', 'long-jump', { vertical: 30, horizontal: 70, lateral: 0 }, 10],
  ['cy', 'handball', { vertical: 45, horizontal: 30, lateral: 25 }, 2],
  ['dot', 'general', undefined, 12],
])('%s is in %s', (id, sport, directions, line) => {
  const text = season('sport: handball, ');
  const plan = planOf(text);
  const athlete = athleteOf(plan, id);
  expect(sportOf(plan, athlete).id).toBe(sport);
  expect(directionsOf(plan, athlete)).toEqual(directions);
  const origin = sportOriginOf(plan, athlete);
  expect(origin.kind === 'written' && lineOf(text, origin.span.start)).toBe(line);
});

test('where none is written it is general, and said to be taken for granted', () => {
  const plan = planOf(season(''));
  expect(sportOf(plan, athleteOf(plan, 'cy')).id).toBe('general');
  expect(sportOriginOf(plan, athleteOf(plan, 'cy'))).toEqual({ kind: 'default', basis: 'no sport is written' });
});

test.each([
  ['of a squad', season('').replace('sport: high-jump', 'sport: hihg-jump'), 'season.yaml', 'hihg-jump'],
  ['of an athlete', season('').replace('sport: long-jump', 'sport: lang-jump'), 'season.yaml', 'lang-jump'],
])('an unknown name %s is told with the near one', (_, text, file, name) => {
  const [found] = load(text).diagnostics.filter(({ code }) => code === 'plan/unknown-name');
  expect(found).toMatchObject({ params: { name, kind: 'sport' } });
  expect(found?.help).toMatch(/did you mean "(?:high|long)-jump"\?/u);
  expect(found?.span?.file).toContain(file);
});

test('a roster may have it as a column; an empty cell leaves the squad’s', () => {
  const files = (sport: string): Readonly<Record<string, string>> => ({
    'season.yaml': season('').replace(/athletes:[^]*/u, 'roster: roster.csv\n'),
    'roster.csv': `id,squad,sport\nann,high,\nbea,high,${sport}\n`,
  });
  const plan = planOf(files('triple-jump'));
  expect(plan.athletes.map((athlete) => sportOf(plan, athlete).id)).toEqual(['high-jump', 'triple-jump']);
  const [found] = load(files('tripel-jump')).diagnostics.filter(({ severity }) => severity === 'error');
  expect(found).toMatchObject({ code: 'plan/unknown-name', help: 'did you mean "triple-jump"?' });
});

test('in another place of a plan it is told where it belongs', () => {
  const text = season('').replace('place: track }', 'place: track, sport: handball }');
  const [found] = load(text).diagnostics.filter(({ severity }) => severity === 'error');
  expect(found).toMatchObject({ code: 'language/misplaced-key' });
  expect(found?.help).toContain('below `squads` or `athletes`');
});
