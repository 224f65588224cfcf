// The seven equations of the one-repetition maximum against their worked values and the identities between them.

import { describe, expect, it } from 'vitest';
import {
  ESTIMATE_REPS,
  ONE_REP_MAX_EQUATIONS,
  canEstimate,
  estimateBy,
  estimateOneRepMax,
} from '../../../src/library/one-rep-max.ts';

function by(id: string, load: number, reps: number): number {
  const equation = ONE_REP_MAX_EQUATIONS.find((one) => one.id === id);
  if (equation === undefined) throw new Error(`no equation ${id}`);
  return estimateBy(equation, load, reps);
}

const REPS = Array.from({ length: ESTIMATE_REPS.to }, (_, index) => index + 1);

describe('the equations', () => {
  // Worked at a load of 100 and 5 reps from the equations as secondary texts print them (S).
  it.each([
    ['epley', 116.67],
    ['brzycki', 112.5],
    ['lombardi', 117.46],
    ['oconner', 112.5],
    ['lander', 113.71],
    ['mayhew', 119.01],
    ['wathan', 116.58],
  ])('%s gives %f', (id, expected) => {
    expect(by(id, 100, 5)).toBeCloseTo(expected, 2);
  });

  it('are these seven', () => {
    expect(ONE_REP_MAX_EQUATIONS.map((one) => one.name)).toEqual([
      'Epley',
      'Brzycki',
      'Lombardi',
      "O'Conner",
      'Lander',
      'Mayhew',
      'Wathan',
    ]);
  });

  // Both follow from the equations: 1 + 10/30 = 36/27, and 1 + 5/40 = 36/32.
  it('agree where algebra says so', () => {
    expect(by('epley', 87.5, 10)).toBeCloseTo(by('brzycki', 87.5, 10), 9);
    expect(by('oconner', 87.5, 5)).toBeCloseTo(by('brzycki', 87.5, 5), 9);
  });

  it.each(ONE_REP_MAX_EQUATIONS.map((one) => [one.name, one] as const))(
    '%s takes a single as the maximum, rises with reps, scales with the load',
    (_, equation) => {
      expect(estimateBy(equation, 92.5, 1)).toBe(92.5);
      for (const reps of REPS.slice(1)) {
        expect(estimateBy(equation, 100, reps)).toBeGreaterThan(estimateBy(equation, 100, reps - 1));
        expect(estimateBy(equation, 50, reps)).toBeCloseTo(estimateBy(equation, 100, reps) / 2, 9);
      }
    },
  );
});

describe('the estimate a plan is made with', () => {
  it("is Brzycki's, never above Epley's", () => {
    for (const reps of REPS) {
      expect(estimateOneRepMax(70, reps)).toBe(by('brzycki', 70, reps));
      expect(estimateOneRepMax(70, reps)).toBeLessThanOrEqual(by('epley', 70, reps) + 1e-9);
    }
  });

  it('holds for whole reps from 1 to 10', () => {
    expect(REPS.every(canEstimate)).toBe(true);
    expect([0, 11, 2.5, Number.NaN].some(canEstimate)).toBe(false);
    expect(() => estimateOneRepMax(70, 11)).toThrow(RangeError);
  });
});
