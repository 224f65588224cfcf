// `footfall new`: the folder builds at once, git checks it before a commit, and nothing that was there is touched.

import { execFileSync, spawnSync } from 'node:child_process';
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { footfall } from './footfall.ts';

const STARTS = ['--starts', '2027-01-06'];

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'footfall-new-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

const filesBelow = (path: string): readonly string[] =>
  readdirSync(path, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(path.length + 1))
    .toSorted();

test('says once what keeps it from writing', async () => {
  writeFileSync(join(folder, 'file'), '');
  const { status, err } = await footfall(['new', join(folder, 'file', 'season'), ...STARTS]);
  expect(status).toBe(2);
  expect(err).toMatch(/^footfall: the output can't be written: \S*season: E[A-Z]+: .*; nothing was written\n$/u);
  expect(err.match(/can't be written/gu)).toHaveLength(1);
});

describe('a folder to start from', () => {
  test('builds at once, without a warning', async () => {
    const plan = join(folder, 'spring');
    const ran = await footfall(['new', plan, ...STARTS]);
    expect(ran.status).toBe(0);
    expect(ran.out.trimEnd().split('\n').toSorted()).toEqual(filesBelow(plan).map((path) => `${plan}/${path}`));
    const checked = await footfall(['check', plan, '--strict']);
    expect(checked.status, checked.out).toBe(0);
    const built = await footfall(['build', plan]);
    expect(built.out).toContain('16 weeks, from 4 Jan 2027, 2 athletes');
  });

  test.each(['1950-01-02', '2028-02-29', '2099-12-31'])('is sound whenever it starts: %s', async (starts) => {
    const plan = join(folder, 'spring');
    expect((await footfall(['new', plan, '--starts', starts])).status).toBe(0);
    const checked = await footfall(['check', plan, '--strict']);
    expect(checked.status, checked.out).toBe(0);
  });

  test.each(['0000-01-01', '9999-12-01'])('is refused where its days have no date: %s', async (starts) => {
    const plan = join(folder, 'spring');
    const ran = await footfall(['new', plan, '--starts', starts]);
    expect(ran).toMatchObject({ status: 2, err: expect.stringContaining(`a season from ${starts} would leave`) });
    expect(existsSync(plan)).toBe(false);
  });

  test('is tidy, has record files without rows, and is the same for every day of a week', async () => {
    const plan = join(folder, 'spring');
    await footfall(['new', plan, ...STARTS]);
    expect(await footfall(['format', '--check', plan])).toMatchObject({ status: 0, out: '' });
    expect(readFileSync(join(plan, 'record/done.csv'), 'utf8')).toBe(
      'date,athlete,kind,contacts,minutes,effort,pain,note\n',
    );
    const other = join(folder, 'other');
    await footfall(['new', other, '--starts', '2027-01-10']);
    for (const path of filesBelow(plan))
      expect(readFileSync(join(other, path), 'utf8')).toBe(readFileSync(join(plan, path), 'utf8'));
  });

  test('starts next week unless told otherwise', async () => {
    const plan = join(folder, 'spring');
    expect((await footfall(['new', plan])).status).toBe(0);
    expect(readFileSync(join(plan, 'season.yaml'), 'utf8')).toMatch(/^ {2}starts: \d{4}-\d\d-\d\d /mu);
    expect((await footfall(['check', plan])).status).toBe(0);
  });
});

describe('git', () => {
  const git = (plan: string, ...args: readonly string[]): { status: number | null; stderr: string } => {
    const bin = join(folder, 'bin');
    if (!existsSync(bin)) {
      mkdirSync(bin);
      writeFileSync(join(bin, 'footfall'), `#!/bin/sh\nexec node '${resolve('bin/footfall.js')}' "$@"\n`);
      chmodSync(join(bin, 'footfall'), 0o755);
    }
    const names = ['-c', 'user.name=Coach', '-c', 'user.email=coach@example.org', '-c', 'core.hooksPath=hooks'];
    const env = { ...process.env, PATH: `${bin}:${process.env['PATH'] ?? ''}` };
    return spawnSync('git', ['-C', plan, ...names, ...args], { encoding: 'utf8', env });
  };

  test('leaves private notes out, commits a sound plan and refuses a broken one with its place', async () => {
    const plan = join(folder, 'spring');
    await footfall(['new', plan, ...STARTS]);
    execFileSync('git', ['init', '--quiet', plan]);
    git(plan, 'add', '--all');
    expect(git(plan, 'commit', '--quiet', '--message', 'A season').status).toBe(0);
    const kept = execFileSync('git', ['-C', plan, 'ls-files'], { encoding: 'utf8' }).split('\n');
    expect(kept).toContain('record/done.csv');
    expect(kept.filter((path) => path.startsWith('private'))).toEqual([]);
    const athletes = join(plan, 'athletes.yaml');
    writeFileSync(athletes, readFileSync(athletes, 'utf8').replace('64 kg', '64'));
    const refused = git(plan, 'commit', '--quiet', '--all', '--message', 'A slip');
    expect(refused.status).toBe(1);
    expect(refused.stderr).toMatch(/^athletes\.yaml:\d+:11: error: 64 has no unit/mu);
  });
});

/** Node's own way to make folders never comes back from the first. */
test.each(['/proc/x', '/proc/x/y', '/dev/null/x', 'loop/x', 'pipe', 'pipe/x', 'leads-nowhere', 'x'.repeat(300), '-'])(
  'a place where no folder can be is told at once: %s',
  async (place) => {
    symlinkSync('loop', join(folder, 'loop'));
    symlinkSync('nowhere', join(folder, 'leads-nowhere'));
    execFileSync('mkfifo', [join(folder, 'pipe')]);
    const before = readdirSync(folder);
    const path = place.startsWith('/') || place === '-' ? place : join(folder, place);
    const { status, out, err } = await footfall(['new', path, ...STARTS]);
    expect([status, out]).toEqual([2, '']);
    expect(err).toMatch(/^footfall: .*(?:nothing was|is wanted)/u);
    expect(readdirSync(folder)).toEqual(before);
    const built = await footfall(['build', 'examples/four-weeks', '--out', path]);
    expect([built.status, built.err.includes('bug in footfall')]).toEqual([2, false]);
  },
);

describe('what is there already', () => {
  test.each(['season.yaml', 'record/tests.csv', 'hooks/pre-commit', 'plan.schema.json'])(
    '%s is named, and nothing is written',
    async (path) => {
      mkdirSync(join(folder, path, '..'), { recursive: true });
      writeFileSync(join(folder, path), 'mine');
      const ran = await footfall(['new', folder, ...STARTS]);
      expect(ran.status).toBe(2);
      expect(ran.err).toContain(`${join(folder, path)} is there already`);
      expect(filesBelow(folder)).toEqual([path]);
      expect(readFileSync(join(folder, path), 'utf8')).toBe('mine');
    },
  );

  test('a link that leads nowhere is something too', async () => {
    symlinkSync(join(folder, 'nowhere'), join(folder, 'season.yaml'));
    expect((await footfall(['new', folder, ...STARTS])).status).toBe(2);
    expect(existsSync(join(folder, 'nowhere'))).toBe(false);
  });

  test('a file where the folder would be', async () => {
    const path = join(folder, 'notes');
    writeFileSync(path, 'mine');
    const ran = await footfall(['new', path]);
    expect(ran).toMatchObject({ status: 2, out: '' });
    expect(ran.err).toContain('is a file, and a folder is wanted');
  });

  test('other files of the folder stay', async () => {
    writeFileSync(join(folder, 'notes.md'), 'mine');
    expect((await footfall(['new', folder, ...STARTS])).status).toBe(0);
    expect(readFileSync(join(folder, 'notes.md'), 'utf8')).toBe('mine');
    expect(statSync(join(folder, 'hooks/pre-commit')).mode & 0o111).not.toBe(0);
  });
});
