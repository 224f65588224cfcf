// The README shows pictures of pages: each is there, a picture, of modest size, and drawn by the tool that draws them all.

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { PICTURED, PICTURES } from '../tools/pictured.ts';

const MOST_BYTES = 300_000;
const PNG = '89504e470d0a1a0a';

test('every picture of the README is there, and no other', () => {
  const shown = [...readFileSync('README.md', 'utf8').matchAll(/!\[([^\]]+)\]\(([^)]+)\)/gu)];
  const drawn = PICTURES.map(({ file }) => join('examples', PICTURED, 'pictures', file));
  expect(new Set(shown.map(([, , path]) => path))).toEqual(new Set(drawn));
  for (const [, words = '', path = ''] of shown) {
    const bytes = readFileSync(path);
    expect([path, words.length > 20]).toEqual([path, true]);
    expect([path, bytes.subarray(0, 8).toString('hex')]).toEqual([path, PNG]);
    expect([path, bytes.length < MOST_BYTES]).toEqual([path, true]);
  }
});
