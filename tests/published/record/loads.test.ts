// Session load, monotony and strain against a worked week, and the forecast against the published intervals.

import { describe, expect, it } from 'vitest';
import { forecastHeight } from '../../../src/record/forecast.ts';
import { acuteToChronic, sessionLoad, weekLoad } from '../../../src/record/loads.ts';

describe('a week of loads', () => {
  // Definitions: Foster 1998, Med Sci Sports Exerc 30(7):1164–1168 (P). The week is worked with the sample SD.
  it('has its load, monotony and strain', () => {
    const week = weekLoad([360, 0, 480, 210, 0, 540, 90]);
    expect(week.load).toBe(1680);
    expect(week.monotony).toBeCloseTo(1.072, 3);
    expect(week.strain).toBeCloseTo(1801, 0);
  });

  it('of equal days has no monotony', () => {
    expect(weekLoad([0, 0, 0, 0, 0, 0, 0])).toEqual({ load: 0 });
    expect(weekLoad([50, 50, 50, 50, 50, 50, 50])).toEqual({ load: 350 });
  });

  it('has seven days', () => {
    expect(() => weekLoad([1, 2, 3])).toThrow(RangeError);
  });

  it('is made of effort times minutes', () => {
    expect(sessionLoad(6, 60)).toBe(360);
  });

  // Definition common, meaning disputed: Impellizzeri 2021, Sports Med 51:581–592 (P). The numbers are ours.
  it('stands to the weeks before it as a bare ratio', () => {
    expect(acuteToChronic([1000, 1000, 1000, 2000])).toBeCloseTo(1.6, 12);
    expect(acuteToChronic([0, 0, 0, 0])).toBeUndefined();
    expect(acuteToChronic([])).toBeUndefined();
  });
});

describe('a forecast', () => {
  // Markovic 2007, Br J Sports Med 41:349–355 (P): means and 95 % intervals in per cent.
  it.each([
    ['squat-jump', false, 104.7, 101.8, 107.6],
    ['countermovement-jump', false, 108.7, 107, 110.4],
    ['countermovement-jump', true, 107.5, 104.2, 110.8],
    ['drop-jump', false, 104.7, 100.8, 108.6],
  ] as const)('of %s (arms: %s) from 100', (test, arms, mean, low, high) => {
    const found = forecastHeight(test, arms, 100);
    expect(found?.mean).toBeCloseTo(mean, 9);
    expect(found?.low).toBeCloseTo(low, 9);
    expect(found?.high).toBeCloseTo(high, 9);
  });

  it('is not given where nothing is published', () => {
    expect(forecastHeight('squat-jump', true, 100)).toBeUndefined();
  });
});
