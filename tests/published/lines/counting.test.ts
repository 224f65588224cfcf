// Counts the lines of published programmes as footfall counts them, against the totals their papers print.

import { expect, test } from 'vitest';
import { writtenContacts, writtenReps } from '../../../src/plan/line-contacts.ts';
import type { Exercises } from '../../../src/plan/line-contacts.ts';
import type { WrittenLine } from '../../../src/plan/types.ts';
import type { Drill, Lift } from '../../../src/library/types.ts';

const span = { file: 'season.yaml', start: 0, end: 1 };

const countermovementJump: Drill = {
  id: 'countermovement-jump',
  name: 'Countermovement jump',
  family: 'vertical-jump',
  rung: 2,
  direction: { vertical: 100, horizontal: 0, lateral: 0 },
  cycle: 'slow',
  tier: 'low',
  legs: 'both',
  contactsPerRep: 1,
  lands: 'ground',
  fromLevel: 'beginner',
  kit: [],
  reps: { from: 3, to: 8 },
  sets: { from: 2, to: 6 },
  restSeconds: 60,
  stage: 2,
  cue: 'Dip and jump.',
  stop: 'The landing gets loud.',
};
const dropJump: Drill = {
  ...countermovementJump,
  id: 'drop-jump',
  family: 'drops',
  cycle: 'fast',
  tier: 'high',
  dropCm: 40,
};

const backSquat: Lift = {
  id: 'back-squat',
  name: 'Back squat',
  pattern: 'squat',
  depth: 'full',
  lower: true,
  kit: ['racks', 'bars'],
  loading: 'bar',
  maxOf: 'back-squat',
  role: 'main',
  eccentricSeconds: 2,
  fromLevel: 'beginner',
  reps: { from: 1, to: 12 },
  stage: 2,
  cue: 'Chest up.',
  stop: 'The back rounds.',
};
const nordic: Lift = {
  ...backSquat,
  id: 'nordic',
  pattern: 'hamstring-eccentric',
  loading: 'body',
  role: 'assistance',
};

const exercises: Exercises = {
  drills: new Map([countermovementJump, dropJump].map((drill) => [drill.id, drill])),
  lifts: new Map([backSquat, nordic].map((lift) => [lift.id, lift])),
};

const drill = (id: string, sets: number, reps: number): WrittenLine => ({
  exercise: { kind: 'drill', id },
  sets,
  reps,
  span,
});
const lift = (id: string, sets: number, reps: number): WrittenLine => ({
  exercise: { kind: 'lift', id },
  sets,
  reps,
  span,
});

// J Sports Sci Med 2018;17:348, Table 1 (P): squats with three jumps inside each set. The paper prints the jump volume as
// repetitions x body mass, 827, 1,103, 1,378 and 827 kg, which are 9, 12, 15 and 9 jumps of one mean body mass.
test.each([
  [3, 8, 827],
  [4, 5, 1103],
  [5, 3, 1378],
  [3, 2, 827],
])('pairs of %i x %i squats with three jumps in each set hold the printed jump volume', (sets, reps, printedKg) => {
  const line: WrittenLine = { ...lift('back-squat', sets, reps), pair: drill('countermovement-jump', 1, 3) };
  const meanMassKg = 827 / 9;
  expect(writtenContacts(line, exercises) * meanMassKg).toBeCloseTo(printedKg, 0);
});

// Sports Med 2020;50:83-99, Table 2 (P): Nordic hamstring programmes, weeks of sets x reps x sessions a week, and the
// printed total of repetitions. They don't leave the ground.
test.each([
  ['Alt', [{ weeks: 4, sets: 3, reps: 3, sessions: 3 }], 108],
  [
    'Anastasi',
    [
      { weeks: 2, sets: 3, reps: 6, sessions: 3 },
      { weeks: 2, sets: 3, reps: 7, sessions: 3 },
      { weeks: 3, sets: 3, reps: 8, sessions: 3 },
      { weeks: 3, sets: 3, reps: 10, sessions: 3 },
    ],
    720,
  ],
  [
    'Clark',
    [
      { weeks: 1, sets: 2, reps: 5, sessions: 1 },
      { weeks: 1, sets: 2, reps: 6, sessions: 2 },
      { weeks: 1, sets: 3, reps: 6, sessions: 3 },
      { weeks: 1, sets: 3, reps: 8, sessions: 3 },
    ],
    160,
  ],
  [
    'Freeman',
    [
      { weeks: 1, sets: 2, reps: 5, sessions: 2 },
      { weeks: 1, sets: 3, reps: 4, sessions: 2 },
      { weeks: 1, sets: 3, reps: 5, sessions: 2 },
      { weeks: 1, sets: 3, reps: 6, sessions: 2 },
    ],
    110,
  ],
])('the Nordic programme of %s has the printed number of repetitions and no contacts', (_name, weeks, printed) => {
  let reps = 0;
  for (const week of weeks) {
    const line = lift('nordic', week.sets, week.reps);
    reps += week.weeks * week.sessions * writtenReps(line);
    expect(writtenContacts(line, exercises)).toBe(0);
  }
  expect(reps).toBe(printed);
});

// Interv Med Appl Sci 2014;6(3):125-130 (P): 5 x 20 drop jumps, twice a week for 6 weeks, 1,200 jumps.
test('a constant dose of drop jumps adds up to the printed total', () => {
  expect(writtenContacts(drill('drop-jump', 5, 20), exercises) * 2 * 6).toBe(1200);
});
