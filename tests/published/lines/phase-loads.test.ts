// The loads of each phase against the ranges the handbook gives for it, and kilos against the printed load chart.

import { describe, expect, test } from 'vitest';
import { findPhaseLifting } from '../../../src/library/lifting.ts';
import type { PhaseId } from '../../../src/library/types.ts';
import type { BuiltLine } from '../../../src/build/types.ts';
import { writtenReps } from '../../../src/plan/line-contacts.ts';
import { athlete, makeLines, max } from '../../unit/lines/make-lines.ts';
import type { WeekSpec } from '../../unit/lines/make-lines.ts';

interface Published {
  readonly phase: PhaseId;
  readonly percent: readonly [number, number];
  readonly sets: readonly [number, number];
  readonly reps: readonly [number, number];
}

// Haff & Triplett (eds), Essentials of Strength Training and Conditioning, 4th ed., 2016, ch. 21, and its goal table.
// Read in secondary texts (S) or from memory (M), as said beside each.
const PUBLISHED: readonly Published[] = [
  // 50-75 %, 3-6 sets x 8-20 (from memory); the goal table gives 67-85 %, 6-12 reps (S). Both hold.
  { phase: 'hypertrophy', percent: [67, 75], sets: [3, 6], reps: [8, 12] },
  // 80-95 %, 2-6 x 2-6 (S).
  { phase: 'strength', percent: [80, 95], sets: [2, 6], reps: [2, 6] },
  // 30-95 % by exercise, 2-5 x 2-5 (S).
  { phase: 'strength-power', percent: [30, 95], sets: [2, 5], reps: [2, 5] },
  // 50 to 93 % and over, 1-3 x 1-3 (from memory).
  { phase: 'power', percent: [50, 93], sets: [1, 3], reps: [1, 3] },
  // 85-93 % (S), 2-5 x 3-6 (from memory).
  { phase: 'maintenance', percent: [85, 93], sets: [2, 5], reps: [3, 6] },
];

const within = (value: number, [from, to]: readonly [number, number]): boolean => from <= value && value <= to;

function squats(phase: PhaseId, kilos: number, weeks: number): readonly BuiltLine[] {
  const spec = Array.from({ length: weeks }, (): WeekSpec => ({ phase, sessions: [{ lifts: true }, { lifts: true }] }));
  const who = athlete('advanced', { lifts: new Map([max('back-squat', kilos)]) });
  return makeLines(who, spec)
    .value.flat()
    .flatMap((session) => session.lines.filter((line) => line.exercise === 'back-squat'));
}

describe.each(PUBLISHED)('main lifts in $phase', ({ phase, percent, sets, reps }) => {
  test('keep to the published ranges in every week of the longest block', () => {
    const lines = squats(phase, 100, 6);
    expect(lines.length).toBeGreaterThan(0);
    for (const line of lines) {
      expect(within(line.percent ?? 0, percent)).toBe(true);
      expect(within(line.sets, sets)).toBe(true);
      expect(within(line.reps, reps)).toBe(true);
    }
  });
});

// Soriano 2015, Sports Med 45:1191-1205; Cormie 2007, Med Sci Sports Exerc 39(2):340-349 (P): jump squats with 0-30 % of
// the squat's maximum, cleans with 70 % and over.
test('fast pulls are at 70 % and over, in whatever phase they stand', () => {
  for (const phase of ['strength-power', 'power', 'sharpening'] as const) {
    for (const row of findPhaseLifting(phase)?.fastPull ?? []) expect(row.percent).toBeGreaterThanOrEqual(70);
    expect(findPhaseLifting(phase)?.fastPull?.length).toBeGreaterThan(0);
  }
});

// NSCA training load chart in kilos (S): maximum → 2, 3, 5, 8, 10 reps to failure.
test.each([
  [50, { 2: 47.5, 3: 46.5, 5: 43.5, 8: 40, 10: 37.5 }],
  [100, { 2: 95, 3: 93, 5: 87, 8: 80, 10: 75 }],
  [200, { 2: 190, 3: 186, 5: 174, 8: 160, 10: 150 }],
])('with a maximum of %i kg no set is heavier than the chart prints for its reps', (kilos, chart) => {
  const printed: Readonly<Record<number, number>> = chart;
  let compared = 0;
  for (const { phase } of PUBLISHED) {
    for (const line of squats(phase, kilos, 6)) {
      const most = printed[line.reps];
      if (most === undefined) continue;
      compared += 1;
      expect((line.loadGrams ?? 0) / 1000).toBeLessThan(most);
    }
  }
  expect(compared).toBeGreaterThan(10);
});

// ACSM position stand, Ratamess et al. 2009, Med Sci Sports Exerc 41(3):687-708 (P): 3-5 min between heavy sets.
test('heavy sets are followed by three to five minutes of rest', () => {
  for (const phase of ['strength', 'strength-power', 'power', 'maintenance'] as const) {
    for (const line of squats(phase, 100, 4)) expect(within(line.restSeconds, [180, 300])).toBe(true);
  }
});

// Sports Med Open 2023;9, Table 4 (P): undulating squats, 8 weeks; the printed reps of each week.
test('the sets and reps of an undulating squat programme add up to its printed weeks', () => {
  const weeks: readonly (readonly (readonly [sets: number, reps: number])[])[] = [
    [
      [2, 10],
      [2, 8],
      [2, 6],
    ],
    [
      [3, 10],
      [3, 8],
      [3, 6],
    ],
    [
      [3, 10],
      [3, 8],
      [3, 6],
    ],
    [
      [3, 9],
      [3, 7],
      [3, 5],
    ],
    [
      [3, 9],
      [3, 7],
      [3, 5],
    ],
    [
      [3, 8],
      [3, 6],
      [3, 4],
    ],
    [
      [3, 8],
      [3, 6],
      [3, 4],
    ],
    [
      [2, 6],
      [2, 4],
    ],
  ];
  const reps = weeks.map((days) => days.reduce((sum, [sets, each]) => sum + writtenReps({ sets, reps: each }), 0));
  expect(reps).toEqual([48, 72, 72, 63, 63, 54, 54, 20]);
});
