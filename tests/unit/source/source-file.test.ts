// Lines and columns of files with every kind of line end.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lineIndexOf, lineStart, lineText, placeOf, sourceFile, textOf } from '../../../src/source/source-file.ts';

describe('sourceFile', () => {
  it.each([
    ['', ['']],
    ['a', ['a']],
    ['a\nb\n', ['a', 'b', '']],
    ['a\r\nb\r\n\r\nc', ['a', 'b', '', 'c']],
    ['a\rb\r\rc', ['a', 'b', '', 'c']],
    ['a\r\r\nb', ['a', '', 'b']],
    ['a\n\rb', ['a', '', 'b']],
  ])('splits %j into lines', (text, lines) => {
    const file = sourceFile('season.yaml', text);
    expect(file.lineStarts.map((_, index) => lineText(file, index))).toEqual(lines);
  });
});

describe('placeOf', () => {
  it('counts lines and columns from 1, in UTF-16 units', () => {
    const file = sourceFile('season.yaml', 'one\r\nzwölf 🏐 x\n');
    const start = file.text.indexOf('x');
    expect(placeOf(file, { file: 'season.yaml', start, end: start + 1 })).toEqual({
      file: 'season.yaml',
      line: 2,
      column: 10,
      endLine: 2,
      endColumn: 11,
    });
  });

  it('puts the end of a text into its last line', () => {
    const file = sourceFile('a.yaml', 'a\nbc');
    expect(placeOf(file, { file: 'a.yaml', start: 4, end: 4 })).toMatchObject({ line: 2, column: 3 });
  });

  it('spans lines', () => {
    const file = sourceFile('a.yaml', 'ab\ncd\nef');
    const span = { file: 'a.yaml', start: 1, end: 7 };
    expect(placeOf(file, span)).toMatchObject({ line: 1, column: 2, endLine: 3, endColumn: 2 });
    expect(textOf(file, span)).toBe('b\ncd\ne');
  });

  it('agrees with counting line ends by hand, for any text', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom('a', '\n', '\r', '\r\n', '🏐')), fc.nat(), (parts, seed) => {
        const file = sourceFile('a.yaml', parts.join(''));
        const offset = seed % (file.text.length + 1);
        const line = lineIndexOf(file, offset);
        const before = file.text.slice(0, offset);
        // A line end that is cut in two has not ended its line yet.
        const whole = before.endsWith('\r') && file.text[offset] === '\n' ? before.slice(0, -1) : before;
        expect(line).toBe(whole.split(/\r\n|\r|\n/u).length - 1);
        expect(lineStart(file, line)).toBeLessThanOrEqual(offset);
      }),
    );
  });
});
