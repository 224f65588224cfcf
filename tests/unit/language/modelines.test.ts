// The first line of each example file points an editor at the schema, so that typing in any of them is helped.

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { describe, expect, it, test } from 'vitest';
import { readPlan } from '../../../src/read/read-plan.ts';
import { fileSystem } from '../../../src/host/files.ts';

const examples = readdirSync('examples', { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => join('examples', name));

const planFiles = examples.flatMap((folder) =>
  readPlan(folder, fileSystem)
    .value.files.map(({ path }) => join(folder, path))
    .filter((path) => path.endsWith('.yaml')),
);

test('files that plans include are among them', () => {
  expect(planFiles.filter((path) => !path.endsWith('season.yaml')).length).toBeGreaterThan(2);
});

describe.each(planFiles)('%s', (path) => {
  it('names the schema on its first line, by a path from its own folder', () => {
    const [, named = ''] = /^# yaml-language-server: \$schema=(\S+)\n/u.exec(readFileSync(path, 'utf8')) ?? [];
    const found = resolve(dirname(path), named);
    expect(found).toBe(resolve('schemas/plan.schema.json'));
    expect(existsSync(found)).toBe(true);
  });
});
