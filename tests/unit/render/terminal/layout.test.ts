import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hanging, layOut, pad, wrap } from '../../../../src/render/terminal/layout.ts';
import type { LayoutColumn } from '../../../../src/render/terminal/layout.ts';
import { displayWidth } from '../../../../src/util/display-width.ts';

interface Item {
  readonly name: string;
  readonly count: number;
  readonly why: string;
}

const items: readonly Item[] = [
  { name: 'Ada', count: 5, why: 'as far as 160 may rise' },
  { name: '李小龙', count: 120, why: "the phase's target" },
];

const columns: readonly LayoutColumn<Item>[] = [
  { title: 'name', align: 'left', text: ({ name }) => name },
  { title: 'count', align: 'right', text: ({ count }) => String(count), spare: 1 },
  { title: 'why', align: 'left', text: ({ why }) => why, wrapAt: 10 },
];

const plain = (text: string): string => text;

test('numbers to the right, words to the left, wide letters counted twice', () => {
  expect(layOut(items, columns, 80, plain)).toEqual([
    'name    count  why',
    'Ada         5  as far as 160 may rise',
    "李小龙    120  the phase's target",
  ]);
});

test('what may wrap wraps first', () => {
  expect(layOut(items, columns, 28, plain)).toEqual([
    'name    count  why',
    'Ada         5  as far as 160',
    '               may rise',
    "李小龙    120  the phase's",
    '               target',
  ]);
});

test('then what can be spared goes', () => {
  expect(layOut(items, columns, 19, plain)[0]).toBe('name    why');
});

test('paint goes on after the widths are known', () => {
  const painted = columns.map((column) => ({ ...column, paint: (text: string) => `<${text}>` }));
  expect(layOut(items.slice(0, 1), painted, 80, plain)[1]).toBe('<Ada >  <    5>  <as far as 160 may rise>');
});

test('no rows are a header', () => {
  expect(layOut([], columns, 80, plain)).toEqual(['name  count  why']);
});

describe('wrap', () => {
  test('keeps whole words and loses none', () => {
    fc.assert(
      fc.property(
        fc.array(fc.stringMatching(/^\S{1,12}$/), { minLength: 1 }),
        fc.integer({ min: 12, max: 40 }),
        (words, width) => {
          const lines = wrap(words.join(' '), width);
          expect(lines.every((line) => displayWidth(line) <= width)).toBe(true);
          if (words.every((word) => displayWidth(word) <= width)) expect(lines.join(' ')).toBe(words.join(' '));
        },
      ),
    );
  });

  test('shortens a word that is too long by itself', () => {
    expect(wrap('a reconditioning', 8)).toEqual(['a', 'recondi…']);
  });
});

test('pad fills up and never cuts', () => {
  expect([pad('ab', 4, 'left'), pad('ab', 4, 'right'), pad('abcdef', 4, 'left')]).toEqual(['ab  ', '  ab', 'abcdef']);
});

test('hanging sets the later lines in as far as the first', () => {
  expect(hanging('stop: ', 'heels hit first, or the knees fall in', 30)).toEqual([
    'stop: heels hit first, or the',
    '      knees fall in',
  ]);
});
