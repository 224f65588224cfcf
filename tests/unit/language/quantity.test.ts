// Quantities with their units, to the gram, the centimetre and the second.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  DURATION,
  LENGTH,
  MASS,
  readLiftSet,
  readPercent,
  readQuantity,
  readWholePercent,
} from '../../../src/language/quantity.ts';
import type { Reading } from '../../../src/language/reading.ts';
import { codeOf, messageOf, valueOf } from './readings.ts';

describe('masses are grams', () => {
  test.each([
    ['68 kg', 68_000],
    ['92.5 kg', 92_500],
    ['1.25 kg', 1250],
    ['57.123 kg', 57_123],
    ['68kg', 68_000],
    [' 68 kg ', 68_000],
  ])('%s', (text, grams) => {
    expect(valueOf(readQuantity(MASS, text))).toBe(grams);
  });

  // 1 lb = 0.45359237 kg exactly: international yard and pound agreement, 1959 (from memory).
  test.each([
    ['150 lb', 68_039],
    ['2.5 lb', 1134],
    ['45 lb', 20_412],
    ['1 lb', 454],
  ])('%s, to the nearest gram', (text, grams) => {
    expect(valueOf(readQuantity(MASS, text))).toBe(grams);
  });
});

describe('lengths are whole centimetres', () => {
  // 1 in = 2.54 cm exactly: same agreement (from memory).
  test.each([
    ['176 cm', 176],
    ['1.76 m', 176],
    ['0.3 m', 30],
    ['12 in', 30],
    ['18 in', 46],
    ['30 in', 76],
  ])('%s', (text, centimetres) => {
    expect(valueOf(readQuantity(LENGTH, text))).toBe(centimetres);
  });
});

test.each([
  ['90 s', 90],
  ['3 min', 180],
  ['1.5 min', 90],
])('%s is %i seconds', (text, seconds) => {
  expect(valueOf(readQuantity(DURATION, text))).toBe(seconds);
});

test.each([
  ['10 %', 10],
  ['67.5 %', 67.5],
  ['80%', 80],
])('%s is %d per cent', (text, percent) => {
  expect(valueOf(readPercent(text))).toBe(percent);
});

test('a rule counts in whole per cents', () => {
  expect(valueOf(readWholePercent('8 %'))).toBe(8);
  expect(codeOf(readWholePercent('8.5 %'))).toBe('language/too-fine');
});

test.each([
  ['70 kg x 5', { grams: 70_000, reps: 5 }],
  ['70 kg × 5', { grams: 70_000, reps: 5 }],
  ['155 lb x 3', { grams: 70_307, reps: 3 }],
])('%s is a set', (text, set) => {
  expect(valueOf(readLiftSet(text))).toEqual(set);
});

describe('a slip is told for what it is', () => {
  test.each<[string, Reading<unknown>, string]>([
    ['a bare number', readQuantity(MASS, '68'), 'language/bare-number'],
    ['a wrong unit', readQuantity(LENGTH, '1.76 kg'), 'language/wrong-unit'],
    ['another unit of mass', readQuantity(MASS, '11 stone'), 'language/wrong-unit'],
    ['a decimal comma', readQuantity(MASS, '68,5 kg'), 'language/decimal-comma'],
    ['nothing', readQuantity(MASS, '0 kg'), 'language/not-positive'],
    ['nothing, in decimals', readQuantity(MASS, '0.0 kg'), 'language/not-positive'],
    ['less than nothing', readQuantity(MASS, '-68 kg'), 'language/not-positive'],
    ['less than a gram', readQuantity(MASS, '0.0001 kg'), 'language/too-fine'],
    ['half a centimetre', readQuantity(LENGTH, '30.5 cm'), 'language/too-fine'],
    ['half a second', readQuantity(DURATION, '2.5 s'), 'language/too-fine'],
    ['a hundredth of a per cent', readPercent('67.55 %'), 'language/too-fine'],
    ['a word', readQuantity(MASS, 'heavy'), 'language/not-a-quantity'],
    ['two numbers', readQuantity(MASS, '68 70 kg'), 'language/not-a-quantity'],
    ['nothing at all', readQuantity(MASS, ''), 'language/not-a-quantity'],
    ['more than there is', readQuantity(MASS, '99999999999 kg'), 'language/not-a-quantity'],
    ['a set without its load', readLiftSet('5 reps'), 'language/not-a-set'],
    ['a set of nothing', readLiftSet('70 kg x 0'), 'language/not-a-set'],
    ['a set without its unit', readLiftSet('70 x 5'), 'language/bare-number'],
  ])('%s', (_, reading, code) => {
    expect(codeOf(reading)).toBe(code);
  });

  test('and says which units fit', () => {
    expect(messageOf(readQuantity(LENGTH, '1.76 kg'))).toContain('cm, m or in');
    expect(messageOf(readQuantity(MASS, '150 lbs'), 'help')).toBe('write 150 lb');
    expect(messageOf(readQuantity(LENGTH, '12"'), 'help')).toBe('write 12 in');
    expect(messageOf(readQuantity(MASS, '68'), 'help')).toContain('kg or lb');
  });
});

test('kilos come out exact, however many decimals up to three', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 999_999_999 }), (grams) => {
      const text = `${String(Math.floor(grams / 1000))}.${String(grams % 1000).padStart(3, '0')} kg`;
      expect(valueOf(readQuantity(MASS, text))).toBe(grams);
    }),
  );
});

test('pounds and inches are off by half a unit at most', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1000 }), (number) => {
      expect(Math.abs(valueOf(readQuantity(MASS, `${String(number)} lb`)) - number * 453.59237)).toBeLessThanOrEqual(
        0.5,
      );
      expect(Math.abs(valueOf(readQuantity(LENGTH, `${String(number)} in`)) - number * 2.54)).toBeLessThanOrEqual(0.5);
    }),
  );
});

test('no text makes a reading throw', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 30 }), (text) => {
      for (const measure of [MASS, LENGTH, DURATION]) expect(readQuantity(measure, text)).toBeDefined();
      expect(readLiftSet(text)).toBeDefined();
    }),
  );
});
