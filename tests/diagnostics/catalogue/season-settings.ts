// What the examples of the scheduler and of what sessions are made of need around them.

import type { Code } from '../../../src/diagnostics/catalogue.ts';
import { dayOf } from '../../../src/util/days.ts';
import { longSeason } from './base-plan.ts';
import type { Sections } from './base-plan.ts';
import type { Setting } from './example-plan.ts';
import { handSeason, weekWithLine } from './hand-week.ts';

export const slots = (...days: readonly string[]): Sections => ({
  slots: `slots:\n${days.map((day) => `  - { day: ${day}, minutes: 75, place: hall }`).join('\n')}`,
});

export const WHOLE_WEEK = slots('monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday');

export const competitions = (...items: readonly string[]): Sections => ({
  competitions: `competitions:\n${items.map((item) => `  - { ${item}, jumps: 0 }`).join('\n')}`,
});

/** A match on the saturday of the week written by hand. */
export const MATCH = competitions('name: League round, date: 2027-03-06, prepare: through');
export const PEAK = competitions('name: County cup final, date: 2027-04-24, prepare: peak');

export const athlete = (fields: string): Sections => ({ athletes: `athletes:\n  ${fields}` });

export const usedFrom = (day: string): Sections => ({ use: `use: [{ programme: block, from: ${day} }]` });

export const fourthOfMarch = dayOf({ year: 2027, month: 3, day: 4 });

/** Of a week of one drill, on which the rest of the mix hangs. */
export const ONE_DRILL: readonly Code[] = ['rule/direction-mix', 'rule/fast-cycle-share'];

export const seasonSettings = {
  'lines/added-over-contacts': { also: ONE_DRILL },
  'lines/sets-unmet': { plan: longSeason, also: ['rule/direction-mix'] },
  'schedule/pin-over-foundation': {
    plan: { ...athlete('mira: { squad: seniors }\n  bo: { born: 2014-05-30, level: beginner, now: { contacts-a-session: 40, sessions-a-week: 2 } }') },
  },
  'schedule/pin-over-return': {
    plan: athlete('mira: { squad: seniors, away: [{ from: 2027-01-18, until: 2027-02-07, because: ill, trained: none }] }'),
  },
  'schedule/pinned-day-not-held': { plan: { ...handSeason, ...WHOLE_WEEK, ...weekWithLine('{ lift: plank, sets: 2, reps: 30 }') } },
  'schedule/programme-day-closed': { plan: { ...handSeason, ...weekWithLine('{ lift: plank, sets: 2, reps: 30 }') } },
  'schedule/return-in-taper': { plan: PEAK },
  'schedule/pain-stop': {
    plan: { season: 'season: { title: Spring, starts: 2027-01-18, ends: 2027-05-02 }', ...athlete('mira: { squad: seniors }') },
    today: fourthOfMarch,
  },
  'schedule/record-leap': { plan: athlete('mira: { squad: seniors }'), today: fourthOfMarch, also: ['schedule/week-over-plan'] },
  'schedule/near-done': { plan: athlete('mira: { squad: seniors }'), today: fourthOfMarch },
  'schedule/week-over-plan': { plan: athlete('mira: { squad: seniors }'), today: fourthOfMarch },
  'schedule/record-missing': { plan: athlete('mira: { squad: seniors }'), today: fourthOfMarch, also: ['schedule/week-over-plan'] },

  'rule/high-tier-share': {
    plan: { ...athlete('mira: { squad: seniors, cleared: [drops] }'), ...usedFrom('2027-01-18') },
    also: ['rule/weekly-rise', 'rule/session-rise', 'rule/fast-cycle-share'],
  },
  'rule/slot-minutes': {
    plan: {
      ...handSeason,
      programmes:
        'programmes: { block: [{ week: 1, tuesday: [{ drill: pogo, sets: 4, reps: 10 }, { drill: hurdle-hop, sets: 4, reps: 5 }, { lift: back-squat, sets: 4, reps: 4 }, { lift: dumbbell-row, sets: 3, reps: 8 }] }] }',
    },
    also: ['rule/weekly-rise', 'rule/session-rise', 'rule/fast-cycle-share'],
  },
  'rule/kit': {
    plan: {
      slots: 'slots:\n  - { day: monday, minutes: 75, place: hall }\n  - { day: tuesday, minutes: 75, place: hall }\n  - { day: saturday, minutes: 75, place: track }',
    },
  },
} as const satisfies Record<string, Setting>;
