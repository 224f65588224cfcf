// The schema an editor is given: up to date, valid in strict mode, and of one mind with the decoder on every example.

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { plainValue } from './plain-value.ts';
import { planSchema } from '../../../src/language/schema.ts';
import { parseYaml } from '../../../src/read/parse-yaml.ts';
import { sourceFile } from '../../../src/source/source-file.ts';
import { schemaText } from '../../tools/schema-text.ts';

const validate = new Ajv2020({ strict: true, allErrors: true }).compile(planSchema());

function valueOf(path: string, text: string): unknown {
  const { value, diagnostics } = parseYaml(sourceFile(path, text));
  expect(diagnostics).toEqual([]);
  return plainValue(value.root);
}

const examples = readdirSync('examples', { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.yaml'))
  .map((path) => join('examples', path))
  .toSorted();

test('schemas/plan.schema.json is what the shapes make: otherwise run `npm run schemas`', () => {
  expect(readFileSync('schemas/plan.schema.json', 'utf8')).toBe(schemaText(planSchema()));
});

test('there are examples to check', () => {
  expect(examples.length).toBeGreaterThan(5);
});

test.each(examples)('%s is valid', (path) => {
  validate(valueOf(path, readFileSync(path, 'utf8')));
  expect(validate.errors ?? []).toEqual([]);
});

const DRILL =
  'name: Hop, family: hops, rung: 1, cycle: fast, tier: low, legs: both, contacts-per-rep: 1, from-level: beginner, reps: 3, sets: 2, rest: 60 s, cue: quick, stop: heavy landings';

describe('a slip is marked:', () => {
  test.each([
    ['an unknown key', 'athletes: { mira: { mas: 68 kg } }'],
    ['a bare number', 'athletes: { mira: { mass: 68 } }'],
    ['a wrong unit', 'places: { hall: { kit: { boxes: [1.76 kg] } } }'],
    ['a date in another form', 'season: { starts: 4.1.2027 }'],
    ['a day that is none', 'practice: [{ day: teusday, jumps: 60 }]'],
    ['a word that is none of the choice', 'competitions: [{ name: Cup, date: 2027-04-24, prepare: peek }]'],
    ['a reason that is missing', 'pins: [{ week: 2027-03-01, kind: deload }]'],
    ['a drill without a direction, and no other key missing', `drills: { hop: { ${DRILL} } }`],
    ['a rule nobody knows', 'rules: { weekly-raise: [{ most: 8 %, because: two back }] }'],
    ['a parameter without its unit', 'rules: { weekly-rise: [{ most: 8, because: two back }] }'],
    [
      'a drill and a lift in one line',
      'programmes: { p: [{ week: 1, mon: [{ drill: pogo, lift: plank, sets: 1, reps: 1 }] }] }',
    ],
    ['a key at the wrong level', 'mass: 68 kg'],
  ])('%s', (_, text) => {
    expect(validate(valueOf('plan.yaml', text))).toBe(false);
  });
});

test('the drill that is marked without a direction is valid with one', () => {
  validate(valueOf('plan.yaml', `drills: { hop: { ${DRILL}, direction: vertical } }`));
  expect(validate.errors ?? []).toEqual([]);
});

test('every key at the left edge has a description', () => {
  const { properties } = planSchema();
  for (const [key, shape] of Object.entries(properties as Record<string, { description?: string; $ref?: string }>)) {
    expect(shape.description?.length ?? 0, key).toBeGreaterThan(5);
  }
});
