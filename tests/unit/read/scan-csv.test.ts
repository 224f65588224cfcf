// CSV to cells, held against csv-parse: the same cells, and each where it says it is.

import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Diagnostic } from '../../../src/diagnostics/types.ts';
import { scanCsv } from '../../../src/read/scan-csv.ts';
import type { CsvRow } from '../../../src/read/scan-csv.ts';
import { sourceFile } from '../../../src/source/source-file.ts';

function scanned(text: string): { rows: readonly CsvRow[]; diagnostics: readonly Diagnostic[] } {
  const diagnostics: Diagnostic[] = [];
  return { rows: [...scanCsv(sourceFile('roster.csv', text), text, diagnostics)], diagnostics };
}

const textsOf = (text: string): readonly (readonly string[])[] =>
  scanned(text).rows.map(({ cells }) => cells.map((cell) => cell.text));

describe('cells', () => {
  it.each([
    [
      'a,b\nc,d\n',
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
    ],
    [
      'a,b\r\nc,d',
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
    ],
    [
      ' a , b\n\nc,\n',
      [
        ['a', 'b'],
        ['c', ''],
      ],
    ],
    ['"a,b","c ""d"""\n', [['a,b', 'c "d"']]],
    ['"a\nb",c\n', [['a\nb', 'c']]],
    ['a,b\n,,\n', [['a', 'b']]],
    ['', []],
    ['a', [['a']]],
    ['""\na', [['a']]],
  ])('of %j', (text, cells) => {
    expect(textsOf(text)).toEqual(cells);
  });

  it('stand where they say', () => {
    const text = 'id, name\nmira , "Mira ""M"" K."\n';
    const [, row] = scanned(text).rows;
    expect(row?.cells.map(({ start, end }) => text.slice(start, end))).toEqual(['mira', '"Mira ""M"" K."']);
    expect(row?.cells.map(({ textStart }) => text.slice(textStart, textStart + 4))).toEqual(['mira', 'Mira']);
    expect(text.slice(row?.start, row?.end)).toBe('mira , "Mira ""M"" K."');
  });

  it('with quotes in the wrong place are reported there', () => {
    const text = 'a"b,"c" d,"e\n';
    expect(scanned(text).diagnostics.map(({ code, span }) => [code, span?.start])).toEqual([
      ['csv/stray-quote', 1],
      ['csv/stray-quote', 6],
      ['csv/unclosed-quote', 10],
    ]);
  });
});

describe('csv-parse', () => {
  const cell = fc.string({ unit: fc.constantFrom('a', 'b', ' ', ',', '"', '\n', '\r\n', 'é', ';', '1'), maxLength: 5 });
  const written = (text: string): string =>
    /[",\n\r]/u.test(text) || text !== text.trim() ? `"${text.replaceAll('"', '""')}"` : text;

  it('finds the same cells, whatever is in them', () => {
    const row = fc.array(cell, { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(fc.array(row), fc.constantFrom('\n', '\r\n'), (rows, lineEnd) => {
        const text = rows.map((cells) => cells.map((each) => written(each)).join(',') + lineEnd).join('');
        const theirs: string[][] = parse(text, {
          relaxColumnCount: true,
          skipEmptyLines: true,
          recordDelimiter: lineEnd,
        });
        const trimmed = theirs.map((cells) => cells.map((each) => each.trim()));
        expect(textsOf(text)).toEqual(trimmed.filter((cells) => cells.some((each) => each !== '')));
        expect(scanned(text).diagnostics).toEqual([]);
      }),
    );
  });
});

describe('whatever the text', () => {
  it('nothing is thrown, and the cells stand in it, one after another', () => {
    const text = fc.oneof(
      fc.string({ unit: fc.constantFrom('a', ',', '"', '\n', '\r', ' ', '\t', ';', '🏐'), maxLength: 60 }),
      fc.string({ unit: 'binary' }),
    );
    fc.assert(
      fc.property(text, (any) => {
        let last = 0;
        for (const { cells } of scanned(any).rows) {
          for (const { start, end } of cells) {
            expect(start).toBeGreaterThanOrEqual(last);
            expect(end).toBeGreaterThanOrEqual(start);
            last = end;
          }
        }
        expect(last).toBeLessThanOrEqual(any.length);
      }),
    );
  });
});
