// Where an example of the catalogue stands in a plan. Mostly its first key tells; otherwise its setting does.

import { SECTION_KEYS } from '../../../src/language/sections.ts';
import { DONE_COLUMNS, TEST_COLUMNS } from '../../../src/language/shapes/record.ts';
import type { Files } from '../../unit/read/memory-files.ts';
import { sectionsOf } from './base-plan.ts';
import type { Sections } from './base-plan.ts';
import { handSeason, indented, weekOfDays, weekWithLine } from './hand-week.ts';

export interface Placed {
  readonly sections: Sections;
  /** Sections it can't do without. */
  readonly needs?: Sections;
  readonly files?: Files;
}

/** Puts the lines of an example where they belong, with what their neighbours there can't do without. */
type Home = (example: string) => Placed;

/** The keys at the left edge of a text, and at the outer level of a group in braces. */
const keysIn = (text: string): readonly string[] =>
  Array.from(text.matchAll(/^([a-z-]+):/gmu), ([, key = '']) => key);

/** Those of some lines of `key: value` whose key an example doesn't have. */
function missing(example: string, lines: string): string {
  const keys = keysIn(example);
  return lines
    .split('\n')
    .filter((line) => !keys.some((key) => line.startsWith(`${key}:`)))
    .join('\n');
}

/** The example as keys of a group: below lines that lead there, so far in, and the other keys the group needs first. */
const keysOf =
  (section: string, lines: string, by: number, needed = ''): Home =>
  (example) => {
    const group = [missing(example, needed), example].filter((text) => text !== '').join('\n');
    return { sections: { [section]: `${lines}\n${indented(group, by)}` } };
  };

/** The example as keys of the one item of a list. */
const itemOf =
  (section: string, needed: string): Home =>
  (example) => {
    const item = indented([missing(example, needed), example].filter((text) => text !== '').join('\n'), 4);
    return { sections: { [section]: `${section}:\n  - ${item.trimStart()}` } };
  };

const used: Sections = { use: 'use: [{ programme: block, from: 2027-03-01 }]' };

/** The example as sections of the plan; a programme is used. */
const atTheEdge: Home = (example) => {
  const sections = sectionsOf(example);
  return { sections, ...(Object.hasOwn(sections, 'programmes') && { needs: used }) };
};

/** The example in a season that ends with a week written by hand. */
const inHandWeek =
  (week: (example: string) => Sections): Home =>
  (example) => ({ needs: handSeason, sections: week(example) });

const headerOf = (columns: readonly { readonly name: string }[]): string => columns.map(({ name }) => name).join(',');

/** The example as rows of a record file, below its header unless it brings one. */
const recordRows =
  (key: string, columns: readonly { readonly name: string }[]): Home =>
  (example) => ({
    sections: { record: `record: { ${key}: record/${key}.csv }` },
    files: {
      [`/plan/record/${key}.csv`]: example.startsWith('date,') ? `${example}\n` : `${headerOf(columns)}\n${example}\n`,
    },
  });

/** The example as a roster, in the place of the athletes of the plan. */
const roster =
  (header: string): Home =>
  (example) => ({
    sections: { athletes: '', roster: 'roster: squad/roster.csv' },
    files: { '/plan/squad/roster.csv': `${header}${example}\n` },
  });

const DRILL = `name: Beam hop
family: beam
rung: 1
direction: vertical
cycle: fast
tier: moderate
legs: both
contacts-per-rep: 1
from-level: beginner
reps: 3-8
sets: 2-6
rest: 90 s
cue: Short contacts.
stop: Heels hit first.`;

const homes = {
  plan: atTheEdge,
  'top of the file': (example) => ({ sections: { footfall: example } }),
  season: keysOf('season', 'season:', 2, 'title: Spring\nstarts: 2027-01-04'),
  place: keysOf('places', 'places:\n  hall:', 4),
  slot: itemOf('slots', 'day: tuesday\nminutes: 75\nplace: hall'),
  competition: itemOf('competitions', 'name: County cup final\ndate: 2027-04-25\nprepare: through'),
  practice: itemOf('practice', 'day: monday\njumps: 60'),
  pin: itemOf('pins', 'week: 2027-03-01\nkind: deload\nbecause: exam week'),
  'pin of contacts': itemOf('pins', 'week: 2027-03-01\nbecause: exam week'),
  athletes: keysOf('athletes', 'athletes:', 2),
  athlete: keysOf(
    'athletes',
    'athletes:\n  mira:',
    4,
    'squad: seniors\nnow: { contacts-a-session: 80, sessions-a-week: 2 }',
  ),
  'lifts of an athlete': keysOf('athletes', 'athletes:\n  mira:\n    squad: seniors\n    lifts:', 6),
  'maximum of an athlete': keysOf('athletes', 'athletes:\n  mira:\n    squad: seniors\n    lifts:\n      back-squat:', 8),
  drills: keysOf('drills', 'drills:', 2),
  drill: keysOf('drills', 'drills:\n  beam-hop:', 4, DRILL),
  'drill of metres': keysOf('drills', 'drills:\n  beam-bound:', 4, DRILL.replace('contacts-per-rep: 1\n', '')),
  lifts: keysOf('lifts', 'lifts:', 2),
  programmes: keysOf('programmes', 'programmes:', 2),
  'week of a programme': (example) => ({
    needs: used,
    sections: { programmes: `programmes:\n  block:\n    - ${example}` },
  }),
  line: inHandWeek((example) => weekWithLine(example)),
  'line of each session': inHandWeek((example) => weekWithLine(example, ['tuesday', 'thursday'])),
  'days of a programme': inHandWeek(weekOfDays),
  roster: roster(''),
  'roster of names': roster('id,name\n'),
  'roster of masses': roster('id,mass\n'),
  'roster of names and squads': roster('id,name,squad\n'),
  done: recordRows('done', DONE_COLUMNS),
  tested: recordRows('tests', TEST_COLUMNS),
} as const satisfies Record<string, Home>;

export type HomeName = keyof typeof homes;

/** The example in that place. */
export const placed = (home: HomeName, example: string): Placed => homes[home](example);

/** The home of a first key that is no section. */
const BY_KEY: Readonly<Record<string, HomeName>> = {
  title: 'season',
  starts: 'season',
  'in-season': 'season',
  'time-zone': 'season',
  kit: 'place',
  minutes: 'slot',
  day: 'slot',
  at: 'slot',
  prepare: 'competition',
  date: 'competition',
  jumps: 'practice',
  because: 'pin',
  mira: 'athletes',
  name: 'athlete',
  squad: 'athlete',
  mass: 'athlete',
  level: 'athlete',
  now: 'athlete',
  limits: 'athlete',
  returning: 'athlete',
  away: 'athlete',
  did: 'maximum of an athlete',
  rest: 'drill',
  cue: 'drill',
};

/** The home of an example whose setting names none. */
export function homeOf(example: string): HomeName {
  if (/^\{ (?:drill|lift):/u.test(example)) return 'line';
  if (/^(?:mon|tues|wednes|thurs|fri|satur|sun)day: \[/u.test(example)) return 'days of a programme';
  if (example.startsWith('id,')) return 'roster';
  if (/^(?:date,athlete,kind|\d{4}-\d\d-\d\d,\w+,(?:session|practice|match|test),)/u.test(example)) return 'done';
  if (/^(?:date,athlete,test|\d{4}-\d\d-\d\d,)/u.test(example)) return 'tested';
  const [key = ''] = keysIn(example);
  return SECTION_KEYS.includes(key) ? 'plan' : (BY_KEY[key] ?? 'plan');
}
