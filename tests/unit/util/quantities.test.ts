// Heights and distances in the units of a plan: what is decided is never told as more.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LENGTH, readQuantity } from '../../../src/language/quantity.ts';
import { distanceWords, heightWords, kiloWords } from '../../../src/util/quantities.ts';

const readBack = (words: string): number => {
  const reading = readQuantity(LENGTH, words);
  return 'value' in reading ? reading.value : Number.NaN;
};

describe('a height in inches', () => {
  test.each([
    [20, '8 in'],
    [30, '12 in'],
    [40, '15.5 in'],
    [45, '17.5 in'],
    [46, '18 in'],
    [60, '23.5 in'],
    [61, '24 in'],
    [63, '24.5 in'],
  ])('of %d cm is %s', (cm, words) => {
    expect(heightWords(cm, 'imperial')).toBe(words);
  });

  test('is never read as more, and half an inch more always is', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 300 }), (cm) => {
        const words = heightWords(cm, 'imperial');
        expect(readBack(words)).toBeLessThanOrEqual(cm);
        expect(readBack(`${Number.parseFloat(words) + 0.5} in`)).toBeGreaterThan(cm);
      }),
    );
  });

  test('comes back as it was written', () => {
    for (let halves = 1; halves <= 120; halves += 1) {
      const written = `${halves / 2} in`;
      expect(heightWords(readBack(written), 'imperial')).toBe(written);
    }
  });
});

test('distances are told in metres to a tenth, or in whole feet', () => {
  expect([distanceWords(15, 'metric'), distanceWords(2.25, 'metric'), distanceWords(15, 'imperial')]).toEqual([
    '15 m',
    '2.3 m',
    '49 ft',
  ]);
});

test('kilos of a report are told in half pounds, rounded down', () => {
  expect([kiloWords(72.5, 'metric'), kiloWords(72.5, 'imperial')]).toEqual(['72.5 kg', '159.5 lb']);
});
