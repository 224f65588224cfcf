// Every plan that is kept as an example of something wrong goes through the whole program: it is told in words, and never
// ends as a bug of ours.

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { footfall } from './footfall.ts';

const HERE = 'tests/diagnostics';

const entries = readdirSync(HERE, { withFileTypes: true })
  .filter((area) => area.isDirectory())
  .flatMap(({ name: area }) => readdirSync(join(HERE, area)).map((what) => join(HERE, area, what)))
  .map((folder) => {
    const named = join(folder, 'entry.txt');
    return existsSync(named) ? join(folder, 'plan', readFileSync(named, 'utf8').trim()) : join(folder, 'plan');
  });

test.each(entries)('check %s', async (entry) => {
  const { status, out, err } = await footfall(['check', entry]);
  expect([0, 1, 2]).toContain(status);
  expect(err).toBe('');
  expect(out).toMatch(/: (error|warning|notice): /);
});
