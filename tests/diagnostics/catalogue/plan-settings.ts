// What the examples of the language and of plans need around them.

import type { Code } from '../../../src/diagnostics/catalogue.ts';
import { baseSections, longSeason, planText } from './base-plan.ts';
import type { Setting } from './example-plan.ts';

/** Told of each athlete who has nothing but a name. */
const BARE: readonly Code[] = ['plan/level-left-out', 'plan/now-left-out'];

const LONG = 'physio, knee, '.repeat(400);

const DRILL =
  '{ name: Squat hop, family: squat-hop, rung: 1, direction: vertical, cycle: slow, tier: low, legs: both, contacts-per-rep: 1, from-level: beginner, reps: 3-8, sets: 2-6, rest: 90 s, cue: Sit and hop., stop: The knees fall in. }';

export const planSettings = {
  'language/not-a-plan': {
    entry: (example) => `${example}\n`,
    also: ['language/version-missing', 'plan/no-season', 'plan/no-athletes', 'plan/no-slots'],
  },
  'language/version-missing': { plan: { footfall: '' } },
  'language/duplicate-key': {
    plan: { files: 'files: [squad/*.yaml]' },
    wrongFiles: { '/plan/squad/juniors.yaml': 'athletes: { mira: { squad: juniors } }' },
  },
  'language/bad-id': { also: BARE },
  'language/same-id': { also: BARE },
  'language/too-long': { dots: LONG },
  'language/too-fine': { home: 'drill' },
  'plan/row-twice': { also: ['schedule/week-over-plan'] },
  'plan/sessions-over-slots': { also: ['schedule/week-over-plan'] },
  'plan/contacts-or-metres': { home: 'drill of metres' },
  'plan/depths-differ': { home: 'lifts' },
  'plan/drop-without-height': { home: 'drills' },
  'plan/id-clash': { dots: DRILL.slice(1, -1).trim() },
  'plan/born-left-out': { also: BARE },
  'plan/level-left-out': { also: BARE },
  'plan/no-first-drop': { plan: { places: 'places: { hall: { surface: sprung floor, kit: { boxes: [30 cm, 45 cm] } } }' }, also: BARE },
  'plan/name-twice': { also: BARE },
  'plan/max-after-season': { home: 'lifts of an athlete', also: ['rule/test-stale'] },
  'plan/maxima-of-squad': { also: [...BARE, 'rule/test-stale'] },
  'plan/max-or-did': { home: 'lifts of an athlete' },
  'plan/too-many-reps': { home: 'lifts of an athlete' },
  'plan/more': {
    entry: () => planText(baseSections, { athletes: '', roster: 'roster: squad/roster.csv' }),
    wrongFiles: {
      '/plan/squad/roster.csv': `id,mass\n${Array.from({ length: 1000 }, (_, index) => `a-${index},68\n`).join('')}`,
    },
    also: ['language/bare-number'],
  },
  'plan/no-end': { plan: { competitions: '' } },
  'plan/no-season': { plan: { season: '' }, also: BARE },
  'plan/pin-of-nothing': { plan: longSeason },
  'plan/pin-undated': { plan: longSeason },
  'plan/pin-rounded': { home: 'pin of contacts', plan: longSeason },
  'plan/programme-week-twice': { home: 'programmes', plan: { use: 'use: [{ programme: pairs-block, from: 2027-03-01 }]' } },
  'plan/programme-day-twice': { home: 'week of a programme' },
  'plan/shares-sum': { home: 'drill' },
} as const satisfies Record<string, Setting>;
