// The evidence rows: complete, unique, each with a mark and a place it was read.

import { describe, expect, it } from 'vitest';
import { MARK_WORDS, SOURCES, findSource, getSource } from '../../../src/library/sources.ts';

function numbered(letter: string, last: number): readonly string[] {
  return Array.from({ length: last }, (_, index) => `${letter}${index + 1}`);
}

describe('the sources', () => {
  it('holds every numbered row and the rows of the chart, the equations, growth and load', () => {
    const expected = [
      ...numbered('V', 15),
      ...numbered('S', 13),
      ...numbered('G', 13),
      ...numbered('D', 9),
      ...numbered('R', 9),
      ...numbered('P', 15),
      ...numbered('J', 16),
      'load-chart',
      'one-rep-max',
      'maturity-offset',
      'maturity-offset-simple',
      'session-load',
      'jumpers-knee',
    ];
    expect(SOURCES.map((source) => source.id).toSorted()).toEqual(expected.toSorted());
  });

  it('gives each row a fact, a mark and a source', () => {
    for (const { id, fact, mark, source } of SOURCES) {
      expect(fact.length, id).toBeGreaterThan(20);
      expect(Object.keys(MARK_WORDS), id).toContain(mark);
      expect(source, id).not.toBe('');
    }
  });

  it('says "from memory" wherever a value is from memory', () => {
    for (const row of SOURCES.filter((one) => one.mark === 'M')) {
      expect(`${row.fact} ${row.source}`, row.id).toMatch(/from memory|mechanics/);
    }
  });

  it('names a year or a text for everything published', () => {
    for (const row of SOURCES.filter((one) => one.mark === 'P')) {
      expect(row.source, row.id).toMatch(/\d{4}|PLoS ONE/);
    }
  });

  it('gets a row, misses an unknown one', () => {
    expect(getSource('V1').mark).toBe('S');
    expect(findSource('V99')).toBeUndefined();
    expect(() => getSource('V99')).toThrow('V99');
  });
});
