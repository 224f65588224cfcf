// What a reader may count on: every source file says what it is before anything else, and every exported function says
// what it takes and gives.

import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const files = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts'))
  .map((name) => ({ name: `src/${name}`, lines: readFileSync(`src/${name}`, 'utf8').split('\n') }));

/** A function by either of its two forms; a constant of another kind is none. */
const EXPORTED_FUNCTION =
  /^export (async )?function\b|^export const \w+(: [^=]+)? = (async )?(<.*>)?(\(.*\)(: .+)? =>|\($|\w+ =>)/;

const MOST_HEADER_LINES = 5;

test('every file begins with a comment of a few lines, and an empty line ends it', () => {
  expect(files.length).toBeGreaterThan(500);
  const other = files.filter(({ lines }) => {
    const end = lines.findIndex((line) => !line.startsWith('// '));
    return end < 1 || end > MOST_HEADER_LINES || lines[end] !== '';
  });
  expect(other.map(({ name }) => name)).toEqual([]);
});

test('every exported function has a comment above it', () => {
  const found = files.flatMap(({ name, lines }) =>
    lines.flatMap((line, at) =>
      EXPORTED_FUNCTION.test(line) ? [{ where: `${name}:${at + 1}`, above: lines[at - 1] ?? '' }] : [],
    ),
  );
  expect(found.length).toBeGreaterThan(800);
  expect(found.filter(({ above }) => !above.endsWith('*/')).map(({ where }) => where)).toEqual([]);
});
