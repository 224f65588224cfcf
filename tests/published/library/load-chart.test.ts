// The load chart against its published rows and against programmes that were really run.

import { describe, expect, it } from 'vitest';
import { LOAD_CHART, percentForReps, repsAtPercent } from '../../../src/library/load-chart.ts';
import { CHART_ROWS } from './load-chart-rows.ts';

describe('the load chart', () => {
  it.each(CHART_ROWS)('%i reps at %i %%', (reps, percent) => {
    expect(percentForReps(reps)).toBe(percent);
    expect(repsAtPercent(percent)).toBe(reps);
  });

  it('has these rows and no other', () => {
    expect(LOAD_CHART.map((row) => [row.reps, row.percent])).toEqual(CHART_ROWS);
  });

  // The chart in kilos, same source (S): maximum, then the load for 2, 3, 5, 8 and 10 reps.
  it.each([
    [50, [47.5, 46.5, 43.5, 40, 37.5]],
    [100, [95, 93, 87, 80, 75]],
    [200, [190, 186, 174, 160, 150]],
  ])('of a maximum of %i kg', (max, kilos) => {
    expect([2, 3, 5, 8, 10].map((reps) => (max * (percentForReps(reps) ?? 0)) / 100)).toEqual(kilos);
  });

  it('takes 11 as 12, the lighter, and says nothing past its end', () => {
    expect(percentForReps(11)).toBe(70);
    expect(percentForReps(12)).toBe(70);
    expect(percentForReps(13)).toBeUndefined();
  });

  it('allows the reps of the next heavier row in between, none over the maximum, twelve however light', () => {
    expect(repsAtPercent(101)).toBe(0);
    expect(repsAtPercent(96)).toBe(1);
    expect(repsAtPercent(94)).toBe(2);
    expect(repsAtPercent(81)).toBe(7);
    expect(repsAtPercent(72.5)).toBe(10);
    expect(repsAtPercent(50)).toBe(12);
  });
});

describe('programmes that were run stay within the chart', () => {
  // J Sports Sci Med 2018;17:348, Table 1 (P): squats of the pairs programme, reps at per cent.
  // Sports Med Open 2023, 9, s40798-023-00651-y, Table 4 (P): eight weeks of undulating squats, reps at per cent.
  const pairs = ['8x80', '5x85', '3x90', '2x95'];
  const undulating = (
    '10x60 8x65 6x70 10x65 8x70 6x75 10x67.5 8x72.5 6x77.5 9x70 7x75 5x80 ' +
    '9x72.5 7x77.5 5x82.5 8x75 6x80 4x85 8x77.5 6x82.5 4x87.5 6x80 4x85'
  ).split(' ');

  it.each([...pairs, ...undulating])('%s', (set) => {
    const [reps, percent] = set.split('x').map(Number);
    expect(reps).toBeLessThanOrEqual(repsAtPercent(percent ?? 0));
  });
});
