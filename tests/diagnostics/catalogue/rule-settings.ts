// What the examples of the rules of how much, when and who need around them: mostly a programme or an athlete that the
// example speaks of.

import type { Code } from '../../../src/diagnostics/catalogue.ts';
import { dayOf } from '../../../src/util/days.ts';
import { longSeason } from './base-plan.ts';
import type { Sections } from './base-plan.ts';
import type { Setting } from './example-plan.ts';
import { handSeason, weekOfDays, weekWithLine } from './hand-week.ts';
import { athlete, competitions, fourthOfMarch, MATCH, ONE_DRILL, PEAK, usedFrom, WHOLE_WEEK } from './season-settings.ts';

const CHILD = athlete('ada: { squad: seniors, mass: 46 kg, born: 2012-05 }');
const STRONG = 'squad: seniors, cleared: [drops, drop-strength]';

const DROPS = '{ drill: drop-jump-30, sets: 3, reps: 4 }';
const HIGH_DROPS = '{ drill: drop-jump-40, sets: 3, reps: 4 }';
const HEAVY = '{ lift: back-squat, sets: 4, reps: 3, percent: 90 % }';

/** Of a session that is much bigger than the others, or a week. */
const MUCH: readonly Code[] = ['rule/weekly-rise', 'rule/session-rise', ...ONE_DRILL];

/** A season whose week by hand has this line in it. */
const withLine = (line: string): Sections => ({ ...handSeason, ...weekWithLine(line) });

const TWO_DAYS = 'tuesday: [{ drill: pogo, sets: 8, reps: 10 }]\nthursday: [{ drill: pogo, sets: 8, reps: 10 }]';
const NEIGHBOURS = 'tuesday: [{ drill: pogo, sets: 3, reps: 10 }]\nwednesday: [{ drill: pogo, sets: 3, reps: 10 }]';

export const ruleSettings = {
  'rule/deload-depth': { plan: usedFrom('2027-02-22'), also: ONE_DRILL },
  'rule/weekly-rise': { home: 'line of each session', also: ONE_DRILL },
  'rule/all-jumps-rise': { plan: longSeason },
  'rule/budget': { plan: { practice: 'practice: [{ day: monday, jumps: 120 }]' } },
  'rule/taper-cut': { plan: { ...WHOLE_WEEK, ...PEAK, ...usedFrom('2027-04-19') }, also: [...ONE_DRILL, 'rule/session-rise', 'rule/strength-always'] },
  'rule/last-week': { plan: { ...PEAK, ...usedFrom('2027-04-19') } },
  'rule/return-ramp': {
    plan: athlete('mira: { squad: seniors, away: [{ from: 2027-02-08, until: 2027-02-28, because: ill, trained: none }] }'),
    also: [...ONE_DRILL, 'rule/session-rise'],
  },
  'rule/returning-stage': {
    plan: athlete(
      'mira: { squad: seniors, now: { contacts-a-session: 30, sessions-a-week: 2 }, returning: { stage: 1, of: 4, since: 2027-01-10, signed: physio } }',
    ),
    also: ['rule/fast-cycle-share'],
  },
  'audit/maximum-unused': { home: 'lifts of an athlete' },
  'audit/maximum-too-far': {
    home: 'lifts',
    plan: {
      ...withLine('{ lift: pin-squat, sets: 3, reps: 8, percent: 60 % }'),
      ...athlete('mira: { squad: seniors, lifts: { back-squat: { max: 80 kg, on: 2027-02-12 } } }'),
    },
  },
  'audit/plates-too-coarse': {
    home: 'place',
    also: ['rule/test-stale'],
    plan: athlete('mira: { squad: seniors, lifts: { back-squat: { max: 80 kg, on: 2026-12-10 } } }'),
  },
  'audit/kilos-of-no-maximum': { home: 'line' },
  'audit/waiver-unused': { plan: { ...handSeason, ...WHOLE_WEEK, ...weekOfDays(NEIGHBOURS) }, also: [...ONE_DRILL, 'rule/session-spacing'] },

  'rule/session-spacing': { plan: WHOLE_WEEK, also: ONE_DRILL },
  'rule/fast-spacing': { plan: { ...WHOLE_WEEK, ...MATCH, ...athlete('mira: { squad: seniors, cleared: [drops] }') }, also: ['rule/high-tier-share', 'rule/fast-cycle-share'] },
  'rule/event-gap': { plan: { ...WHOLE_WEEK, ...MATCH }, also: ['rule/fast-cycle-share'] },
  'rule/after-event': { plan: { ...WHOLE_WEEK, ...MATCH }, also: ['rule/fast-cycle-share'] },
  'rule/lift-spacing': { plan: WHOLE_WEEK },
  'rule/lift-event-gap': { plan: { ...WHOLE_WEEK, ...MATCH } },
  'rule/congested-week': {
    plan: {
      ...WHOLE_WEEK,
      ...competitions(
        'name: Cup, date: 2027-03-06, until: 2027-03-07, prepare: through',
        'name: League round, date: 2027-03-11, prepare: through',
      ),
      ...usedFrom('2027-03-08'),
    },
    also: ['rule/fast-cycle-share'],
  },
  'rule/session-frequency': { plan: { ...handSeason, ...weekOfDays(TWO_DAYS) }, also: MUCH },
  'rule/rest-day': { plan: CHILD },

  'rule/youth-ceiling': { plan: CHILD, also: [...MUCH, 'rule/new-drills'] },
  'rule/youth-load': { plan: athlete('ada: { squad: seniors, mass: 56 kg, born: 2011-08 }') },
  'rule/drop-age': { plan: withLine(DROPS), also: [...MUCH, 'rule/new-drills', 'rule/high-tier-share'] },
  'rule/drop-mass': {
    plan: athlete(`jon: { ${STRONG}, level: advanced, mass: 108 kg }`),
    also: ['rule/direction-mix', 'rule/fast-cycle-share'],
  },
  'rule/drop-strength': { plan: withLine(HIGH_DROPS) },
  'rule/drop-clearance': { plan: withLine(DROPS) },
  'rule/drop-height': { plan: athlete(`mira: { ${STRONG}, mass: 68 kg }`), also: ['rule/drill-level'] },
  'rule/drop-count': { plan: athlete(`mira: { ${STRONG}, mass: 68 kg }`), also: MUCH },
  'rule/surface': {
    plan: { ...withLine(DROPS), ...athlete('mira: { squad: seniors, cleared: [drops] }') },
    also: ['rule/kit'],
  },
  'rule/limit': { plan: withLine('{ lift: back-squat, sets: 3, reps: 4, reserve: 3 }') },
  'rule/pain-hold': {
    plan: {
      ...withLine('{ drill: pogo, sets: 1, reps: 10 }'),
      season: 'season: { title: Spring, starts: 2027-02-22, ends: 2027-05-02 }',
    },
    today: fourthOfMarch,
    also: ['rule/fast-cycle-share'],
  },
  'rule/load-step': {
    plan: { ...longSeason, ...athlete('mira: { squad: seniors, mass: 68 kg, lifts: { back-squat: { max: 92.5 kg, on: 2027-02-12 } } }') },
    also: ['rule/load-reps'],
  },
  'rule/new-drills': { plan: athlete('mira: { squad: seniors }') },
  'rule/test-stale': {
    home: 'lifts of an athlete',
    plan: { season: 'season: { title: Spring, starts: 2027-01-04, ends: 2027-02-28 }', competitions: '' },
  },
  'rule/test-fresh': { plan: { ...handSeason, ...weekOfDays(`tuesday: [${HEAVY}]`) } },
  'rule/test-method': { today: dayOf({ year: 2027, month: 4, day: 1 }) },
  'rule/session-ceiling': { also: MUCH },
  'rule/session-rise': { also: MUCH },
  'rule/static-share': { also: MUCH },
  'rule/fast-cycle-share': { also: ONE_DRILL },
} as const satisfies Record<string, Setting>;
