// Findings of the rules of what a week and a session are made of: tiers, directions, cycles, strength beside jumping,
// minutes, kit. Joined by ../rules.ts.

import type { Entries } from '../../entry.ts';
import type { At, On } from './words.ts';
import { counted } from '../../../util/counted.ts';

export const sessionFindings = {
  'rule/high-tier-share': {
    severity: 'warning',
    summary: 'too many hard drills for the phase',
    explanation:
      'Each phase has a share of the week that drills of the high tier may take, and the early ones have none.',
    bad: '{ drill: drop-jump-30, sets: 4, reps: 5 }     # in hypertrophy',
    good: '{ drill: hurdle-hop, sets: 4, reps: 5 }',
    message: ({
      athlete,
      week,
      phase,
      found,
      most,
      high,
      contacts,
    }: At & {
      phase: string;
      found: number;
      most: number;
      high: number;
      contacts: number;
    }) =>
      `${athlete}, week of ${week}: ${high} of ${contacts} contacts are of the high tier, ${found} %, and ${most} % are the most in ${phase}`,
    help: () => 'swap some of them for moderate drills of the same family',
  },
  'rule/direction-mix': {
    severity: 'notice',
    summary: 'a week that jumps mostly one way',
    explanation:
      "A week of several sessions comes close to the sport's shares of vertical, horizontal and lateral jumping. No direction is known to be better for height: the mix is for breadth.",
    bad: 'tuesday: [{ drill: pogo, sets: 4, reps: 10 }]\nthursday: [{ drill: countermovement-jump, sets: 8, reps: 5 }]',
    good: 'tuesday: [{ drill: pogo, sets: 4, reps: 10 }, { drill: standing-long-jump, sets: 5, reps: 5 }]\nthursday: [{ drill: skater-stick, sets: 4, reps: 5 }]',
    message: ({
      athlete,
      week,
      direction,
      found,
      wanted,
      points,
    }: At & { direction: string; found: number; wanted: number; points: number }) =>
      `${athlete}, week of ${week}: ${found} % of the contacts are ${direction}, and ${wanted} % are wanted, ${points} more or less`,
    help: () => 'swap a drill for one of another direction',
  },
  'rule/fast-cycle-share': {
    severity: 'notice',
    summary: 'too much or too little fast jumping for the phase',
    explanation: 'Fast contacts have a band in each phase, from few in the early ones to half and more near a peak.',
    bad: 'tuesday: [{ drill: standing-long-jump, sets: 8, reps: 5 }]\nthursday: [{ drill: countermovement-jump, sets: 8, reps: 5 }]',
    good: 'tuesday: [{ drill: standing-long-jump, sets: 8, reps: 5 }]\nthursday: [{ drill: pogo, sets: 3, reps: 10 }]',
    message: ({
      athlete,
      week,
      phase,
      found,
      least,
      most,
    }: At & { phase: string; found: number; least: number; most: number }) =>
      `${athlete}, week of ${week}: ${found} % of the contacts are fast, and ${least} to ${most} % are for ${phase}`,
    help: ({ found, most }: { found: number; most: number }) =>
      found > most ? 'swap a fast drill for a slow one' : 'swap a slow drill for a fast one',
  },
  'rule/static-share': {
    severity: 'notice',
    summary: 'many jumps from a standstill',
    explanation:
      'Jumps without a counter-movement leave out what most sport jumps use, so they are a small part of a week. Landings are not counted.',
    bad: '{ drill: squat-jump, sets: 8, reps: 5 }',
    good: '{ drill: countermovement-jump, sets: 8, reps: 5 }',
    message: ({ athlete, week, found, most }: At & { found: number; most: number }) =>
      `${athlete}, week of ${week}: ${found} % of the contacts have no counter-movement, and ${most} % are the most`,
    help: () => 'let the athlete dip before the jump in some of them',
  },
  'rule/jumps-alone': {
    severity: 'warning',
    summary: 'jumping without the strength behind it',
    explanation:
      'Power work gains for about a month and then stalls, and it rests on the strength built before. A long power block, or one without a strength block where there was time for it, gives less.',
    bad: 'pins: [{ from: 2027-01-04, until: 2027-02-28, phase: power, because: we want to jump }]',
    good: 'pins: [{ from: 2027-01-04, until: 2027-01-31, phase: strength, because: gym block }]',
    message: ({ athlete, week, long, found, most }: At & { long: boolean; found: number; most: number }) =>
      long
        ? `${athlete}: the week of ${week} is power week ${found} in a row, and ${most} are the most`
        : `${athlete}: the power block from ${week} has no strength block before it, though ${counted(found, 'week', 'weeks')} were there`,
    help: ({ long }: { long: boolean }) => (long ? 'shorten the power block' : 'give the weeks before it to strength'),
  },
  'rule/strength-always': {
    severity: 'warning',
    summary: 'a week without strength work',
    explanation:
      'Every week but transition and empty ones keeps at least one lift session: strength fades in weeks, and jumping with it.',
    bad: 'slots: [{ day: tuesday, minutes: 60, place: track, use: jumps }]    # and no other',
    good: 'slots: [{ day: tuesday, minutes: 60, place: track, use: jumps }, { day: thursday, minutes: 60, place: gym, use: lifts }]',
    message: ({ athlete, week, found, wanted }: At & { found: number; wanted: number }) =>
      `${athlete}, week of ${week}: ${found === 0 ? 'no lift session' : counted(found, 'lift session', 'lift sessions')}, and at least ${wanted} ${wanted === 1 ? 'is' : 'are'} wanted`,
    help: () => 'open a slot for lifts in that week',
  },
  'rule/stability-share': {
    severity: 'notice',
    summary: 'much balance work',
    explanation:
      'Work on unstable surfaces is a small part of a session: more of it holds jump height back. Rehabilitation does not count.',
    bad: '{ drill: pad-snap-down, sets: 4, reps: 5 }',
    good: '{ drill: snap-down, sets: 4, reps: 5 }',
    message: ({ athlete, date, found, most }: On & { found: number; most: number }) =>
      `${athlete}: ${found} % of the sets of ${date} are on unstable ground, and ${most} % are the most`,
    help: () => 'do them on the floor',
  },
  'rule/pair-rest': {
    severity: 'notice',
    summary: 'a jump too soon after the heavy set it is paired with',
    explanation:
      'The jump of a pair gains from a rest after the heavy set. Clusters, jumps inside one set, are marked as such in the note and left alone.',
    bad: '{ lift: back-squat, sets: 3, reps: 3, percent: 90 %, rest: 90 s, pair: { drill: countermovement-jump, reps: 3 } }',
    good: '{ lift: back-squat, sets: 3, reps: 3, percent: 90 %, rest: 3 min, pair: { drill: countermovement-jump, reps: 3 } }',
    message: ({ athlete, date, exercise, found, wanted }: On & { exercise: string; found: number; wanted: number }) =>
      `${athlete}: ${found} s between ${exercise} and its jumps on ${date}, and ${wanted} s are wanted`,
    help: () => 'rest longer, or write `note: cluster` where the jumps belong inside the set',
  },
  'rule/slot-minutes': {
    severity: 'warning',
    summary: 'a session longer than its slot',
    explanation:
      'Warm-up, work, rests, waiting and set-up take longer than the slot has minutes. Lines written by hand are never dropped, so they may need a hand.',
    bad: 'slots: [{ day: tuesday, minutes: 25, place: hall }]     # and a programme of six lines',
    good: 'slots: [{ day: tuesday, minutes: 75, place: hall }]',
    message: ({ athlete, date, found, most, slot }: On & { found: number; most: number; slot: number }) =>
      `${athlete}: the session of ${date} takes ${found} minutes, and a slot of ${slot} allows ${most}`,
    help: () => 'leave lines out, or open the slot for longer',
  },
  'rule/kit': {
    severity: 'warning',
    summary: 'kit that is not at the place',
    explanation:
      'A line needs kit, a box of some height or a bar that the place of its slot does not have. Lines the tool chooses fall back on the next rung; lines written by hand stay as they are.',
    bad: 'saturday: [{ lift: back-squat, sets: 3, reps: 5 }]     # on the track',
    good: 'tuesday: [{ lift: back-squat, sets: 3, reps: 5 }]',
    message: ({ athlete, date, exercise, missing, place }: On & { exercise: string; missing: string; place: string }) =>
      `${athlete}: ${exercise} on ${date} needs ${missing}, and ${place} has none`,
    help: () => 'choose another exercise, or write the kit at the place',
  },
  'rule/surface': {
    severity: 'warning',
    summary: "hard landings on ground that doesn't give",
    explanation:
      'Drops and drills of the high tier land hardest, and the surface written for the place is one that takes up no shock. Sessions the tool plans there leave them out; lines written by hand and waived ones stay as they are.',
    bad: 'places: { hall: { surface: concrete } }     # and depth jumps in a programme',
    good: 'places: { hall: { surface: sprung floor } }',
    message: ({ athlete, date, exercise, surface, place }: On & { exercise: string; surface: string; place: string }) =>
      `${athlete}: ${exercise} on ${date} lands hard, and ${place} is ${surface}`,
    help: () => 'choose an easier rung, or another place; write only what is jumped on as the surface',
  },
  'rule/stations': {
    severity: 'warning',
    summary: 'a session whose minutes leave no time to wait',
    explanation:
      'Several athletes share a rack, a box or the hurdles, and the time they wait for each other belongs to the minutes of the session.',
    bad: 'places: { hall: { kit: { racks: 1, bars: [20 kg], smallest-plate: 1.25 kg } } }     # and twelve athletes who squat',
    good: 'places: { hall: { kit: { racks: 4, bars: [20 kg, 20 kg, 20 kg, 20 kg], smallest-plate: 1.25 kg } } }',
    message: ({
      athlete,
      date,
      found,
      wanted,
      sharing,
      stations,
      exercise,
    }: On & {
      found: number;
      wanted: number;
      sharing: number;
      stations: number;
      exercise: string;
    }) =>
      `${athlete}: the session of ${date} is put at ${found} minutes, and takes ${wanted} or more with ${sharing} athletes at ${counted(stations, 'station', 'stations')} for ${exercise}`,
    help: () => 'spread the athletes over more stations or slots',
  },
} as const satisfies Entries;
