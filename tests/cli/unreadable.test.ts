// What stands where a file of a plan should be and is none: which one it is and why it can't be read is said by the path
// that somebody would type, and nothing is waited for.

import { mkdirSync, mkdtempSync, realpathSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import type { Server } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { footfall, shell } from './footfall.ts';

vi.setConfig({ testTimeout: 120_000 });

// By its real path, as paths are told as they were given.
const folder = realpathSync(mkdtempSync(join(tmpdir(), 'footfall-unreadable-')));
const at = (...path: readonly string[]): string => join(folder, ...path);
let server: Server;

/** What isn't an ordinary file, by what it is. */
const THINGS: Readonly<Record<string, (path: string) => unknown>> = {
  folder: (path) => mkdirSync(path),
  dangling: (path) => {
    symlinkSync('gone', path);
  },
  circle: (path) => {
    symlinkSync(path, path);
  },
  pipe: async (path) => await shell(`mkfifo ${path}`),
  device: (path) => {
    symlinkSync('/dev/zero', path);
  },
};

const SEASON = [
  'footfall: 1',
  'season: { title: A, starts: 2027-01-04, ends: 2027-01-31 }',
  'places: { hall: { surface: court } }',
  'slots: [{ day: monday, place: hall, minutes: 60 }]',
].join('\n');
const ATHLETES = 'athletes: { ada: { name: Ada, level: beginner } }';

beforeAll(async () => {
  for (const [name, make] of Object.entries(THINGS)) {
    for (const part of ['entry', 'files', 'roster', 'record']) mkdirSync(at(`${part}-${name}`));
    await make(at(`entry-${name}`, 'season.yaml'));
    await make(at(`files-${name}`, 'squad.yaml'));
    await make(at(`roster-${name}`, 'squad.csv'));
    await make(at(`record-${name}`, 'done.csv'));
    const season = (part: string, more: string): void => {
      writeFileSync(at(`${part}-${name}`, 'season.yaml'), `${SEASON}\n${more}\n`);
    };
    season('files', 'files: [squad.yaml]');
    season('roster', 'roster: squad.csv');
    season('record', `${ATHLETES}\nrecord: { done: done.csv }`);
  }
  mkdirSync(at('entry-socket'));
  server = createServer();
  await new Promise<void>((resolved) => {
    server.listen(at('entry-socket', 'season.yaml'), resolved);
  });
  mkdirSync(at('bare'));
  mkdirSync(at('bare', 'old.yaml'));
  symlinkSync('gone', at('nowhere'));
});
afterAll(async () => {
  await new Promise((resolved) => {
    server.close(resolved);
  });
  rmSync(folder, { recursive: true, force: true });
});

const REASONS = [
  ['folder', 'is a folder, and a file is wanted'],
  ['dangling', 'cannot be read: the link leads nowhere'],
  ['circle', 'cannot be read: its links lead in a circle'],
  ['pipe', 'is a pipe, a device or the like, and a file is wanted'],
] as const;
/** Beside the plan a device is as good as a file outside of it. */
const ENTRY_REASONS = [
  ...REASONS,
  ['device', 'is a pipe, a device or the like, and a file is wanted'],
  ['socket', 'is a pipe, a device or the like, and a file is wanted'],
] as const;

describe('an entry file', () => {
  test.each(ENTRY_REASONS)('%s: it is named itself where its folder was given', async (name, reason) => {
    const path = at(`entry-${name}`, 'season.yaml');
    const told = `footfall: error: "${path}" ${reason} [`;
    for (const given of [at(`entry-${name}`), `${at(`entry-${name}`)}/`, path]) {
      for (const command of ['build', 'format', 'review']) {
        const { status, out, err } = await footfall([command, given]);
        expect([status, out]).toEqual([2, '']);
        expect(err.startsWith(told), `${command} ${given}: ${err}`).toBe(true);
      }
      const checked = await footfall(['check', given]);
      expect([checked.status, (checked.out + checked.err).startsWith(told)]).toEqual([2, true]);
    }
  });

  test('is named as briefly as its folder', async () => {
    const { status, err } = await shell(`p=$PWD/bin/footfall.js; cd ${at('entry-pipe')} && timeout 60 node $p build`);
    expect(status).toBe(2);
    expect(err).toContain('error: "season.yaml" is a pipe');
    const near = await shell(`p=$PWD/bin/footfall.js; cd ${folder} && timeout 60 node $p build --watch ./entry-pipe/`);
    expect(near.status).toBe(2);
    expect(near.err).toContain('error: "./entry-pipe/season.yaml" is a pipe');
  });
});

describe('what a plan names', () => {
  test.each(REASONS)('%s: it is told at its line', async (name, reason) => {
    const cases = [
      ['files', 'squad.yaml', 'files: [squad.yaml]'],
      ['roster', 'squad.csv', 'roster: squad.csv'],
      ['record', 'done.csv', 'record: { done: done.csv }'],
    ] as const;
    for (const [part, file, line] of cases) {
      const { status, err } = await footfall(['build', at(`${part}-${name}`)]);
      expect(status).toBe(1);
      expect(err).toContain(`error: "${file}" ${reason} [`);
      expect(err).toContain(line);
    }
  });

  test.each(REASONS)('%s: who writes the record does not wait for it', async (name, reason) => {
    const plan = at(`record-${name}`);
    for (const date of ['', '--date 2026-01-05 --kind test']) {
      const { status, err } = await shell(`timeout 60 $f done --plan ${plan} ${date}`);
      expect([status, err]).toEqual([1, expect.stringContaining(`error: "done.csv" ${reason} [`)]);
    }
  });
});

describe('a path', () => {
  test.each([
    ['missing', 'there is no file "', '"'],
    ['missing/season.yaml', 'there is no file "', '"'],
    ['nowhere', '"', '" cannot be read: the link leads nowhere'],
    ['entry-circle/season.yaml/x', '"', '" cannot be read: its links lead in a circle'],
    ['bare', 'the folder "', '" has no season.yaml [files/no-season]\n  help: begin a plan with: footfall new '],
    ['bare/old.yaml', '"', '" is a folder, and a file is wanted'],
  ])('%s: what is no plan is told as it was given', async (path, before, after) => {
    const { status, out, err } = await footfall(['build', at(path)]);
    expect([status, out]).toEqual([2, '']);
    expect(err).toContain(`error: ${before}${at(path)}${after}`);
  });
});
