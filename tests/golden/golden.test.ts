// A build of every example, byte for byte, under two time zones and locales. To write them anew after a change that is
// meant: FOOTFALL_UPDATE=1 npx vitest run --config tests/vitest.config.ts tests/golden, then read the difference.

import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test, vi } from 'vitest';
import { TABLE_NAMES } from '../../src/report/table-names.ts';
import { shell } from '../cli/footfall.ts';

// A season takes its time to compile, and a busy machine takes longer.
vi.setConfig({ testTimeout: 120_000 });

const HERE = 'tests/golden';
const WRITES = process.env['FOOTFALL_UPDATE'] === '1';

const WHERE = [
  { TZ: 'Pacific/Kiritimati', LC_ALL: 'C.UTF-8' },
  { TZ: 'America/St_Johns', LC_ALL: 'tr_TR.UTF-8', LANG: 'tr_TR.UTF-8' },
];

/** File to arguments; `EXAMPLE` stands for the plan. */
const OUTPUTS: Readonly<Record<string, readonly string[]>> = {
  ...Object.fromEntries(
    TABLE_NAMES.map((table) => [`${table}.csv`, ['build', 'EXAMPLE', '--table', table, '--format', 'csv', '--quiet']]),
  ),
  'season.txt': ['build', 'EXAMPLE', '--quiet'],
  'weeks.txt': ['build', 'EXAMPLE', '--table', 'weeks', '--quiet'],
  'check.txt': ['check', 'EXAMPLE'],
  // The digest of every page, table and calendar, as the folder lists them itself.
  'out.sha256': [
    'build',
    'EXAMPLE',
    '--out',
    '"${D:=$(mktemp -d)}/out"',
    '--quiet',
    '&&',
    'cat',
    '"$D/out/.footfall"',
    '&&',
    'rm',
    '-r',
    '"$D"',
  ],
};

/** The Monday page, of examples with something on record. */
const REVIEWS: Readonly<Record<string, readonly string[]>> = {
  'review.txt': ['review', 'EXAMPLE'],
  'review.json': ['review', 'EXAMPLE', '--format', 'json'],
  'review.html': ['review', 'EXAMPLE', '--format', 'html'],
  'review-weeks.csv': ['review', 'EXAMPLE', '--table', 'weeks', '--format', 'csv'],
};

const examples = readdirSync('examples').toSorted();

function outputsOf(example: string): Readonly<Record<string, readonly string[]>> {
  const record = `examples/${example}/record/done.csv`;
  const isEmpty = !existsSync(record) || readFileSync(record, 'utf8').trim().split('\n').length < 2;
  return isEmpty ? OUTPUTS : { ...OUTPUTS, ...REVIEWS };
}

describe.each(examples)('%s', (example) => {
  test.each(Object.entries(outputsOf(example)))('%s', async (file, args) => {
    const runs = await Promise.all(
      WHERE.map((env) => shell(`$f ${args.join(' ').replace('EXAMPLE', `examples/${example}`)}`, env)),
    );
    const [first] = runs;
    expect(runs.map(({ status }) => status)).toEqual(runs.map(() => 0));
    expect(runs.map(({ out }) => out === first?.out)).toEqual(runs.map(() => true));
    const path = join(HERE, example, file);
    if (WRITES) {
      mkdirSync(join(HERE, example), { recursive: true });
      writeFileSync(path, first?.out ?? '');
    }
    expect(existsSync(path), `${path} is missing`).toBe(true);
    expect(first?.out).toBe(readFileSync(path, 'utf8'));
  });
});

test('no golden is left over from an example or an output that is gone', () => {
  const folders = readdirSync(HERE, { withFileTypes: true }).filter((entry) => entry.isDirectory());
  expect(folders.map(({ name }) => name).toSorted()).toEqual(examples);
  for (const { name } of folders)
    expect(readdirSync(join(HERE, name)).toSorted()).toEqual(Object.keys(outputsOf(name)).toSorted());
});
