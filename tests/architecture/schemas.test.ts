// The schemas that editors and scripts read: that of a plan is what the shapes give now, and each is a valid schema.
// The schemas of a build, of a diff and of a review are written by hand, as a promise to those who read them; tests of
// `--format json` hold them.

import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { expect, test } from 'vitest';
import { schemaFiles } from '../tools/schema-files.ts';

const BY_HAND = ['build.schema.json', 'diff.schema.json', 'review.schema.json'];

const generated = schemaFiles();
const names = [...generated.keys(), ...BY_HAND].toSorted();

test('every schema has its file, and every file its schema', () => {
  expect(readdirSync('schemas').toSorted()).toEqual(names);
});

test.each([...generated])('%s is fresh (if not: npm run schemas)', (name, text) => {
  expect(readFileSync(join('schemas', name), 'utf8')).toBe(text);
});

test.each(names)('%s is a schema', (name) => {
  const ajv = new Ajv2020({ strict: false, validateFormats: false });
  expect(() => ajv.compile(JSON.parse(readFileSync(join('schemas', name), 'utf8')))).not.toThrow();
});
