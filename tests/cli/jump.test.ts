// `footfall jump`: one test worked out, and nothing compared that was measured in two ways.

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { footfall } from './footfall.ts';

const folder = mkdtempSync(join(tmpdir(), 'footfall-jump-'));
afterAll(() => {
  rmSync(folder, { recursive: true });
});

interface Row {
  readonly athlete: string | null;
  readonly date: string | null;
  readonly test: string;
  readonly figure: string;
  readonly value: number;
  readonly low: number | null;
  readonly high: number | null;
  readonly note: string | null;
  readonly mark: string | null;
}

async function figures(...args: readonly string[]): Promise<readonly Row[]> {
  const { out, status } = await footfall(['jump', ...args, '--format', 'json']);
  expect(status).toBe(0);
  return JSON.parse(out);
}

const valueOf = (rows: readonly Row[], figure: string, note?: string): number | undefined =>
  rows.find((row) => row.figure === figure && (note === undefined || row.note?.startsWith(note) === true))?.value;

function trialsFile(name: string, ...rows: readonly string[]): string {
  const path = join(folder, name);
  writeFileSync(path, ['date,athlete,test,trial,value,unit,method,arms,note', ...rows, ''].join('\n'));
  return path;
}

describe('what nobody measures is refused', () => {
  test.each([
    ['--before', '3 m', 'no jump is 3 m: is the unit of --before right?'],
    ['--before', '0.5 cm', 'no jump is 0.5 cm: is the unit of --before right?'],
    ['--mass', '0.5 kg', '--mass is a body mass from 15 kg to 300 kg'],
    ['--mass', '9999 lb', '--mass is a body mass from 15 kg to 300 kg'],
    ['--take-off', '0.8 ms', "--take-off can't be 0.8 ms: is the unit right?"],
    ['--take-off', '700 s', "--take-off can't be 700 s: is the unit right?"],
  ])('%s %s', async (option, value, words) => {
    const ran = await footfall(['jump', '--countermovement', '32 cm', option, value]);
    expect(ran).toEqual({ status: 2, out: '', err: `footfall: ${words}\n` });
  });

  test.each([
    [['--drop', '33 cm', '--contact', '19 s'], "--contact can't be 19 s: is the unit right?"],
    [['--force', '1.8 N', '--isometric', '2900 N'], 'no countermovement-jump is 1.8 N: is the unit right?'],
    [['--force', '1800 N', '--isometric', '290000 N'], 'no isometric-pull is 290000 N: is the unit right?'],
    [
      ['--countermovement', '32 cm', '--squat', '30 cm', '--before', '31 cm'],
      '--before is of one test: give the others by themselves',
    ],
  ])('%j', async (options, words) => {
    expect(await footfall(['jump', ...options])).toEqual({ status: 2, out: '', err: `footfall: ${words}\n` });
  });

  test('a file without trials is told', async () => {
    const path = trialsFile('empty.csv');
    expect(await footfall(['jump', path])).toEqual({ status: 0, out: '', err: `footfall: ${path} holds no trials\n` });
  });

  test('and of a file left out, and told', async () => {
    const path = trialsFile(
      'slips.csv',
      '2027-02-03,mira,drop-jump,1,33,cm,,false,',
      '2027-02-03,mira,contact-time,1,190,s,,false,',
      '2027-02-03,mira,isometric-pull,1,2,N,,,',
    );
    const { out, err, status } = await footfall(['jump', path, '--format', 'json']);
    expect(status).toBe(0);
    expect(err).toContain('2 of the trials left out');
    expect(valueOf(JSON.parse(out), 'reactive strength index')).toBeUndefined();
  });
});

describe('typed', () => {
  // h = g t²/8 (mechanics): 0.50 s is 0.3065 m.
  test('a time in the air becomes a height', async () => {
    expect(valueOf(await figures('--countermovement', '500 ms'), 'height')).toBe(30.6);
    expect(valueOf(await figures('--countermovement', '0.5s'), 'height')).toBe(30.6);
  });

  // Group means printed in Canavan & Vescovi 2004 (P): 2585 W by Harman's equation.
  test('peak power is told by every equation for the test', async () => {
    const rows = await figures('--countermovement', '32.87 cm', '--mass', '65.9 kg');
    expect(valueOf(rows, 'peak power', 'Harman')).toBe(2585);
    expect(rows.filter(({ figure }) => figure === 'peak power').map(({ mark }) => mark)).toEqual(['M', 'M', 'P', 'P']);
  });

  // The equations were made without a swing of the arms.
  test('there is no peak power of a jump with arms', async () => {
    const rows = await figures('--countermovement', '40 cm', '--mass', '70 kg', '--arms');
    expect(valueOf(rows, 'peak power')).toBeUndefined();
  });

  test('ratios need both of their tests', async () => {
    const rows = await figures('--countermovement', '36 cm, 38 cm', '--squat', '33 cm', '--take-off', '0.7 s, 0.8 s');
    expect(valueOf(rows, 'eccentric utilisation ratio')).toBe(1.12);
    expect(valueOf(rows, 'modified reactive strength index')).toBe(0.49);
    // Healy 2018 (P): 0.35 m in 0.20 s is 1.75.
    expect(valueOf(await figures('--drop', '35 cm', '--contact', '200 ms'), 'reactive strength index')).toBe(1.75);
    expect(valueOf(await figures('--force', '1800 N', '--isometric', '2400 N'), 'dynamic strength index')).toBe(0.75);
  });

  test('a change is told with its noise', async () => {
    const small = await figures('--countermovement', '41 cm', '--before', '40 cm');
    expect(small.find(({ figure }) => figure === 'change of the mean')).toMatchObject({
      value: 1,
      note: 'inside the noise',
    });
    const large = await figures('--countermovement', '46 cm', '--before', '40 cm');
    expect(large.find(({ figure }) => figure === 'change of the mean')?.note).toBe('more than noise');
  });

  // Markovic 2007 (P): +8.7 % (7.0 to 10.4) without arms.
  test('what groups gained is a range, and only where arms are said', async () => {
    const rows = await figures('--countermovement', '40 cm', '--no-arms');
    const found = rows.find(({ figure }) => figure.startsWith('where groups stood'));
    expect(found).toMatchObject({ value: 43.5, low: 42.8, high: 44.2 });
    expect((await figures('--countermovement', '40 cm')).some(({ low }) => low !== null)).toBe(false);
  });

  test.each([
    [[], 'name a file of trials'],
    [['--countermovement', '0.5 s', '--squat', '30 cm'], 'two methods'],
    [['--drop', '30 cm, 31 cm', '--contact', '0.2 s'], 'one time for each trial'],
    [['--countermovement', '30 cm', '--take-off', '0.7 s,0.7 s'], 'one time for each trial'],
    [['--force', '1800 N'], 'go together'],
    [['--countermovement', '500 s'], 'is the unit right?'],
    [['--countermovement', '32'], 'Write a number and its unit'],
    [['--force', '1 N', '--isometric', '1 N', '--before', '30 cm'], 'needs a jump to compare'],
  ])('%j is refused', async (args, words) => {
    const { status, out, err } = await footfall(['jump', ...args]);
    expect([status, out]).toEqual([2, '']);
    expect(err).toContain(words);
  });
});

describe('a file', () => {
  test('is worked out by day, and compared with the test before of the same method', async () => {
    const path = trialsFile(
      'two-days.csv',
      '2027-01-05,mira,countermovement-jump,1,30,cm,mat,no,',
      '2027-01-05,mira,countermovement-jump,2,32,cm,mat,no,',
      '2027-02-02,mira,countermovement-jump,1,36,cm,mat,no,',
      '2027-02-09,mira,countermovement-jump,1,44,cm,jump-and-reach,no,',
    );
    const { err } = await footfall(['jump', path]);
    expect(err).toContain('measured in 2 ways, which are not compared: mat without arms, jump-and-reach without arms');
    const rows = await figures(path);
    const changes = rows.filter(({ figure }) => figure === 'change of the mean');
    expect(changes.map(({ date, value }) => [date, value])).toEqual([['2027-02-02', 5]]);
    expect(rows.find(({ figure }) => figure === 'height, mean')?.value).toBe(31);
  });

  test('says what it left out', async () => {
    const path = trialsFile(
      'others.csv',
      '2027-01-05,mira,sprint,1,3.1,s,gates,,',
      '2027-01-05,mira,squat-jump,1,31,m,mat,no,',
      '2027-01-05,mira,squat-jump,2,31,cm,mat,no,',
    );
    const { err } = await footfall(['jump', path]);
    expect(err).toContain('2 of the trials left out');
    expect(err).toContain('sprint in s, squat-jump in m');
    expect(valueOf(await figures(path), 'height')).toBe(31);
  });

  test('with a mistake is told at its place', async () => {
    const { status, err } = await footfall([
      'jump',
      trialsFile('bad.csv', '2027-01-05,mira,squat-jump,1,31,feet,mat,no,'),
    ]);
    expect(status).toBe(1);
    expect(err).toMatch(/bad\.csv:2:\d+: error/);
    expect((await footfall(['jump', join(folder, 'none.csv')])).status).toBe(2);
  });

  test('of several athletes has no one mass', async () => {
    const path = trialsFile(
      'two.csv',
      '2027-01-05,mira,squat-jump,1,31,cm,mat,no,',
      '2027-01-05,tuva,squat-jump,1,31,cm,mat,no,',
    );
    expect((await footfall(['jump', path, '--mass', '60 kg'])).err).toContain('the file has several');
    expect((await footfall(['jump', path, '--before', '30 cm'])).err).toContain('for a test that is typed');
  });
});
