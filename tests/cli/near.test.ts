// `build --near`: sessions of sheets that are out keep their days where the rules allow.

import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { footfall, rowsOf } from './footfall.ts';
import type { Ran } from './footfall.ts';

vi.setConfig({ testTimeout: 120_000, hookTimeout: 120_000 });

let folder = '';
const at = (...steps: readonly string[]): string => join(folder, ...steps);

/** Three days a week where two are trained: the season's days are a choice. */
const SLOTS = `slots:
  - { day: monday, minutes: 70, place: gym }
  - { day: tuesday, minutes: 70, place: gym }
  - { day: friday, minutes: 70, place: gym }
  - { day: saturday, minutes: 70, place: gym }
`;

function write(name: string, edit: (text: string) => string): string {
  cpSync('examples/four-weeks', at(name), { recursive: true });
  const entry = at(name, 'season.yaml');
  writeFileSync(entry, edit(readFileSync(entry, 'utf8').replace(/slots:\n( {2}- .*\n)+/u, SLOTS)));
  return at(name);
}

const sessionDays = (csv: string): readonly string[] => rowsOf(csv).map(([who, date]) => `${who} ${date}`);
async function sessions(...args: readonly string[]): Promise<readonly string[]> {
  const { status, out, err } = await footfall(['build', ...args, '--table', 'sessions', '--format', 'csv']);
  expect([status, err.includes('error')]).toEqual([0, false]);
  return sessionDays(out);
}

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'footfall-near-'));
  await footfall(['build', write('first', (text) => text), '--out', at('sheets')]);
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

test('the same plan keeps every day', async () => {
  expect(await sessions(at('first'), '--near', at('sheets'))).toEqual(await sessions(at('first')));
});

/** Practice on the usual eve: without the sheets that are out the whole season would be on other days. */
const moved = (): string =>
  write('moved', (text) => text.replace('{ day: wednesday, jumps: 60 }', '{ day: sunday, jumps: 90 }'));

test('sessions stay that would have moved, and go where they must', async () => {
  const first = await sessions(at('first'));
  const free = await sessions(moved());
  const near = await sessions(at('moved'), '--near', at('sheets'));
  const other = (days: readonly string[]): number => days.filter((day) => !first.includes(day)).length;
  expect(other(free)).toBeGreaterThan(0);
  expect(other(near)).toBe(0);

  const closed = `closures: [{ from: 2027-05-14, until: 2027-05-14, because: a fair }]\n\npractice:`;
  const shut = write('shut', (text) => text.replace('practice:', closed));
  const kept = await sessions(shut, '--near', at('sheets'));
  const gone = first.filter((day) => !kept.includes(day));
  expect(gone.length).toBeGreaterThan(0);
  expect(gone.every((day) => day.endsWith('2027-05-14'))).toBe(true);
});

test('it may be the folder that is written, and the mark says that the sheets had a say', async () => {
  cpSync(at('sheets'), at('both'), { recursive: true });
  const before = sessionDays(readFileSync(at('both', 'sessions.csv'), 'utf8'));
  const ran = await footfall(['build', moved(), '--near', at('both'), '--out', at('both')]);
  expect(ran.status).toBe(0);
  expect(sessionDays(readFileSync(at('both', 'sessions.csv'), 'utf8'))).toEqual(before);
  const markOf = (name: string): string => JSON.parse(readFileSync(at(name, 'plan.json'), 'utf8')).mark;
  await footfall(['build', at('moved'), '--out', at('alone')]);
  expect(markOf('both')).not.toBe(markOf('alone'));
});

test('a folder that is written without --near is no reason to stay', async () => {
  cpSync(at('sheets'), at('plain'), { recursive: true });
  await footfall(['build', moved(), '--out', at('plain')]);
  const free = await sessions(at('moved'));
  expect(sessionDays(readFileSync(at('plain', 'sessions.csv'), 'utf8'))).toEqual(free);
});

const near = async (path: string): Promise<Ran> => await footfall(['build', at('first'), '--near', path]);

test('what is no build is refused, with its file', async () => {
  expect(await near(at('nowhere'))).toMatchObject({ status: 2, out: '', err: expect.stringContaining('is not there') });
  expect((await near(at('first'))).err).toContain('holds no plan.json');
  mkdirSync(at('broken'));
  const text = readFileSync(at('sheets', 'plan.json'), 'utf8');
  writeFileSync(at('broken', 'plan.json'), text.replace('"date":"2027-05-07"', '"date":"7 May"'));
  const { status, out, err } = await near(at('broken'));
  expect([status, out]).toEqual([2, '']);
  expect(err).toMatch(
    /broken\/plan\.json: athletes\[\d\]\.weeks\[0\]\.sessions\[\d\]\.date is "7 May", and should be a date/,
  );
});

test('`done` looks for sessions on the days of the sheets that are out', async () => {
  const past = (text: string): string => `${text.replaceAll('2027-', '2021-')}record: { done: done.csv }\n`;
  const practice = (text: string): string =>
    text.replace('{ day: wednesday, jumps: 60 }', '{ day: sunday, jumps: 90 }');
  const first = write('past', past);
  const plan = write('past-moved', (text) => practice(past(text)));
  for (const name of ['past', 'past-moved'])
    writeFileSync(at(name, 'done.csv'), 'date,athlete,kind,contacts,minutes,effort,pain,note\n');
  await footfall(['build', first, '--out', at('past-sheets')]);
  const days = async (...near: readonly string[]): Promise<readonly string[]> => {
    const { out } = await footfall(['done', '--plan', plan, '--from', '2021-05-03', '--format', 'csv', ...near]);
    const rows = rowsOf(out).filter(([, , kind]) => kind === 'session');
    return rows.map(([day, who]) => `${who} ${day}`).toSorted();
  };
  const near = ['--near', at('past-sheets')];
  const built = await sessions(plan, ...near);
  expect(await days(...near)).toEqual(built.toSorted());
  expect(await days()).not.toEqual(built.toSorted());
  const ofAnotherYear = await footfall(['done', '--plan', plan, '--from', '2021-05-03', '--near', at('sheets')]);
  expect(ofAnotherYear.err).toContain('no day is kept');
  const looked = async (...near: readonly string[]): Promise<ReadonlySet<number>> => {
    const args = ['review', plan, '--as-of', '2021-05-10', '--table', 'exceptions', '--format', 'csv', ...near];
    const { status, out } = await footfall(args);
    expect(status).toBe(0);
    return new Set(Array.from(out.matchAll(/[A-Z][a-z]{2} (\d+) May: /gu), ([, day = '']) => Number(day)));
  };
  const firstWeek = new Set(built.map((one) => Number(one.slice(-2))).filter((one) => one < 10));
  expect(await looked(...near)).toEqual(firstWeek);
  expect(await looked()).not.toEqual(firstWeek);
  const [day = ''] = built.map((one) => one.slice(-10)).filter((one) => one.endsWith('05-07'));
  const told = await footfall(['done', '--plan', plan, ...near, '--date', day]);
  expect(told.err).toMatch(/\d rows? added/u);
  expect(told.err).not.toContain('no day is kept');
  const test = await footfall(['done', '--plan', plan, ...near, '--date', day, '--test', 'back-squat', 'pia=80 kg']);
  expect(test).toMatchObject({ status: 2, err: expect.stringContaining('trials of a test are none') });
});

test('`why` tells the sessions on the days of the sheets that are out', async () => {
  const plan = write('asked', (text) => text.replace('{ day: wednesday, jumps: 60 }', '{ day: sunday, jumps: 90 }'));
  const near = ['--near', at('sheets')];
  const asked = async (...args: readonly string[]): Promise<readonly string[]> => {
    const { status, out } = await footfall(['why', 'pia', '2027-05-05', plan, '--format', 'json', ...args]);
    expect(status).toBe(0);
    const told: { sessions: { date: string }[] } = JSON.parse(out);
    return told.sessions.map(({ date }) => `pia ${date}`);
  };
  const week = (days: readonly string[]): readonly string[] =>
    days.filter((day) => day.startsWith('pia 2027-05-0') && day < 'pia 2027-05-10');
  const built = week(await sessions(plan, ...near));
  expect(week(await sessions(plan))).not.toEqual(built);
  expect(await asked(...near)).toEqual(built);
  expect(await asked()).not.toEqual(built);

  const { out } = await footfall(['why', 'pia', '2027-05-05', plan, ...near]);
  expect(out).toContain('as on the sheet that is out');
  const nowhere = await footfall(['why', 'pia', '2027-05-05', plan, '--near', at('nowhere')]);
  expect(nowhere).toMatchObject({ status: 2, out: '', err: expect.stringContaining('is not there') });
  const other = at('other.json');
  writeFileSync(other, readFileSync(at('sheets', 'plan.json'), 'utf8').replaceAll('"id":"pia"', '"id":"ida"'));
  const { err } = await footfall(['why', 'pia', '2027-05-05', plan, '--near', other]);
  expect(err).toContain('pia has no session of this season in');
});

test('`diff` tells what changes on the sheets that are out', async () => {
  const plan = write('to-be', (text) => text.replace('{ day: wednesday, jumps: 60 }', '{ day: sunday, jumps: 90 }'));
  const near = ['--near', at('sheets')];
  const moves = async (...args: readonly string[]): Promise<number> => {
    const { status, out } = await footfall(['diff', ...args]);
    expect(status).toBe(0);
    return [...out.matchAll(/(?:jumps|lifting) (?:Mon|Tue|Fri|Sat) \d+ \w+ → (?:Mon|Tue|Fri|Sat) /gu)].length;
  };
  for (const old of [at('sheets'), at('first')]) {
    expect(await moves(old, plan)).toBeGreaterThan(0);
    expect(await moves(old, plan, ...near)).toBe(0);
  }
  // Edits are tried one by one, on the same days: otherwise all of them together wouldn't give the new sheets.
  const { out } = await footfall(['diff', at('first'), plan, ...near]);
  expect(out).toContain('follows from practice on wednesday\n');
  expect(out).not.toContain('too many to try');
  expect(await footfall(['diff', at('sheets'), at('sheets'), ...near])).toMatchObject({
    status: 2,
    out: '',
    err: expect.stringContaining('--near is for plans'),
  });
  expect(await footfall(['diff', at('first'), plan, '--near', at('nowhere')])).toMatchObject({ status: 2, out: '' });
});

test('`diff` says that sheets which were written anew hide what moved', async () => {
  const plan = write('eve', (text) => text.replace('{ day: wednesday, jumps: 60 }', '{ day: sunday, jumps: 90 }'));
  await footfall(['build', plan, '--out', at('anew')]);
  const moves = async (near: string): Promise<readonly [moves: number, told: boolean]> => {
    const { status, out, err } = await footfall(['diff', at('first'), plan, '--near', near]);
    expect(status).toBe(0);
    return [[...out.matchAll(/session \w{3} \d/gu)].length, err.includes('holds the sheets of the new side already')];
  };
  expect(await moves(at('anew'))).toEqual([0, true]);
  const closed = 'closures: [{ from: 2027-05-14, until: 2027-05-14, because: a fair }]\n\npractice:';
  writeFileSync(
    join(plan, 'season.yaml'),
    readFileSync(join(plan, 'season.yaml'), 'utf8').replace('practice:', closed),
  );
  expect(await moves(at('sheets'))).toEqual([expect.any(Number), false]);
});

test('a build of somebody else, or of another season, keeps nothing, and that is told', async () => {
  const told = 'nobody of this plan has a session of this season in';
  const near = async (from: string, to: string): Promise<string> => {
    const path = at(`${to}.json`);
    writeFileSync(path, readFileSync(at('sheets', 'plan.json'), 'utf8').replaceAll(from, to));
    const ran = await footfall(['build', at('first'), '--near', path, '--table', 'weeks', '--format', 'csv']);
    expect(ran.status).toBe(0);
    return ran.err;
  };
  expect(await near('"id":"', '"id":"other-')).toContain(told);
  expect(await near('2027-', '2026-')).toContain(told);
  expect(await near('nothing', 'else')).not.toContain(told);

  const review = ['review', at('first'), '--as-of', '2027-05-10', '--near'];
  expect((await footfall([...review, at('"id":"other-.json')])).err).toContain(told);
  expect((await footfall([...review, at('sheets')])).err).not.toContain(told);
});
