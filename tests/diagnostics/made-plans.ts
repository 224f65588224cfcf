// Plans too large, or too odd for a folder in git: made when the tests run, and reported as the fixture folder of the same
// name says.

import { mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';

const MEGABYTE = 1_000_000;

const lines = (count: number, line: (index: number) => string): string =>
  Array.from({ length: count }, (_, index) => `${line(index)}\n`).join('');

const SEASON = 'footfall: 1\nseason: { title: Spring, starts: 2027-01-04 }\n';

/** What is in the season.yaml of each. */
const made: Readonly<Record<string, () => string>> = {
  'language/ten-thousand-keys': () => SEASON + lines(10_000, (index) => `key-${String(index)}: 1`),
  'yaml/ten-thousand-keys-twice': () =>
    `${SEASON}squads:\n${lines(10_000, (index) => `  squad-${String(index % 5000)}: { level: beginner }`)}`,
  'yaml/thousand-levels': () =>
    `${SEASON}athletes:\n${lines(1000, (index) => `${' '.repeat(index + 1)}level-${String(index)}:`)}`,
  'yaml/thousand-brackets': () => `${SEASON}athletes: ${'['.repeat(1000)}${']'.repeat(1000)}\n`,
  'files/link-outside': () => `${SEASON}files: [linked.yaml]\nroster: linked.csv\n`,
  'source/fifty-megabytes': () => SEASON + `# ${'x'.repeat(98)}\n`.repeat((50 * MEGABYTE) / 101),
};

/** Links in the folder of one, and where they lead: to a file that is outside of it on every machine. */
const LINKS: Readonly<Record<string, readonly (readonly [name: string, target: string])[]>> = {
  'files/link-outside': [
    ['linked.yaml', process.execPath],
    ['linked.csv', process.execPath],
  ],
};

/** A folder with the plan, if this fixture's plan is made; it is gone when the tests of the file have run. */
export function madePlan(fixture: string): string | undefined {
  const text = made[fixture];
  if (text === undefined) return undefined;
  const folder = mkdtempSync(join(tmpdir(), 'footfall-made-'));
  afterAll(() => {
    rmSync(folder, { recursive: true, force: true });
  });
  writeFileSync(join(folder, 'season.yaml'), text());
  for (const [name, target] of LINKS[fixture] ?? []) symlinkSync(target, join(folder, name));
  return folder;
}
