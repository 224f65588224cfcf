// What a reader may count on: every source file says what it is before anything else, every exported function says what it
// takes and gives, and functions have one form.

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

/** Where a constant that is a function without a type of its own begins, and where its parameters end on a later line. */
const ARROW_FUNCTION = /^(export )?const \w+ = (async )?(<.*>)?\(/;
const BODY_FOLLOWS = /=> \{$/;

test('a function with a body is declared as one; a constant is an expression, or has a type of its own', () => {
  const found = files.flatMap(({ name, lines }) =>
    lines.flatMap((line, at) => {
      if (!ARROW_FUNCTION.test(line)) return [];
      const head = line.endsWith('(') ? lines.slice(at).find((later) => later.startsWith(')')) : line;
      return BODY_FOLLOWS.test(head ?? '') ? [`${name}:${at + 1}`] : [];
    }),
  );
  expect(found).toEqual([]);
});
