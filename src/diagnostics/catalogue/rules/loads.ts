// Findings of the rules of lifting loads: reps at a percentage, reserve, steps, tempo, young lifters.
// Joined by ../rules.ts.

import type { Entries } from '../../entry.ts';
import type { On } from './words.ts';
import { counted } from '../../../util/counted.ts';
import { kiloWords } from '../../../util/quantities.ts';
import type { Units } from '../../../util/quantities.ts';

const reps = (count: number): string => counted(count, 'rep', 'reps');

export const loadFindings = {
  'rule/eccentric-tempo': {
    severity: 'notice',
    summary: 'a lift lowered very slowly',
    explanation:
      'Lifts meant to help jumping are not lowered for long: very slow lowering is said to hold jump height back.',
    bad: '{ lift: back-squat, sets: 3, reps: 5, percent: 75 %, tempo: 8-0-1 }',
    good: '{ lift: back-squat, sets: 3, reps: 5, percent: 75 %, tempo: 3-0-1 }',
    message: ({ athlete, date, exercise, found, most }: On & { exercise: string; found: number; most: number }) =>
      `${athlete}: ${exercise} on ${date} is lowered for ${found} s, and ${most} s are the most`,
    help: () => 'lower it faster',
  },
  'rule/load-reps': {
    severity: 'error',
    summary: 'more reps than the load chart gives',
    explanation:
      'At a share of the maximum only so many reps are possible. A set that asks for more fails, or is done with poor technique.',
    bad: '{ lift: back-squat, sets: 3, reps: 8, percent: 90 % }',
    good: '{ lift: back-squat, sets: 3, reps: 3, percent: 90 % }',
    message: ({
      athlete,
      date,
      exercise,
      found,
      most,
      percent,
    }: On & { exercise: string; found: number; most: number; percent: number }) =>
      `${athlete}: ${reps(found)} of ${exercise} at ${percent} % on ${date}, and the chart gives ${most}`,
    help: () => 'take reps off, or weight',
  },
  'rule/load-reserve': {
    severity: 'notice',
    summary: 'a set to the last rep',
    explanation:
      'Sets leave a rep in reserve under what the load chart gives, so that the last one still looks like the first.',
    bad: '{ lift: back-squat, sets: 3, reps: 8, percent: 80 % }',
    good: '{ lift: back-squat, sets: 3, reps: 7, percent: 80 % }',
    message: ({
      athlete,
      date,
      exercise,
      found,
      most,
      percent,
      wanted,
    }: On & {
      exercise: string;
      found: number;
      most: number;
      percent: number;
      wanted: number;
    }) =>
      `${athlete}: ${reps(found)} of ${exercise} at ${percent} % on ${date} leave ${Math.max(0, most - found)} in reserve on the chart, and ${wanted} ${wanted === 1 ? 'is' : 'are'} wanted`,
    help: () => 'take a rep off, or weight',
  },
  'rule/load-step': {
    severity: 'warning',
    summary: 'a load that jumps up',
    explanation:
      'From one loading week of a block to the next a load rises by a small share, or by one step of the plates where that is more.',
    bad: 'pins: [{ week: 2027-02-08, load: { back-squat: 100 kg }, because: felt good }]',
    good: 'pins: [{ week: 2027-02-08, load: { back-squat: 75 kg }, because: felt good }]',
    message: ({
      athlete,
      date,
      exercise,
      found,
      before,
      most,
      units,
    }: On & { exercise: string; found: number; before: number; most: number; units: Units }) =>
      `${athlete}: ${exercise} on ${date} goes from ${kiloWords(before, units)} to ${kiloWords(found, units)}, and ${kiloWords(most, units)} are the most`,
    help: () => 'go up over more weeks',
  },
  'rule/youth-load': {
    severity: 'error',
    summary: 'a heavy load for a young lifter',
    explanation:
      'Young lifters stay well under their maximum, go a little heavier once cleared, and do no single reps. Reps with some in reserve count as the share at which the load chart has both together for the most. Kilos written for a lift whose maximum isn’t known may be any share of it, so they need one. It cannot be waived.',
    bad: '{ lift: back-squat, sets: 3, reps: 2, percent: 92.5 % }    # at 15',
    good: '{ lift: back-squat, sets: 3, reps: 6, percent: 75 % }',
    message: ({
      athlete,
      date,
      age,
      exercise,
      kilos,
      single,
      found,
      most,
      units,
    }: On & {
      age: number;
      exercise: string;
      /** Where they are of no known maximum; else 0. */
      kilos: number;
      single: boolean;
      found: number;
      most: number;
      units: Units;
    }) => {
      const who = `${athlete}, ${age} years old`;
      if (kilos > 0)
        return `${who}: ${kiloWords(kilos, units)} of ${exercise} on ${date}, and no maximum says that they are under ${most} %`;
      return single
        ? `${who}: sets of ${reps(found)} of ${exercise} on ${date}, and ${most} are the fewest at that age`
        : `${who}: ${exercise} on ${date} at ${found} %, and ${most} % are the most`;
    },
    help: ({ kilos }) =>
      kilos > 0
        ? 'write what was lifted last, as in `lifts: { back-squat: { did: 30 kg x 8 } }`, or leave the load out'
        : 'take weight off and do more reps',
  },
} as const satisfies Entries;
