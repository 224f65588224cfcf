// What a build leaves in its folder when the world is against it: killed at any moment, a full disk, a read-only one, two
// at once; and that it is the same bytes in every time zone and locale. The program is run as a shell runs it.

import { spawn, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { isBuilt } from '../tools/build.mjs';
import { propertySeed } from '../tools/seed.ts';
import { haveAll } from './programs.ts';

vi.setConfig({ testTimeout: 300_000, hookTimeout: 120_000 });

const PLAN = 'examples/four-weeks';

interface Ran {
  readonly status: number | null;
  readonly err: string;
}

const command = (out: string, paper: string, plan = PLAN): readonly string[] => [
  join(parent, 'bin/footfall.js'),
  'build',
  plan,
  '--out',
  out,
  '--paper',
  paper,
  '--quiet',
];

function build(out: string, paper: 'a4' | 'letter', env: Readonly<Record<string, string>> = {}, plan = PLAN): Ran {
  const run = spawnSync(process.execPath, command(out, paper, plan), {
    encoding: 'utf8',
    env: { PATH: process.env['PATH'] ?? '', ...env },
  });
  return { status: run.status, err: run.stderr };
}

/**
 * One digest of every file and its path. The exchange of two folders that a killed build had begun may still come: then what
 * was read is of neither, and is read again.
 */
function digest(folder: string): string {
  const before = statSync(folder).ino;
  const read = readOnce(folder);
  return statSync(folder).ino === before ? read : digest(folder);
}

function readOnce(folder: string): string {
  const hash = createHash('sha256');
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .toSorted();
  for (const file of files) hash.update(file.slice(folder.length)).update('\0').update(readFileSync(file)).update('\0');
  return hash.digest('hex');
}

let parent = '';
const whole = { a4: '', letter: '' };

beforeAll(() => {
  if (!isBuilt()) throw new Error('dist/ is not the build of the present source: npm run build');
  parent = mkdtempSync(join(tmpdir(), 'footfall-whole-'));
  for (const name of ['bin', 'dist', 'package.json']) cpSync(name, join(parent, name), { recursive: true });
  for (const paper of ['a4', 'letter'] as const) {
    const out = join(parent, paper);
    build(out, paper);
    whole[paper] = digest(out);
  }
});

afterAll(() => {
  rmSync(parent, { recursive: true, force: true });
});

test('is there, and another on other paper', () => {
  expect(whole.a4).not.toBe(whole.letter);
  expect(readdirSync(join(parent, 'a4'))).toContain('index.html');
});

test('the same bytes in four time zones and three locales', () => {
  const zones = ['UTC', 'Pacific/Kiritimati', 'America/St_Johns', 'Asia/Kathmandu'];
  const locales = ['C.UTF-8', 'tr_TR.UTF-8', 'ar_EG.UTF-8'];
  const out = join(parent, 'zones');
  for (const [index, TZ] of zones.entries()) {
    const locale = locales[index % locales.length] ?? 'C';
    expect(build(out, 'a4', { TZ, LC_ALL: locale, LANG: locale })).toEqual({ status: 0, err: '' });
    expect(digest(out)).toBe(whole.a4);
  }
});

test('the same bytes whatever the order in which the plan’s files are written', () => {
  const names = ['season.yaml', 'README.md'];
  const digests = [names, names.toReversed()].map((order, index) => {
    const plan = join(parent, `plan-${index}`);
    for (const name of order) cpSync(join(PLAN, name), join(plan, name), { recursive: true });
    const out = join(parent, `ordered-${index}`);
    expect(build(out, 'a4', {}, plan)).toEqual({ status: 0, err: '' });
    return digest(out);
  });
  expect(digests).toEqual([digests[0], digests[0]]);
});

describe('killed at any moment', () => {
  const KILLS = 200;
  const AT_ONCE = 2;

  /** Starts a build and kills it after a while; resolves when it is gone. */
  const killed = async (out: string, paper: 'a4' | 'letter', milliseconds: number): Promise<void> =>
    await new Promise((resolve) => {
      const child = spawn(process.execPath, command(out, paper), { stdio: 'ignore' });
      const timer = setTimeout(() => child.kill('SIGKILL'), milliseconds);
      child.on('exit', () => {
        clearTimeout(timer);
        resolve();
      });
    });

  test(`leaves one whole build, ${KILLS} times`, async () => {
    const started = performance.now();
    build(join(parent, 'timed'), 'a4');
    const usual = performance.now() - started;
    let state = propertySeed();
    const random = (): number => {
      state = (state * 1_103_515_245 + 12_345) % 2_147_483_648;
      return state / 2_147_483_648;
    };
    const found = { a4: 0, letter: 0 };
    const lane = async (number: number): Promise<void> => {
      const out = join(parent, `killed-${number}`);
      expect(build(out, 'a4').status).toBe(0);
      for (let kill = 0; kill < KILLS / AT_ONCE; kill += 1) {
        await killed(out, kill % 2 === 0 ? 'letter' : 'a4', usual * (0.3 + 1.2 * random()));
        const after = digest(out);
        expect([whole.a4, whole.letter]).toContain(after);
        found[after === whole.a4 ? 'a4' : 'letter'] += 1;
      }
      expect(build(out, 'a4').status).toBe(0);
      expect(readdirSync(parent).filter((name) => name.startsWith(`.killed-${number}`))).toEqual([]);
    };
    await Promise.all(Array.from({ length: AT_ONCE }, async (_, number) => await lane(number)));
    expect(found.a4 + found.letter).toBe(KILLS);
  });
});

test('two builds at once end with one whole build', async () => {
  const out = join(parent, 'both');
  const papers = ['a4', 'letter', 'a4', 'letter'] as const;
  const statuses = await Promise.all(
    papers.map(
      async (paper) =>
        await new Promise<number | null>((resolve) => {
          spawn(process.execPath, command(out, paper), { stdio: 'ignore' }).on('exit', resolve);
        }),
    ),
  );
  expect(statuses).toEqual([0, 0, 0, 0]);
  expect([whole.a4, whole.letter]).toContain(digest(out));
  expect(readdirSync(parent).filter((name) => name.startsWith('.both'))).toEqual([]);
});

test('a plan with errors, and a folder with a foreign file, leave the last build as it was', () => {
  const out = join(parent, 'refused');
  expect(build(out, 'a4').status).toBe(0);
  const plan = join(parent, 'broken');
  cpSync(PLAN, plan, { recursive: true });
  writeFileSync(join(plan, 'season.yaml'), 'footfall: 1\nseason: {}\n');
  expect(build(out, 'a4', {}, plan).status).toBe(1);
  expect(digest(out)).toBe(whole.a4);
  writeFileSync(join(out, 'mine.txt'), 'notes');
  const before = digest(out);
  const refused = build(out, 'letter');
  expect(refused.status).toBe(2);
  expect(refused.err).toMatch(/mine\.txt/u);
  expect(digest(out)).toBe(before);
});

describe.runIf(haveAll('mount'))('on a disk of its own', () => {
  const mounted = (options: string, use: (disk: string) => void): void => {
    const disk = mkdtempSync(join(parent, 'disk-'));
    expect(spawnSync('mount', ['-t', 'tmpfs', '-o', options, 'tmpfs', disk]).status).toBe(0);
    try {
      use(disk);
    } finally {
      spawnSync('umount', [disk]);
    }
  };

  test('that is full, the last build stays byte for byte', () => {
    mounted('size=1m', (disk) => {
      const out = join(disk, 'sheets');
      expect(build(out, 'a4').status).toBe(0);
      writeFileSync(join(disk, 'ballast'), Buffer.alloc(300_000));
      const full = build(out, 'letter');
      expect(full.status).toBe(2);
      expect(full.err).toMatch(/the disk is full/u);
      expect(digest(out)).toBe(whole.a4);
      expect(readdirSync(disk).toSorted()).toEqual(['ballast', 'sheets']);
    });
  });

  test('that is read-only, the last build stays byte for byte', () => {
    mounted('size=4m', (disk) => {
      const out = join(disk, 'sheets');
      expect(build(out, 'a4').status).toBe(0);
      expect(spawnSync('mount', ['-o', 'remount,ro', disk]).status).toBe(0);
      const refused = build(out, 'letter');
      expect(refused.status).toBe(2);
      expect(refused.err).toMatch(/the disk is read-only/u);
      expect(digest(out)).toBe(whole.a4);
    });
  });
});

test('says nothing of its progress into a pipe', () => {
  const { status, err } = build(join(parent, 'quiet'), 'a4');
  expect({ status, err }).toEqual({ status: 0, err: '' });
});
