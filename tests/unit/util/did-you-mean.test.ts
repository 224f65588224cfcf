// Near words: what is offered, and what is too far to offer.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { didYouMean, editDistance, nearest } from '../../../src/util/did-you-mean.ts';

describe('editDistance', () => {
  // The first three are the usual examples of the literature (Levenshtein; optimal string alignment), from memory.
  it.each([
    ['kitten', 'sitting', 3],
    ['saturday', 'sunday', 3],
    ['ca', 'abc', 3],
    ['squda', 'squad', 1],
    ['', 'abc', 3],
    ['same', 'same', 0],
  ])('of %s and %s is %i', (a, b, distance) => {
    expect(editDistance(a, b, 10)).toBe(distance);
    expect(editDistance(b, a, 10)).toBe(distance);
  });

  it('is over the limit exactly if the true distance is', () => {
    const word = fc.string({ unit: fc.constantFrom('a', 'b', 'c'), maxLength: 8 });
    fc.assert(
      fc.property(word, word, fc.integer({ min: 0, max: 8 }), (a, b, most) => {
        const distance = editDistance(a, b, 100);
        const limited = editDistance(a, b, most);
        expect(limited <= most).toBe(distance <= most);
        expect(Math.min(limited, most + 1)).toBe(Math.min(distance, most + 1));
        expect(distance).toBeGreaterThanOrEqual(Math.abs(a.length - b.length));
        expect(distance).toBeLessThanOrEqual(Math.max(a.length, b.length));
        expect(distance === 0).toBe(a === b);
      }),
    );
  });
});

describe('nearest', () => {
  it('takes of equally near ones the one whose letter was left out', () => {
    expect(nearest('limts', ['lifts', 'limits', 'level'])).toBe('limits');
    expect(nearest('limts', ['limits', 'lifts', 'level'])).toBe('limits');
    // Neither lacks a letter: the first in the order of their text.
    expect(nearest('lixts', ['limts', 'lifts'])).toBe('lifts');
  });

  const keys = ['contacts-a-session', 'contacts-a-week', 'sessions-a-week', 'level', 'mass', 'now', 'born'];

  it.each([
    ['contacts-per-session', 'contacts-a-session'],
    ['contacts_a_week', 'contacts-a-week'],
    ['Level', 'level'],
    ['mas', 'mass'],
    ['lvel', 'level'],
    ['leve1', 'level'],
  ])('%s is taken for %s', (word, meant) => {
    expect(nearest(word, keys)).toBe(meant);
  });

  it.each(['weather', 'x', 'no', '', 'squad'])('%j is like none of them', (word) => {
    expect(nearest(word, keys)).toBeUndefined();
    expect(didYouMean(word, keys)).toBeUndefined();
  });

  it('takes the first by its text of equally near ones, whatever their order', () => {
    expect(nearest('hall', ['hals', 'halt', 'hale'])).toBe('hale');
    expect(nearest('hall', ['hale', 'halt', 'hals'])).toBe('hale');
  });

  it('asks in words', () => {
    expect(didYouMean('masss', keys)).toBe('did you mean "mass"?');
  });
});
