// Findings of the rules of who may: age, mass, strength, clearance, level, limits and pain. Joined by ../rules.ts.

import type { Entries } from '../../entry.ts';
import type { At, On } from './words.ts';
import { counted } from '../../../util/counted.ts';
import { heightWords, kiloWords } from '../../../util/quantities.ts';
import type { Units } from '../../../util/quantities.ts';

export const gateFindings = {
  'rule/youth-ceiling': {
    severity: 'error',
    summary: 'a session too big for a child',
    explanation:
      'Children start with small sessions and have a ceiling of their own, whatever their level. It cannot be waived.',
    bad: '{ drill: pogo, sets: 4, reps: 10 }     # at 14',
    good: '{ drill: pogo, sets: 1, reps: 10 }',
    message: ({
      athlete,
      date,
      age,
      found,
      most,
      first,
    }: On & { age: number; found: number; most: number; first: boolean }) =>
      `${athlete}, ${age} years old: ${counted(found, 'contact', 'contacts')} in the session of ${date}, and ${most} are the most${first ? ' in the first weeks of jumping' : ' at that age'}`,
    help: ({ most }: { most: number }) => `plan ${most} or fewer a session`,
  },
  'rule/drop-age': {
    severity: 'error',
    summary: 'drops for somebody too young',
    explanation:
      'Children do not drop from a height while their bones grow; in the years after that only with clearance, and from low boxes. It cannot be waived.',
    bad: 'athletes: { ada: { squad: seniors, born: 2014-05, cleared: [drops] } }    # and drops in a programme',
    good: 'athletes: { ada: { squad: seniors, born: 2010-05, cleared: [drops] } }',
    message: ({
      athlete,
      date,
      exercise,
      age,
      cm,
      most,
      never,
      units,
    }: On & { exercise: string; age: number; cm: number; most: number; never: boolean; units: Units }) =>
      most === 0
        ? `${athlete}, ${age} years old: ${exercise} on ${date} drops ${heightWords(cm, units)}, and ${never ? 'nobody drops at that age' : 'the coach has not cleared it'}`
        : `${athlete}, ${age} years old: ${exercise} on ${date} drops ${heightWords(cm, units)}, and ${heightWords(most, units)} are the most at that age`,
    help: () => 'choose an easier drill of the family',
  },
  'rule/drop-mass': {
    severity: 'error',
    summary: 'a high drop for a heavy athlete',
    explanation:
      'The force of a landing grows with mass and height, so heavy athletes drop from moderate boxes only. It cannot be waived.',
    bad: '{ drill: drop-jump-60, sets: 2, reps: 4 }     # at 108 kg',
    good: '{ drill: drop-jump-40, sets: 2, reps: 4 }',
    message: ({
      athlete,
      date,
      exercise,
      cm,
      most,
      kg,
      units,
    }: On & { exercise: string; cm: number; most: number; kg: number; units: Units }) =>
      `${athlete}: ${exercise} on ${date} drops ${heightWords(cm, units)}, and ${heightWords(most, units)} are the most over ${kiloWords(kg, units)} of body mass`,
    help: () => 'choose a lower box',
  },
  'rule/drop-strength': {
    severity: 'warning',
    summary: 'a drop without the strength for it',
    explanation:
      'Higher drops ask for a strong squat for the body mass, or for a clearance that says an equal was shown. A mass or a squat that is not written counts as not shown.',
    bad: 'athletes: { mira: { squad: seniors, mass: 68 kg, lifts: { back-squat: { max: 70 kg, on: 2027-02-12 } }, cleared: [drops] } }    # and a drop of 40 cm in a programme',
    good: 'athletes: { mira: { squad: seniors, mass: 68 kg, lifts: { back-squat: { max: 92.5 kg, on: 2027-02-12 } }, cleared: [drops] } }',
    message: ({
      athlete,
      date,
      exercise,
      cm,
      found,
      wanted,
      units,
    }: On & { exercise: string; cm: number; found: number; wanted: number; units: Units }) =>
      `${athlete}: ${exercise} on ${date} drops ${heightWords(cm, units)}, which asks for a squat of ${wanted} % of body mass, and ${found === 0 ? 'none is known' : `${found} % are known`}`,
    help: () => 'choose a lower box, write the squat and the mass, or clear an equal with `cleared: [drop-strength]`',
  },
  'rule/drop-clearance': {
    severity: 'error',
    summary: 'a drill that needs clearance',
    explanation:
      'Drops, and single-leg drills of the high tier, are for athletes whose landing the coach has watched. It cannot be waived: write the clearance down.',
    bad: 'athletes: { mira: { squad: seniors } }    # and drops in a programme',
    good: 'athletes: { mira: { squad: seniors, cleared: [drops] } }',
    message: ({ athlete, date, exercise, wanted }: On & { exercise: string; wanted: string }) =>
      `${athlete} is not cleared for ${exercise} on ${date}: it needs \`cleared: [${wanted}]\``,
    help: () => 'watch the athlete land and write the clearance, or choose an easier drill',
  },
  'rule/drop-height': {
    severity: 'error',
    summary: 'a drop higher than the level allows',
    explanation:
      'Each level has a highest drop. Higher ones come with the next level, or with a waiver and its reason.',
    bad: '{ drill: drop-jump-60, sets: 2, reps: 4 }     # at intermediate',
    good: '{ drill: drop-jump-40, sets: 2, reps: 4 }',
    message: ({
      athlete,
      date,
      exercise,
      cm,
      most,
      level,
      units,
    }: On & { exercise: string; cm: number; most: number; level: string; units: Units }) =>
      `${athlete}: ${exercise} on ${date} drops ${heightWords(cm, units)}, and ${heightWords(most, units)} are the most for ${level} athletes`,
    help: () => 'choose a lower box',
  },
  'rule/drop-count': {
    severity: 'warning',
    summary: 'too many drops',
    explanation:
      'Drops are few: each level has a most for a session, and a week holds no more than a small multiple of it.',
    bad: '{ drill: drop-jump-30, sets: 8, reps: 5 }',
    good: '{ drill: drop-jump-30, sets: 4, reps: 5 }',
    message: ({ athlete, week, date, found, most, level }: On & { found: number; most: number; level: string }) =>
      `${athlete}: ${counted(found, 'drop', 'drops')} in the ${date === '' ? `week of ${week}` : `session of ${date}`}, and ${most} are the most for ${level} athletes`,
    help: ({ most }: { most: number }) => `plan ${most} or fewer`,
  },
  'rule/drill-level': {
    severity: 'error',
    summary: 'a drill above the level',
    explanation: 'Each drill names the level it is for. Easier rungs of the same family lead up to it.',
    bad: '{ drill: long-hurdle-jump, sets: 2, reps: 4 }     # at intermediate',
    good: '{ drill: forward-hurdle-jump, sets: 2, reps: 4 }',
    message: ({ athlete, date, exercise, level, wanted }: On & { exercise: string; level: string; wanted: string }) =>
      `${athlete}: ${exercise} on ${date} is for ${wanted} athletes, and the level that day is ${level}`,
    help: () => 'choose an easier drill of the family, or sign the level off',
  },
  'rule/new-drills': {
    severity: 'notice',
    summary: 'many new drills in one week',
    explanation:
      'New drills cost attention and sore legs, so they come a few at a time. The first week of a season has no drills before it and does not count.',
    bad: 'pins: [{ week: 2027-02-08, swap: { countermovement-jump-series: countermovement-jump, standing-long-jump: half-long-jump, lateral-bound: skater-step }, because: variety }]',
    good: 'pins: [{ week: 2027-02-08, swap: { lateral-bound: skater-step }, because: variety }]',
    message: ({ athlete, week, found, most, drills }: At & { found: number; most: number; drills: string }) =>
      `${athlete}, week of ${week}: ${counted(found, 'new drill', 'new drills')} (${drills}), and ${most} are the most`,
    help: () => 'bring them in over more weeks',
  },
  'rule/limit': {
    severity: 'error',
    summary: 'something a limit forbids',
    explanation:
      'A limit says what an athlete must not do while it is in force, and lines written by hand are no exception. It cannot be waived: change or end the limit where its reason stands.',
    bad: 'limits: [{ avoid: [back-squat], because: "physio: left knee" }]     # and squats in a programme',
    good: 'limits: [{ avoid: [back-squat], until: 2027-02-28, because: "physio: left knee" }]     # the programme begins behind it',
    message: ({ athlete, week, date, what, found, most }: On & { what: string; found: number; most: number }) =>
      date === ''
        ? `${athlete}, week of ${week}: ${counted(found, 'contact', 'contacts')}, and the limit in force allows ${most} a week`
        : what === ''
          ? `${athlete}: ${counted(found, 'contact', 'contacts')} in the session of ${date}, and the limit in force allows ${most}`
          : `${athlete}: ${what} on ${date} is forbidden by the limit in force`,
    help: () => 'choose something else for this athlete',
  },
  'rule/pain-hold': {
    severity: 'error',
    summary: 'going on as if nothing hurt',
    explanation:
      'Pain the morning after holds the volume and leaves fast and high-tier drills out; more pain stops the jumping until it is better or somebody licensed says otherwise, and jumps come back with the week behind the better morning. Whoever decides otherwise is named in the waiver.',
    bad: '2027-02-25,mira,session,80,70,7,5,sore knee',
    good: '2027-02-25,mira,session,80,70,7,2,',
    message: ({
      athlete,
      week,
      date,
      pain,
      since,
      what,
    }: On & { pain: number; since: string; what: 'rise' | 'jumps' | 'drill' }) =>
      what === 'rise'
        ? `${athlete}, week of ${week}: the contacts rise after pain of ${pain} on ${since}`
        : what === 'jumps'
          ? `${athlete}: a jump session on ${date}, after pain of ${pain} on ${since}`
          : `${athlete}: a fast or high-tier drill on ${date}, after pain of ${pain} on ${since}`,
    help: () => 'let the athlete recover, and record the mornings that follow',
  },
  'rule/level-step': {
    severity: 'notice',
    summary: 'a level that goes up early or by two',
    explanation:
      "Levels go up one at a time, after enough weeks with sessions near the ceiling of the level below. The date is the coach's sign-off; this says that it comes early.",
    bad: 'level: [{ is: beginner }, { is: advanced, from: 2027-03-01 }]',
    good: 'level: [{ is: beginner }, { is: intermediate, from: 2027-03-29 }]',
    message: ({
      athlete,
      date,
      level,
      before,
      found,
      wanted,
    }: On & { level: string; before: string; found: number; wanted: number }) =>
      wanted === 0
        ? `${athlete} goes from ${before} to ${level} in one step on ${date}`
        : `${athlete} becomes ${level} on ${date}, after ${counted(found, 'week', 'weeks')} near the ceiling of a ${before} athlete where ${wanted} are wanted`,
    help: () => 'sign the level off later, or let it stand and keep an eye on the landings',
  },
} as const satisfies Entries;
