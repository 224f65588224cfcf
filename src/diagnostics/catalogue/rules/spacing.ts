// Findings of the rules of when: days between sessions, and between sessions and matches. Joined by ../rules.ts.

import type { Entries } from '../../entry.ts';
import type { At, On } from './words.ts';
import { counted } from '../../../util/counted.ts';

const days = (count: number): string => counted(count, 'day', 'days');

const WHAT_COMES = { session: 'a jump session', match: 'a match', practice: 'a hard practice' } as const;

export const spacingFindings = {
  'rule/session-spacing': {
    severity: 'warning',
    summary: 'jump sessions too close together',
    explanation:
      'Tendons and joints want a day between jump sessions. Sessions on neighbouring dates, or two on one, need a waiver with a reason.',
    bad: 'tuesday: [{ drill: pogo, sets: 3, reps: 10 }]\nwednesday: [{ drill: pogo, sets: 3, reps: 10 }]',
    good: 'tuesday: [{ drill: pogo, sets: 3, reps: 10 }]\nthursday: [{ drill: pogo, sets: 3, reps: 10 }]',
    message: ({ athlete, date, before, found, wanted }: On & { before: string; found: number; wanted: number }) =>
      found === 0
        ? `${athlete} has two jump sessions on ${date}`
        : `${athlete}: the jump sessions of ${before} and ${date} are ${days(found)} apart, and ${wanted} are wanted`,
    help: () => 'move one of them, or waive the rule with a reason',
  },
  'rule/fast-spacing': {
    severity: 'warning',
    summary: 'too soon after drops or hard fast drills',
    explanation:
      'Drops and fast drills of the high tier want free days behind them: no jump session, match or hard practice.',
    bad: 'thursday: [{ drill: drop-jump-30, sets: 4, reps: 5 }]     # a match on saturday',
    good: 'tuesday: [{ drill: drop-jump-30, sets: 4, reps: 5 }]',
    message: ({
      athlete,
      date,
      next,
      what,
      found,
      wanted,
    }: On & {
      next: string;
      what: 'session' | 'match' | 'practice';
      found: number;
      wanted: number;
    }) =>
      `${athlete}: after the drops or hard fast drills of ${date} comes ${WHAT_COMES[what]} on ${next}, with ${found === 0 ? 'no day' : days(found)} free between where ${wanted} are wanted`,
    help: () => 'put them on a day with more room behind it, or choose slower drills',
  },
  'rule/event-gap': {
    severity: 'warning',
    summary: 'a jump session too close before a competition',
    explanation:
      'The last days before a competition are for a primer at most. An ordinary jump session belongs further ahead.',
    bad: 'friday: [{ drill: hurdle-hop, sets: 4, reps: 5 }]     # a match on saturday',
    good: 'tuesday: [{ drill: hurdle-hop, sets: 4, reps: 5 }]',
    message: ({
      athlete,
      date,
      competition,
      found,
      wanted,
    }: On & { competition: string; found: number; wanted: number }) =>
      found <= 0
        ? `${athlete}: a jump session on ${date}, a day of ${competition}`
        : `${athlete}: the jump session of ${date} is ${days(found)} before ${competition}, and the ${wanted === 1 ? 'day' : `${wanted} days`} before it stay free`,
    help: () => 'move the session further ahead',
  },
  'rule/after-event': {
    severity: 'warning',
    summary: 'a jump session right after a match',
    explanation: 'Whoever played has no jump session the day after.',
    bad: 'sunday: [{ drill: hurdle-hop, sets: 4, reps: 5 }]     # a match on saturday',
    good: 'tuesday: [{ drill: hurdle-hop, sets: 4, reps: 5 }]',
    message: ({
      athlete,
      date,
      competition,
      found,
      wanted,
    }: On & { competition: string; found: number; wanted: number }) =>
      `${athlete}: the jump session of ${date} comes ${days(found)} after ${competition}, and ${days(wanted)} behind it stay${wanted === 1 ? 's' : ''} free`,
    help: () => 'move the session a day back',
  },
  'rule/lift-spacing': {
    severity: 'warning',
    summary: 'heavy leg days too close together',
    explanation: 'Heavy lifting for legs and hips wants a day between, like jumping does.',
    bad: 'tuesday: [{ lift: back-squat, sets: 5, reps: 3, percent: 90 % }]\nwednesday: [{ lift: romanian-deadlift, sets: 4, reps: 4, percent: 85 % }]',
    good: 'tuesday: [{ lift: back-squat, sets: 5, reps: 3, percent: 90 % }]\nthursday: [{ lift: romanian-deadlift, sets: 4, reps: 4, percent: 85 % }]',
    message: ({ athlete, date, before, found, wanted }: On & { before: string; found: number; wanted: number }) =>
      `${athlete}: heavy leg work on ${before} and on ${date}, ${days(found)} apart, and ${wanted} are wanted`,
    help: () => 'move one of them, or make it light',
  },
  'rule/lift-event-gap': {
    severity: 'warning',
    summary: 'leg work too close before a competition',
    explanation:
      'Heavy lifting for legs and hips belongs early in a week with a match, and days ahead of a peak; so does what the hamstrings lower, which leaves them sore for days (S12). On the eve, two days before a peak and one before a competition to be fresh for, the legs have one light main lift, a squat or a hinge that is not lowered slowly, and no more: no Romanian deadlifts, no split squats, no calf raises. Fast pulls are not counted. How many days count as the eve, and what stays, is common practice, no source.',
    bad: 'thursday: [{ lift: back-squat, sets: 5, reps: 3, percent: 90 % }]     # a match on saturday',
    good: 'tuesday: [{ lift: back-squat, sets: 5, reps: 3, percent: 90 % }]',
    message: ({ athlete, date, competition, found, wanted, what, lifts }: LiftEventGap) => {
      const on = `${athlete}: ${what === 'heavy' ? 'heavy leg work' : lifts} on ${date}`;
      if (found <= 0) return `${on}, a day of ${competition}`;
      const before = `${on}, ${days(found)} before ${competition}`;
      if (what === 'eve') return `${before}: on its eve the legs have one light main lift and no more`;
      const free = wanted === 1 ? 'day' : `${wanted} days`;
      return `${before}, and the ${free} before it stay free of ${what === 'heavy' ? 'it' : 'what the hamstrings lower'}`;
    },
    help: ({ what }: LiftEventGap) =>
      what === 'heavy' ? 'move it further ahead, or make it light' : 'move it further ahead, or leave it out this week',
  },
  'rule/congested-week': {
    severity: 'warning',
    summary: 'training between matches that crowd together',
    explanation:
      'Where match days crowd together there is no time to recover from a jump session: none is held, and one short lift at most.',
    bad: 'tuesday: [{ drill: pogo, sets: 3, reps: 10 }]     # matches on saturday, sunday and thursday',
    good: 'saturday: [{ drill: pogo, sets: 3, reps: 10 }]',
    message: ({
      athlete,
      date,
      matchDays,
      within,
      lifts,
      most,
    }: On & { matchDays: number; within: number; lifts: number; most: number }) =>
      lifts === 0
        ? `${athlete}: a jump session on ${date}, among ${matchDays} match days in ${within}`
        : `${athlete}: lift session ${lifts} among ${matchDays} match days in ${within} is on ${date}, and ${most} is the most`,
    help: () => 'leave it out',
  },
  'rule/session-frequency': {
    severity: 'warning',
    summary: 'too many or too few jump sessions in a week',
    explanation:
      'Each level has a number of jump sessions a week it gains from and recovers from. Weeks with nothing to plan break nothing.',
    bad: 'rules: { session-frequency: [{ intermediate-most: 1, because: two are growing fast }] }    # and two sessions a week in a programme',
    good: 'rules: { session-frequency: [{ intermediate-most: 2, because: two are growing fast }] }',
    message: ({
      athlete,
      week,
      level,
      found,
      least,
      most,
    }: At & { level: string; found: number; least: number; most: number }) =>
      `${athlete}, week of ${week}: ${counted(found, 'jump session', 'jump sessions')}, and ${least} to ${most} are for ${level} athletes`,
    help: ({ found, most }: { found: number; most: number }) =>
      found > most ? 'leave sessions out' : 'open more days',
  },
  'rule/rest-day': {
    severity: 'warning',
    summary: 'a young athlete without a free day',
    explanation: 'Young athletes have a day in each week free of training, practice and matches.',
    bad: 'practice:\n  - { day: monday, jumps: 20 }\n  - { day: wednesday, jumps: 20 }\n  - { day: friday, jumps: 20 }\n  - { day: saturday, jumps: 20 }\n  - { day: sunday, jumps: 20 }     # and sessions on tuesday and thursday',
    good: 'practice:\n  - { day: monday, jumps: 20 }\n  - { day: wednesday, jumps: 20 }\n  - { day: friday, jumps: 20 }\n  - { day: saturday, jumps: 20 }',
    message: ({ athlete, week, found, wanted, age }: At & { found: number; wanted: number; age: number }) =>
      `${athlete}, ${age} years old, has ${counted(found, 'free day', 'free days')} in the week of ${week}, and ${wanted} ${wanted === 1 ? 'is' : 'are'} wanted`,
    help: () => 'keep one day free of training, practice and matches',
  },
} as const satisfies Entries;

type LiftEventGap = On & {
  readonly competition: string;
  /** Days from the session to it, and those that stay free. */
  readonly found: number;
  readonly wanted: number;
  /** Which half of the rule: the load, what the hamstrings lower, or more than an eve has. */
  readonly what: 'heavy' | 'lowered' | 'eve';
  /** Ids of the lifts that are too much, with commas; empty where it is the load. */
  readonly lifts: string;
};
