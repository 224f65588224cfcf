// Formulas of jump tests against values that were printed elsewhere, the source beside each.

import { describe, expect, it } from 'vitest';
import { POWER_EQUATIONS, STANDARD_GRAVITY } from '../../../src/library/jump-tests.ts';
import {
  dynamicStrength,
  dynamicStrengthReading,
  eccentricUtilisation,
  heightOfFlight,
  isInsideNoise,
  modifiedReactiveStrength,
  peakPower,
  reactiveStrength,
  smallestWorthwhileChange,
  takeOffSpeed,
  typicalError,
  usualJumpError,
} from '../../../src/record/jumps.ts';

function power(id: string, centimetres: number, kilograms: number): number {
  const equation = POWER_EQUATIONS.find((one) => one.id === id);
  if (equation === undefined) throw new Error(`no equation ${id}`);
  return peakPower(equation, centimetres / 100, kilograms);
}

describe('height', () => {
  // Standard gravity: CGPM 1901. h = g t²/8: mechanics, worked by hand for 0.50 s: 9.80665 x 0.25 / 8.
  it('of half a second in the air is 0.3065 m', () => {
    expect(STANDARD_GRAVITY).toBe(9.80665);
    expect(heightOfFlight(0.5)).toBeCloseTo(0.3065, 4);
  });

  it('is what the speed at take-off carries to', () => {
    for (const seconds of [0.3, 0.45, 0.62])
      expect(takeOffSpeed(seconds) ** 2 / (2 * STANDARD_GRAVITY)).toBeCloseTo(heightOfFlight(seconds), 12);
  });
});

describe('indices', () => {
  // Healy 2018, Int J Sports Physiol Perform (P): height by contact time; 0.35 m in 0.20 s is 1.75.
  it('reactive strength of 0.35 m in 0.20 s is 1.75', () => {
    expect(reactiveStrength(0.35, 0.2)).toBeCloseTo(1.75, 12);
  });

  // Sole 2018, Sports 6(4):133 (P) for the definition; the numbers are ours.
  it('the modified one divides by the time to take-off', () => {
    expect(modifiedReactiveStrength(0.4, 0.8)).toBeCloseTo(0.5, 12);
  });

  // McGuigan 2006, J Strength Cond Res 20(4):992–995 (P) for the definition; the numbers are ours.
  it('eccentric utilisation is the counter-movement jump by the squat jump', () => {
    expect(eccentricUtilisation(0.36, 0.32)).toBeCloseTo(1.125, 12);
  });

  // PLoS ONE e0331519 (P) for the definition; the numbers are ours.
  it('dynamic strength is the force of the jump by the isometric one', () => {
    expect(dynamicStrength(1800, 2400)).toBeCloseTo(0.75, 12);
  });

  // PLoS ONE e0331519 (P): under 0.60 ballistic, over 0.80 maximal force.
  it.each([
    [0.59, 'ballistic'],
    [0.6, undefined],
    [0.8, undefined],
    [0.81, 'maximal force'],
  ] as const)('a dynamic strength of %f reads as %s', (index, reading) => {
    expect(dynamicStrengthReading(index)).toBe(reading);
  });
});

describe('peak power', () => {
  // Canavan & Vescovi 2004, Med Sci Sports Exerc 36(9):1589–1593 (P): group means 65.9 kg, 32.87 cm and 2585 W by
  // Harman's equation. With the misprinted plus sign it would be 6229 W.
  it("by Harman's equation gives the printed mean of a group", () => {
    expect(power('harman', 32.87, 65.9)).toBeCloseTo(2585, 0);
  });

  // Sayers 1999 (from memory), Canavan & Vescovi 2004 (P), Amonette 2012, J Strength Cond Res 26(7):1749–1755 (P): the
  // equations as printed, worked by hand at 30 cm and 60 kg.
  it.each([
    ['sayers', 51.9 * 30 + 48.9 * 60 - 2007],
    ['sayers-squat-jump', 60.7 * 30 + 45.3 * 60 - 2055],
    ['canavan-vescovi', 65.1 * 30 + 25.8 * 60 - 1413.1],
    ['amonette', 63.6 * 30 + 42.7 * 60 - 1846.5],
  ])('by %s at 30 cm and 60 kg is %f W', (id, watts) => {
    expect(power(id, 30, 60)).toBeCloseTo(watts, 9);
  });

  it('is never made larger by what an equation takes off', () => {
    for (const { constant } of POWER_EQUATIONS) expect(constant).toBeLessThan(0);
  });
});

describe('noise', () => {
  // Hopkins 2000, Sports Med 30:1–15 (from memory): SD of the differences by √2. Differences 1, −1, 2, 0: SD 1.29099.
  it('typical error is the spread of the differences by √2', () => {
    expect(typicalError([30, 32, 35, 28], [31, 31, 37, 28])).toBeCloseTo(1.290_994_4 / Math.SQRT2, 6);
  });

  // Hopkins (from memory): 0.2 of the SD between athletes. Of 28, 32, 36 it is 4.
  it('the smallest worthwhile change is a fifth of the spread between athletes', () => {
    expect(smallestWorthwhileChange([28, 32, 36])).toBeCloseTo(0.8, 12);
  });

  // Coefficient of variation between days 5.8 %: PMC7039490 (P).
  it('a jump of 40 cm varies by 2.3 cm, and up to twice that a change is noise', () => {
    const error = usualJumpError(40);
    expect(error).toBeCloseTo(2.32, 12);
    expect(isInsideNoise(4.6, error)).toBe(true);
    expect(isInsideNoise(-4.6, error)).toBe(true);
    expect(isInsideNoise(4.7, error)).toBe(false);
  });

  it('wants as many second trials as first ones', () => {
    expect(() => typicalError([30, 31], [30])).toThrow(RangeError);
  });
});

describe('an equation of peak power', () => {
  // Whom it was made from: Canavan & Vescovi 2004 women (P), Amonette 2012 males of 12 to 24 years (P).
  it.each([
    ['canavan-vescovi', 'female', 18],
    ['amonette', 'male', 12],
  ] as const)('%s is of %ss from %i years on', (id, sex, from) => {
    expect(POWER_EQUATIONS.find((one) => one.id === id)).toMatchObject({ sex, ages: { from } });
  });

  it('for boys is the only one for anybody under 18', () => {
    expect(POWER_EQUATIONS.filter(({ ages }) => ages.from < 18).map(({ id }) => id)).toEqual(['amonette']);
  });
});
