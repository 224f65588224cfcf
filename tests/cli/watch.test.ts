// `--watch` with the built program in a process of its own: what it prints with each save, and what it leaves behind. Each
// step waits for words of the program, never for time.

import { spawn, spawnSync } from 'node:child_process';
import type { ChildProcess } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, realpathSync } from 'node:fs';
import { renameSync, rmSync, symlinkSync, watch, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { isBuilt } from '../tools/build.mjs';

vi.setConfig({ testTimeout: 120_000 });

const PROGRAM = join(process.cwd(), 'bin', 'footfall.js');
const WATCHING = 'Ctrl-C ends it';

let folder = '';
const at = (...steps: readonly string[]): string => join(folder, ...steps);
const running = new Set<ChildProcess>();

beforeEach(() => {
  if (!isBuilt()) throw new Error('dist/ is not the build of the present source: npm run build');
  folder = realpathSync(mkdtempSync(join(tmpdir(), 'footfall-watch-')));
  cpSync('examples/four-weeks', at('season'), { recursive: true });
});

afterEach(() => {
  for (const child of running) child.kill('SIGKILL');
  running.clear();
  rmSync(folder, { recursive: true, force: true });
});

interface Watched {
  /** What the program has said on both streams since the last call, when the words are there. */
  readonly until: (words: string | RegExp) => Promise<string>;
  readonly end: (signal?: NodeJS.Signals) => Promise<number | null>;
  readonly out: () => string;
  readonly err: () => string;
}

function watched(...args: readonly string[]): Watched {
  const child = spawn(process.execPath, [PROGRAM, ...args], { cwd: folder, stdio: ['ignore', 'pipe', 'pipe'] });
  running.add(child);
  const said = { all: '', out: '', err: '' };
  let heard = 0;
  let hear: () => void = () => {};
  const listen = (stream: 'stdout' | 'stderr'): void => {
    child[stream].setEncoding('utf8').on('data', (text: string) => {
      said.all += text;
      said[stream === 'stdout' ? 'out' : 'err'] += text;
      hear();
    });
  };
  listen('stdout');
  listen('stderr');
  const ended = new Promise<number | null>((resolved) => {
    child.once('close', (status) => {
      running.delete(child);
      hear();
      resolved(status);
    });
  });
  const until = async (words: string | RegExp): Promise<string> => {
    for (;;) {
      const fresh = said.all.slice(heard);
      const found = typeof words === 'string' ? fresh.indexOf(words) + words.length : endOf(fresh, words);
      if (typeof words === 'string' ? fresh.includes(words) : found > 0) {
        heard += found;
        return fresh.slice(0, found);
      }
      if (!running.has(child)) throw new Error(`ended without saying ${String(words)}:\n${said.all}`);
      await new Promise<void>((resolved) => {
        hear = resolved;
      });
    }
  };
  const end = async (signal: NodeJS.Signals = 'SIGINT'): Promise<number | null> => {
    child.kill(signal);
    return await ended;
  };
  return { until, end, out: () => said.out, err: () => said.err };
}

function endOf(text: string, words: RegExp): number {
  const found = words.exec(text);
  return found === null ? 0 : found.index + found[0].length;
}

const TOTALS = /In all: .*\n/u;
const season = (): string => readFileSync(at('season', 'season.yaml'), 'utf8');
function edited(from: string, to: string): string {
  expect(season()).toContain(from);
  return season().replace(from, to);
}
function save(text: string): void {
  writeFileSync(at('season', 'season.yaml'), text);
}
/** As many editors save: to a file beside it, which takes its name. */
function saveByRename(text: string): void {
  writeFileSync(at('season', '.season.yaml.swap'), text);
  renameSync(at('season', '.season.yaml.swap'), at('season', 'season.yaml'));
}
const left = (): readonly string[] => readdirSync(folder, { recursive: true }).map(String).toSorted();

describe('build --watch', () => {
  test('prints the season, then what each save changes; errors show and clear; an end is an end', async () => {
    const before = left();
    const { until, end, out } = watched('build', '--watch', 'season');
    const first = await until(WATCHING);
    expect(first).toContain('Pia N.      150  165  180   65~');

    const good = season();
    save(edited('jumps: 60', 'jumps: 90'));
    const changed = await until(TOTALS);
    expect(changed).toContain('practice on wednesday: jumps 60 → 90, season.yaml:16');
    expect(changed).not.toContain('Pia N.      150');

    saveByRename(edited('level: beginner', 'level: begginer'));
    expect(await until('"begginer"')).toMatch(/season\.yaml:\d+:\d+: error: /);

    saveByRename(edited('level: begginer', 'level: beginner'));
    const mended = await until('nothing on the sheets has changed');
    expect(mended).toContain('no errors any more');

    saveByRename(good);
    expect(await until(TOTALS)).toContain('practice on wednesday: jumps 90 → 60');
    expect(out().match(/error/u)).toBeNull();

    expect(await end()).toBe(0);
    expect(left()).toEqual(before);
  });

  test('sees files that are added, taken away and named by nobody', async () => {
    save(edited('slots:', 'files: [squad/*.yaml]\n\nslots:'));
    mkdirSync(at('season', 'squad'));
    writeFileSync(at('season', 'squad', 'a.yaml'), 'athletes: { vik: { name: Vik A., level: beginner } }\n');
    const { until, end } = watched('build', '--watch', 'season');
    await until(WATCHING);

    writeFileSync(at('season', 'squad', 'b.yaml'), 'athletes: { wim: { name: Wim B., level: beginner } }\n');
    expect(await until(TOTALS)).toContain('Wim B. is new');
    rmSync(at('season', 'squad', 'b.yaml'));
    expect(await until(TOTALS)).toContain('Wim B. is no longer in the plan');
    // Neither is a file of the plan; had either made a round, it would say so before the next save does.
    writeFileSync(at('season', 'squad', 'notes.txt'), 'call the hall');
    writeFileSync(at('elsewhere.yaml'), 'footfall: 1\n');
    mkdirSync(at('season', 'squad', 'more'));
    writeFileSync(at('season', 'squad', 'c.yaml'), 'athletes: { xen: { name: Xen C., level: beginner } }\n');
    const next = await until(TOTALS);
    expect(next).toContain('Xen C. is new');
    expect(next).not.toContain('nothing on the sheets');

    renameSync(at('season', 'squad'), at('season', 'team'));
    expect(await until('error: ')).toContain('season.yaml');
    renameSync(at('season', 'team'), at('season', 'squad'));
    await until('nothing on the sheets has changed');
    expect(await end('SIGTERM')).toBe(0);
  });

  test('goes on when the whole folder was away for a moment', async () => {
    const { until, end } = watched('build', '--watch', 'season');
    await until(WATCHING);
    const text = edited('jumps: 60', 'jumps: 90');
    rmSync(at('season'), { recursive: true });
    await until('error');
    mkdirSync(at('season'));
    save(text.replace('title: Four', 'title: Four fine'));
    expect(await until(TOTALS)).toContain('jumps 60 → 90');
    expect(await end()).toBe(0);
  });

  test('follows an entry file that is a link', async () => {
    mkdirSync(at('linked'));
    symlinkSync(at('season', 'season.yaml'), at('linked', 'season.yaml'));
    symlinkSync(at('linked'), at('again'));
    const { until, end } = watched('build', '--watch', 'again');
    await until(WATCHING);
    saveByRename(edited('jumps: 60', 'jumps: 90'));
    expect(await until(TOTALS)).toContain('jumps 60 → 90');
    saveByRename(edited('jumps: 90', 'jumps: 60'));
    expect(await until(TOTALS)).toContain('jumps 90 → 60');
    expect(await end()).toBe(0);
  });

  test('--out writes the folder whole each time, in the plan folder too, and leaves nothing beside it', async () => {
    const { until, end } = watched('build', '--watch', '--out', 'season/sheets', 'season');
    await until(WATCHING);
    const weeks = (): string => readFileSync(at('season', 'sheets', 'weeks.csv'), 'utf8');
    const before = weeks();
    save(edited('jumps: 60', 'jumps: 100'));
    await until(TOTALS);
    const after = weeks();
    expect(after).not.toBe(before);
    expect(after).toContain('pia,1,');

    save(edited('level: beginner', 'level: begginer'));
    await until('"begginer"');
    expect(weeks()).toBe(after);
    expect(await end()).toBe(1);
    expect(left().filter((path) => path.includes('.footfall-'))).toEqual([]);
  });

  test('--out --format csv writes after each save what a build from scratch writes, byte for byte', async () => {
    cpSync('examples/handball-spring', at('squad'), { recursive: true });
    const entry = at('squad', 'season.yaml');
    const people = at('squad', 'squad', 'juniors.yaml');
    const replace = (path: string, from: string, to: string): void => {
      const text = readFileSync(path, 'utf8');
      expect(text).toContain(from);
      writeFileSync(path, text.replace(from, to));
    };
    const tables = (out: string): Readonly<Record<string, string>> =>
      Object.fromEntries(readdirSync(at(out)).map((name) => [name, readFileSync(at(out, name), 'utf8')]));
    const { until, end } = watched('build', '--watch', '--out', 'kept', '--format', 'csv', 'squad');
    await until(WATCHING);
    const saves = [
      () => {
        replace(people, 'mass: 55 kg', 'mass: 55 kg\n    now: { contacts-a-session: 60, sessions-a-week: 2 }');
      },
      () => {
        replace(entry, 'slots:', '# A line that moves all below it.\nslots:');
        replace(entry, 'contacts-a-week: 40', 'contacts-a-week: 45');
      },
    ];
    let last = tables('kept');
    for (const save of saves) {
      save();
      await until(TOTALS);
      const cold = spawnSync(process.execPath, [PROGRAM, 'build', '--out', 'cold', '--format', 'csv', 'squad'], {
        cwd: folder,
      });
      expect(cold.status).toBe(0);
      expect(Object.keys(tables('cold'))).toContain('lines.csv');
      expect(tables('kept')).toEqual(tables('cold'));
      expect(tables('kept')).not.toEqual(last);
      last = tables('kept');
    }
    expect(await end()).toBe(0);
  });

  test('ended in the midst of writing it leaves the last folder, and nothing beside it', async () => {
    mkdirSync(at('out'));
    const plan = join(process.cwd(), 'examples', 'handball-spring');
    const begun = new Promise<void>((resolved) => {
      const watcher = watch(at('out'), (_, name) => {
        if (name?.startsWith('.sheets.footfall-') !== true) return;
        watcher.close();
        resolved();
      });
    });
    const { until, end } = watched('build', '--watch', '--out', 'out/sheets', plan);
    await begun;
    const [status] = await Promise.all([end(), until('ended before the first build was done')]);
    expect(status).toBe(2);
    expect(readdirSync(at('out'))).toEqual([]);
  });

  test('a note in the folder is told, and a later save writes again when it is gone', async () => {
    const { until, end } = watched('build', '--watch', '--out', 'sheets', 'season');
    await until(WATCHING);
    writeFileSync(at('sheets', 'mine.txt'), 'do not lose');
    save(edited('jumps: 60', 'jumps: 100'));
    expect(await until("footfall didn't write")).toContain('mine.txt');
    rmSync(at('sheets', 'mine.txt'));
    save(edited('jumps: 100', 'jumps: 101'));
    expect(await until(TOTALS)).toContain('jumps 60 → 101');
    expect(await end()).toBe(0);
  });

  test('a plan that begins with errors is built when they are mended', async () => {
    save(edited('level: beginner', 'level: begginer'));
    const { until, end } = watched('build', '--watch', 'season');
    expect(await until(WATCHING)).toContain('error: ');
    save(edited('level: begginer', 'level: beginner'));
    const built = await until('no errors any more');
    expect(built).toContain('Pia N.      150  165  180   65~');
    expect(await end()).toBe(0);
  });

  describe('of a plan with a record', () => {
    const record = (): string => at('diary', 'record', 'done.csv');
    const entry = (): string => at('diary', 'season.yaml');
    const replace = (path: string, from: string, to: string): void => {
      const text = readFileSync(path, 'utf8');
      expect(text).toContain(from);
      writeFileSync(path, text.replace(from, to));
    };
    const daysIn = (text: string): readonly string[] => text.match(/^footfall: (?:planned|nothing is).*$/gmu) ?? [];
    const words = (day: string): string =>
      `footfall: planned as of ${day}, the day after the last record; --as-of names another`;
    const NONE = 'footfall: nothing is on the record any more: all weeks are as the plan has them';

    beforeEach(() => {
      cpSync('examples/harbour-diary', at('diary'), { recursive: true });
    });

    test('tells the day it goes by, and again when a save moves it and only then', async () => {
      const { until, end, err } = watched('build', '--watch', 'diary', '--athlete', 'alma');
      expect(daysIn(await until(WATCHING))).toEqual([words('2025-02-08')]);

      replace(entry(), 'jumps: 60 }', 'jumps: 70 }');
      await until(TOTALS);
      writeFileSync(record(), `${readFileSync(record(), 'utf8')}2025-02-07,cato,practice,50,,,,\n`);
      await until(TOTALS);
      writeFileSync(record(), `${readFileSync(record(), 'utf8')}2025-02-11,alma,session,60,70,5,,\n`);
      await until(words('2025-02-12'));

      // A plan with errors is planned on no day, and says nothing of it when it is as before.
      replace(entry(), 'level: beginner', 'level: begginer');
      await until('"begginer"');
      replace(entry(), 'level: begginer', 'level: beginner');
      await until('no errors any more');

      const [header = ''] = readFileSync(record(), 'utf8').split('\n');
      writeFileSync(record(), `${header}\n`);
      await until(NONE);
      writeFileSync(record(), `${header}\n2025-01-07,alma,session,60,70,5,,\n`);
      await until(words('2025-01-08'));
      expect(await end()).toBe(0);
      expect(daysIn(err())).toEqual([words('2025-02-08'), words('2025-02-12'), NONE, words('2025-01-08')]);
    });

    test.each([['--as-of', '2025-02-10'], ['--quiet']])('tells no day with %s', async (...more) => {
      const { until, end, err } = watched('build', '--watch', 'diary', '--athlete', 'alma', ...more);
      await until(WATCHING);
      replace(entry(), 'jumps: 60 }', 'jumps: 70 }');
      await until(TOTALS);
      writeFileSync(record(), `${readFileSync(record(), 'utf8')}2025-02-11,alma,session,60,70,5,,\n`);
      await until(/In all: .*\n|nothing on the sheets has changed/u);
      expect(await end()).toBe(0);
      expect(daysIn(err())).toEqual([]);
    });
  });

  test.each([
    { args: ['build', '--watch', 'nowhere'], says: 'nowhere' },
    { args: ['build', '--watch', 'season', '--athlete', 'piaa'], says: 'did you mean "pia"?' },
    { args: ['build', '--watch', 'season', '--format', 'csv'], says: 'leave --format csv out' },
    { args: ['check', '--watch', 'season', '--format', 'json'], says: 'leave --format out' },
  ])('$args is refused at once', async ({ args, says }) => {
    const { until, end } = watched(...args);
    await until(says);
    expect(await end('SIGCONT')).toBe(2);
  });
});

test('check --watch prints what is wrong with each save', async () => {
  const { until, end, out } = watched('check', '--watch', 'season');
  await until(WATCHING);
  save(edited('level: beginner', 'level: begginer'));
  await until('"begginer"');
  save(edited('level: begginer', 'level: beginner'));
  await until('no errors');
  expect(out()).toContain('error: ');
  expect(await end()).toBe(0);
});

test('a command without --watch runs nothing of it', async () => {
  const entries = ['src/cli/main.ts', 'src/cli/commands/build.ts', 'src/cli/commands/check.ts'];
  const options = { bundle: true, platform: 'node', format: 'esm', write: false, metafile: true, outdir: '.' } as const;
  const { inputs } = (await build({ entryPoints: entries, ...options })).metafile;
  const run = new Set<string>();
  const follow = (path: string): void => {
    if (run.has(path)) return;
    run.add(path);
    for (const { path: next, kind } of inputs[path]?.imports ?? []) if (kind !== 'dynamic-import') follow(next);
  };
  entries.forEach(follow);
  const ofWatching = /chokidar|watch-/u;
  expect(Object.keys(inputs).filter((path) => ofWatching.test(path)).length).toBeGreaterThan(3);
  expect([...run].filter((path) => ofWatching.test(path))).toEqual([]);
  expect(run.size).toBeGreaterThan(100);
});
