// Every fixture a schema can reject is rejected by the schema, so that an editor marks it while it is typed: of each
// fixture whose mistakes are all in the shape of single values and keys, at least one file is invalid.

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { plainValue } from './plain-value.ts';
import { planSchema } from '../../../src/language/schema.ts';
import { parseYaml } from '../../../src/read/parse-yaml.ts';
import { sourceFile } from '../../../src/source/source-file.ts';
import { fixtures, here } from '../../diagnostics/fixture-folders.ts';

/** What the shape of one value or group shows. */
const SEEN_BY_A_SCHEMA: ReadonlySet<string> = new Set([
  'language/not-a-plan',
  'language/unknown-key',
  'language/misplaced-key',
  'language/missing-key',
  'language/wrong-kind',
  'language/bare-number',
  'language/wrong-unit',
  'language/not-a-quantity',
  'language/unit-not-wanted',
  'language/not-a-number',
  'language/no-such-day',
  'language/wrong-word',
  'language/date-form',
  'language/time-form',
  'language/unknown-rule',
]);

/** Fixtures of those codes that a schema can't see, with the reason. */
const UNSEEN: ReadonlyMap<string, string> = new Map([
  ['language/version-with-a-point', 'to JSON 1.0 is the whole number 1'],
  ['language/missing-key-in-a-season', 'a season may be put together from several files'],
]);

interface Reported {
  readonly diagnostics: readonly { readonly code: string; readonly file?: string }[];
}

const validate = new Ajv2020({ strict: true, allErrors: true }).compile(planSchema());

const yamlFiles = (folder: string): readonly string[] =>
  existsSync(folder)
    ? readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((path) => path.endsWith('.yaml'))
    : [];

const reportedIn = (fixture: string): Reported => JSON.parse(readFileSync(`${here}/${fixture}/expected.json`, 'utf8'));

const visible = fixtures.filter((fixture) => {
  const { diagnostics } = reportedIn(fixture);
  const seen = diagnostics.filter(({ code, file }) => SEEN_BY_A_SCHEMA.has(code) && file?.endsWith('.yaml'));
  const isReadable = diagnostics.every(({ code }) => !/^(?:yaml|source|files)\//u.test(code));
  return seen.length > 0 && isReadable && existsSync(`${here}/${fixture}/plan`);
});

test('there are fixtures to look at', () => {
  expect(visible.length).toBeGreaterThan(20);
  expect([...UNSEEN.keys()].filter((fixture) => !visible.includes(fixture))).toEqual([]);
});

describe('the schema marks', () => {
  test.each(visible.filter((fixture) => !UNSEEN.has(fixture)))('%s', (fixture) => {
    const folder = join(here, fixture, 'plan');
    const invalid = yamlFiles(folder).filter((path) => {
      const text = readFileSync(join(folder, path), 'utf8');
      return !validate(plainValue(parseYaml(sourceFile(path, text)).value.root));
    });
    expect(invalid).not.toEqual([]);
  });
});
