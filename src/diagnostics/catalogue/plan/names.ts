// What is wrong with names, and with the drills and lifts that stand behind them. Joined by ../plan.ts.

import type { Entries } from '../../entry.ts';

export const namesEntries = {
  'plan/unknown-name': {
    severity: 'error',
    summary: 'a name that stands for nothing',
    explanation:
      'Squads, athletes, places, exercises, rules and programmes are named by their ids: those the plan defines, or those of the library (`footfall library`).',
    bad: 'athletes: { mira: { squad: seniros } }',
    good: 'athletes: { mira: { squad: seniors } }',
    message: ({ name, kind }: { name: string; kind: string }) => `no ${kind} is called "${name}"`,
  },
  'plan/for-nobody': {
    severity: 'error',
    summary: 'an item for nobody',
    explanation: 'An empty list of squads or athletes would leave nobody. Leave the key out to mean everybody.',
    bad: 'practice: [{ day: monday, jumps: 60, squads: [] }]',
    good: 'practice: [{ day: monday, jumps: 60 }]',
    message: () => 'this list is empty, so that the item is for nobody',
    help: () => 'name somebody, or delete the key to mean everybody',
  },
  'plan/drill-or-lift': {
    severity: 'error',
    summary: 'a line with both a drill and a lift, or neither',
    explanation: 'A line is one exercise: a drill or a lift. Two that belong together are a line with its `pair:`.',
    bad: '{ drill: pogo, lift: back-squat, sets: 3, reps: 5 }',
    good: '{ lift: back-squat, sets: 3, reps: 5, pair: { drill: pogo, reps: 5 } }',
    message: () => 'a line needs either `drill` or `lift`',
  },
  'plan/id-clash': {
    severity: 'error',
    summary: 'a drill and a lift of one id',
    explanation: 'Lines, pins and limits name exercises by id alone, so that a drill and a lift can’t share one.',
    bad: 'drills: { back-squat: { … } }',
    good: 'drills: { squat-hop: { … } }',
    message: ({ id, kind }: { id: string; kind: string }) => `"${id}" is the id of ${kind} already`,
  },
  'plan/contacts-or-metres': {
    severity: 'error',
    summary: 'a drill with both contacts and metres, or neither',
    explanation: 'A drill counts its contacts by the repetition, or by the metre where it is given as distance.',
    bad: 'contacts-per-rep: 1\nmetres-per-contact: 1.8',
    good: 'metres-per-contact: 1.8',
    message: () => 'a drill needs either `contacts-per-rep` or `metres-per-contact`',
  },
  'plan/drop-without-height': {
    severity: 'error',
    summary: 'a drop whose height is not written',
    explanation:
      'The height is what makes a drill a drop: age, mass, strength, clearance, limits and the number of drops are asked for by it. A drill of your own that takes the place of a drop, is in a family of drops, or is called a drop or a depth jump and needs a box, says how high.',
    bad: 'drop-jump-30: { name: Drop jump, family: drop, rung: 2, direction: vertical, cycle: fast, tier: high, legs: both, contacts-per-rep: 1, from-level: beginner, kit: [boxes], reps: 3-6, sets: 2-6, rest: 150 s, cue: Off the floor at once., stop: Heels hit first. }',
    good: 'drop-jump-30: { name: Drop jump, family: drop, rung: 2, direction: vertical, cycle: fast, tier: high, legs: both, contacts-per-rep: 1, from-level: beginner, kit: [boxes], drop: 30 cm, reps: 3-6, sets: 2-6, rest: 150 s, cue: Off the floor at once., stop: Heels hit first. }',
    message: ({ drill }: { drill: string }) => `${drill} is a drop, and has no height`,
    help: () => 'write the height that is dropped from: `drop: 30 cm`',
  },
  'plan/shares-sum': {
    severity: 'error',
    summary: 'shares that do not add up to 100',
    explanation: 'The directions of a drill are per cents of one whole.',
    bad: 'direction: { horizontal: 70, vertical: 20 }',
    good: 'direction: { horizontal: 70, vertical: 30 }',
    message: ({ sum }: { sum: number }) => `these shares add up to ${String(sum)}, not to 100`,
  },
  'plan/depths-differ': {
    severity: 'error',
    summary: 'a maximum of another squat depth',
    explanation:
      'A half squat is far heavier than a full one, and no factor turns one into the other: loads are never carried over between depths.',
    bad: 'half-squat: { name: Half squat, pattern: squat, depth: half, max-of: back-squat }',
    good: 'half-squat: { name: Half squat, pattern: squat, depth: half, max-of: half-squat }',
    message: ({ lift, depth, other, otherDepth }: { lift: string; depth: string; other: string; otherDepth: string }) =>
      `${lift} is ${depth} and ${other} ${otherDepth}: no load is carried over between depths`,
  },
  'plan/more': {
    severity: 'error',
    summary: 'the same in many more places',
    explanation:
      'Of one kind of mistake in one file a hundred are shown. As a rule it is one slip that repeats itself: mend the first ones, and check again.',
    bad: 'a roster of a thousand athletes whose masses have no unit',
    good: 'id,mass\nmira,68 kg',
    message: ({ code, count }: { code: string; count: number }) =>
      `there ${count === 1 ? 'is one more' : `are ${String(count)} more`} of ${code} in this file`,
    help: () => 'mend the first ones and check again',
  },
} as const satisfies Entries;
