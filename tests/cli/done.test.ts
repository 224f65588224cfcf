// `footfall done`: what is to confirm, and rows added to the record by the built program: by one, by several at once, and by
// some that are killed on the way.

import { execFile, spawn } from 'node:child_process';
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { shell } from './footfall.ts';
import type { Ran } from './footfall.ts';

const PROGRAM = join(import.meta.dirname, '../../bin/footfall.js');
const HEADER = 'date,athlete,kind,contacts,minutes,effort,pain,note';

/** A season that is over: three athletes, Tuesdays and Thursdays, the first week from 1 January 2024. */
const PLAN = `footfall: 1
season: { title: Winter, starts: 2024-01-01, ends: 2024-02-25 }
places: { hall: { kit: { boxes: [30 cm], hurdles: 6, mats: 2 } } }
slots:
  - { day: tuesday, at: "18:00", minutes: 60, place: hall }
  - { day: thursday, minutes: 60, place: hall }
squads:
  first: { level: intermediate, now: { contacts-a-session: 60, sessions-a-week: 2 } }
athletes:
  ada: { name: Ada B., squad: first }
  bea-k: { name: Bea K., squad: first }
  cleo: { name: Cleo D., level: beginner }
record: { done: record/done.csv }
`;

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'footfall-done-'));
  writeFileSync(join(folder, 'season.yaml'), PLAN);
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

const recordPath = (): string => join(folder, 'record/done.csv');
const record = (): string => readFileSync(recordPath(), 'utf8');
const rows = (): readonly string[] => record().trimEnd().split(/\r?\n/u).slice(1);

async function done(args: string): Promise<Ran> {
  return await shell(`$f done --plan ${folder} ${args}`);
}

describe('the sheet', () => {
  test('lists the sessions that are over and on no record, with what to say of each day', async () => {
    const { out, status } = await done('--from 2024-02-12');
    expect(status).toBe(0);
    expect(out).toMatch(/^Tue 13 Feb, 18:00, hall: 3 athletes\n {2}Ada B\. \(ada\) {2}\d+ contacts\n/u);
    expect(out).toContain(`  as written: footfall done --plan ${folder} --date 2024-02-13\n`);
    expect(out.match(/as written/gu)).toHaveLength(4);
    await done('--date 2024-02-13 --athlete ada,cleo');
    const after = await done('--from 2024-02-12');
    expect(after.out).toMatch(/^Tue 13 Feb, 18:00, hall: 1 athlete\n {2}Bea K\. \(bea-k\) /u);
  });

  test('names a folder with a space so that a shell takes it for one', async () => {
    const spaced = join(folder, "coach's plan");
    mkdirSync(spaced);
    writeFileSync(join(spaced, 'season.yaml'), PLAN);
    const { out } = await shell(`$f done --plan "${spaced}" --from 2024-02-12`);
    expect(out).toContain(`footfall done --plan '${folder}/coach'\\''s plan' --date 2024-02-13\n`);
  });

  test('as CSV has the columns of the record', async () => {
    const { out } = await done('--from 2024-02-22 --squad first --format csv');
    expect(out).toMatch(
      /^date,athlete,kind,contacts,minutes,effort,pain,note\r\n2024-02-22,ada,session,\d+,\d+,,,\r\n/u,
    );
    expect(out.trimEnd().split('\r\n')).toHaveLength(3);
  });

  test('of a season that is confirmed says so', async () => {
    const { out, err } = await done('');
    expect(out).toBe('');
    expect(err).toMatch(/nothing is to confirm/u);
  });
});

describe('a day', () => {
  test('is confirmed as written but for the exceptions; the file is made where there is none', async () => {
    const planned = new Map(
      (await done('--from 2024-01-01 --format csv')).out
        .split('\r\n')
        .filter((line) => line.startsWith('2024-01-04'))
        .map((line) => [line.split(',')[1] ?? '', line.split(',').slice(3, 5).join(',')]),
    );
    const ran = await done('--date 2024-01-04 bea-k=0 cleo.pain=3 first.effort=6 ada.effort=7.5 "ada.note=calf, left"');
    expect(ran, ran.err).toMatchObject({ status: 0 });
    expect(record()).toBe(
      `${HEADER}\n2024-01-04,ada,session,${planned.get('ada')},7.5,,"calf, left"\n` +
        `2024-01-04,bea-k,session,0,0,,,\n2024-01-04,cleo,session,${planned.get('cleo')},,3,\n`,
    );
    expect(ran.out).toContain('bea-k: nothing done\n');
    expect((await shell(`$f check ${folder} --strict --quiet`)).status).toBe(0);
  });

  test('outside of the season is written, and told', async () => {
    const ran = await done('--date 2023-01-05 ada=40');
    expect(ran.status).toBe(0);
    expect(ran.err).toContain('1 row added to record/done.csv; the season is 2024-01-01 to 2024-02-25, so it doesn');
    expect((await done('--date 2024-01-02')).err).not.toContain('is the year right');
  });

  test('that is on the record already is told and left as it is', async () => {
    await done('--date 2024-01-02');
    const before = record();
    expect(rows()).toHaveLength(3);
    const again = await done('--date 2024-01-02');
    expect(again).toMatchObject({ status: 0, out: '' });
    expect(again.err).toContain(
      'nothing added to record/done.csv; on the record already, and left as they are: ada, bea-k, cleo',
    );
    const changed = await done('--date 2024-01-02 ada=20');
    expect(changed.status).toBe(2);
    expect(changed.err).toContain('ada is on the record for 2024-01-02 already: change it there');
    expect(record()).toBe(before);
  });

  test.each([
    ['--date 2124-01-02', 'is still to come'],
    ['--date 2024-01-02 adaa=0', 'there is no athlete or squad "adaa"; did you mean "ada"?'],
    ['--date 2024-01-02 ada.pian=3', '"pian" is none of contacts, minutes, effort, pain, note; did you mean "pain"?'],
    ['--date 2024-01-02 ada', '"ada" is no exception'],
    ['--date 2024-01-02 ada=1 ada=2', 'ada: contacts is given twice'],
    ['--date 2024-01-02 --athlete adb', 'there is no athlete "adb"; did you mean "ada"?'],
    ['--date 2024-01-03', 'nothing is planned on 2024-01-03'],
    ['--date 2024-01-03 ada=0', 'ada has nothing planned on 2024-01-03'],
    ['--date 2024-02-30', 'must exist'],
    ['ada=0', 'say which day it was'],
  ])('is refused in words: %s', async (args, words) => {
    const { status, err } = await done(args);
    expect(err).toContain(words);
    expect(status).toBe(2);
    expect(existsSync(recordPath())).toBe(false);
  });

  test('with a value that the record refuses adds no row', async () => {
    const { status, err } = await done('--date 2024-01-02 ada.pain=11 cleo=many');
    expect(status).toBe(1);
    expect(err).toMatch(/record\/done\.csv:2:\d+: error/u);
    expect(err).toMatch(/record\/done\.csv:4:\d+: error/u);
    expect(existsSync(recordPath())).toBe(false);
  });

  test('takes a session besides', async () => {
    expect((await done('--date 2024-01-03 ada=40')).status).toBe(0);
    expect(rows()).toEqual(['2024-01-03,ada,session,40,,,,']);
  });
});

describe('practice, matches and tests', () => {
  beforeEach(() => {
    const besides = `practice: [{ day: monday, jumps: 60 }]
competitions: [{ name: Winter cup, date: 2024-02-03, prepare: through, jumps: 45, squads: [first] }]
tests: [{ date: 2024-02-06, what: [countermovement-jump], contacts: 12 }]
squads:`;
    writeFileSync(join(folder, 'season.yaml'), PLAN.replace('squads:', besides));
  });

  test('are on the sheet with what to say of each, until they are on the record', async () => {
    const { out } = await done('--from 2024-02-01');
    expect(out).toContain('Mon 5 Feb, practice: 3 athletes\n  Ada B. (ada)  60 jumps\n');
    expect(out).toContain(`  as written: footfall done --plan ${folder} --date 2024-02-05 --kind practice\n`);
    expect(out).toContain('Sat 3 Feb, match: Winter cup: 2 athletes\n  Ada B. (ada)  45 jumps\n');
    expect(out).toContain('Tue 6 Feb, test: countermovement-jump: 3 athletes\n  Ada B. (ada)  12 jumps\n');
    const only = await done('--from 2024-02-01 --kind match --format csv');
    expect(only.out.split('\r\n').slice(1, 3)).toEqual([
      '2024-02-03,ada,match,45,,,,',
      '2024-02-03,bea-k,match,45,,,,',
    ]);
    expect((await done('--date 2024-02-03 --kind match')).status).toBe(0);
    expect(await done('--from 2024-02-01 --kind match')).toMatchObject({ out: '', status: 0 });
  });

  test('are rows of their own, beside the session of the day', async () => {
    await done('--date 2024-02-06');
    const sessions = rows();
    const ran = await done('--date 2024-02-06 --kind test cleo=0 ada.effort=4');
    expect(ran, ran.err).toMatchObject({ status: 0 });
    await done('--date 2024-02-05 --kind practice bea-k=80 bea-k.minutes=90');
    await done('--date 2024-02-03 --kind match cleo=20 everybody.effort=8');
    expect(rows()).toEqual([
      ...sessions,
      '2024-02-06,ada,test,12,,4,,',
      '2024-02-06,bea-k,test,12,,,,',
      '2024-02-06,cleo,test,0,0,,,',
      '2024-02-05,ada,practice,60,,,,',
      '2024-02-05,bea-k,practice,80,90,,,',
      '2024-02-05,cleo,practice,60,,,,',
      '2024-02-03,ada,match,45,,8,,',
      '2024-02-03,bea-k,match,45,,8,,',
      '2024-02-03,cleo,match,20,,8,,',
    ]);
    expect((await shell(`$f check ${folder} --quiet`)).status).toBe(0);
  });

  test.each([
    ['--date 2024-02-04 --kind match', 'no match is planned on 2024-02-04'],
    ['--date 2024-02-03 --kind match cleo=0', 'cleo has no match planned on 2024-02-03'],
    ['--date 2024-02-03 --kind game', 'Allowed choices are session, practice, match, test'],
  ])('are refused in words: %s', async (args, words) => {
    const { status, err } = await done(args);
    expect(err).toContain(words);
    expect(status).toBe(2);
    expect(existsSync(recordPath())).toBe(false);
  });

  test('a morning can be told of whoever has nothing planned, as one whose jumps are stopped', async () => {
    await done('--date 2024-01-02 ada.pain=8');
    const asked = await done('--date 2024-01-17 --athlete ada');
    expect(asked.err).toContain('nothing is planned on 2024-01-17');
    const told = await done('--date 2024-01-17 ada.pain=1 "ada.note=calm"');
    expect(told).toMatchObject({ status: 0, out: 'ada: nothing done, pain 1, calm\n' });
    expect(rows().at(-1)).toBe('2024-01-17,ada,session,0,0,,1,calm');
  });
});

describe('trials of a test', () => {
  const trials = (): string => readFileSync(join(folder, 'record/tests.csv'), 'utf8');
  const HEAD = 'date,athlete,test,trial,value,unit,method,arms,note\n';
  beforeEach(async () => {
    writeFileSync(join(folder, 'season.yaml'), PLAN.replace('done.csv }', 'done.csv, tests: record/tests.csv }'));
    await shell(`mkdir ${folder}/record && echo '${HEADER}' > ${folder}/record/done.csv`);
  });

  test('are rows of the record of tests, one for each; the file is made where there is none', async () => {
    const typed = `--date 2024-01-30 --test countermovement-jump --method mat --no-arms 'ada=33.5 cm, 34 cm' bea-k=28cm`;
    const { out, err, status } = await done(typed);
    expect([status, out]).toEqual([0, 'ada: trial 1, 33.5 cm\nada: trial 2, 34 cm\nbea-k: trial 1, 28 cm\n']);
    expect(err).toBe('footfall: 2024-01-30: 3 trials of countermovement-jump added to record/tests.csv\n');
    expect(trials()).toBe(
      `${HEAD}2024-01-30,ada,countermovement-jump,1,33.5,cm,mat,no,\n` +
        '2024-01-30,ada,countermovement-jump,2,34,cm,mat,no,\n2024-01-30,bea-k,countermovement-jump,1,28,cm,mat,no,\n',
    );
    expect(rows()).toEqual([]);
    expect((await shell(`$f check ${folder} --quiet`)).status).toBe(0);
  });

  test('that are on the record already are not added again, also by two at once', async () => {
    const both = await Promise.all([1, 2].map(() => done('--date 2024-01-30 --test back-squat "cleo=60 kg"')));
    expect(both.map(({ status }) => String(status)).toSorted()).toEqual(['0', '2']);
    expect(both.map(({ err }) => err).join('')).toContain('cleo has trials of back-squat on the record for 2024-01-30');
    expect(trials()).toBe(`${HEAD}2024-01-30,cleo,back-squat,1,60,kg,,,\n`);
  });

  test('of a test that is not known are told with their line and the nearest name, and nothing is written', async () => {
    const { err, status } = await done('--date 2024-01-30 --test back-sqat "ada=33 kg"');
    expect(status).toBe(1);
    expect(err).toMatch(/record\/tests\.csv:2:16: error: .*back-sqat/u);
    expect(err).toContain('did you mean "back-squat"?');
    expect(err).toContain('nothing was added to the record');
    expect(existsSync(join(folder, 'record/tests.csv'))).toBe(false);
  });

  test.each([
    ['--test back-squat ada=60', '"60" is no trial: each has its unit'],
    ['--test back-squat "ada=60,5 kg"', '"60" is no trial: each has its unit, and a point for decimals'],
    ['--test back-squat', 'whose trials?'],
    ['--test back-squat ada', '"ada" is no trial'],
    ['--test back-squat "adda=60 kg"', 'there is no athlete "adda"; did you mean "ada"?'],
    ['--test back-squat "ada=60 kg" "ada=61 kg"', 'ada is given twice'],
    ['--test back-squat --athlete cleo "ada=60 kg"', 'ada is not among those named'],
    ['--test back-squat --kind test "ada=60 kg"', '--test records trials'],
    ['--method mat', 'name it with --test'],
    ['--no-arms ada=0', 'name it with --test'],
  ])('%s is refused in words', async (args, words) => {
    const { err, status } = await done(`--date 2024-01-30 ${args}`);
    expect([status, err]).toEqual([2, expect.stringContaining(words)]);
    expect(existsSync(join(folder, 'record/tests.csv'))).toBe(false);
    expect(rows()).toEqual([]);
  });

  test('want their day, and a plan that names a file for them', async () => {
    expect((await done('--test back-squat "ada=60 kg"')).err).toContain('say which day the test was');
    writeFileSync(join(folder, 'season.yaml'), PLAN);
    const { err, status } = await done('--date 2024-01-30 --test back-squat "ada=60 kg"');
    expect([status, err]).toEqual([2, expect.stringContaining('record: { tests: record/tests.csv }')]);
  });
});

describe('what is in the file', () => {
  test('stays byte for byte; a line without its end gets one, columns and line ends are the file’s own', async () => {
    await done('--date 2024-01-02 --athlete ada');
    const before = 'athlete,date,kind,note,contacts,minutes,effort,pain\r\ncleo,2024-01-02,session,"a, b",50,,,';
    writeFileSync(recordPath(), before);
    chmodSync(recordPath(), 0o640);
    await done('--date 2024-01-04 ada=10 bea-k=20 cleo=30');
    expect(record()).toBe(
      `${before}\r\nada,2024-01-04,session,,10,,,\r\nbea-k,2024-01-04,session,,20,,,\r\ncleo,2024-01-04,session,,30,,,\r\n`,
    );
  });

  test('must be sound before anything is added', async () => {
    await done('--date 2024-01-02');
    writeFileSync(recordPath(), `${HEADER}\n2024-01-02,adda,session,50,,,,\n`);
    const { status, err } = await done('--date 2024-01-04');
    expect(status).toBe(1);
    expect(err).toContain('did you mean "ada"?');
    expect(rows()).toHaveLength(1);
  });

  test('a plan that names no record says what to write', async () => {
    writeFileSync(join(folder, 'season.yaml'), PLAN.replace(/^record:.*\n/mu, ''));
    const { status, err } = await done('--date 2024-01-02');
    expect(status).toBe(2);
    expect(err).toContain('record: { done: record/done.csv }');
  });
});

describe('several at once', () => {
  const DAYS = ['2024-01-02', '2024-01-04', '2024-01-09', '2024-01-11'];
  const start = async (day: string): Promise<unknown> =>
    await promisify(execFile)(process.execPath, [PROGRAM, 'done', '--plan', folder, '--date', day]);

  test('all rows are whole, and each session is there once', async () => {
    await Promise.all([...DAYS, ...DAYS].map(start));
    expect(record().startsWith(`${HEADER}\n`)).toBe(true);
    const days = rows().map((line) => line.split(',').slice(0, 2).join(' '));
    expect(days.toSorted()).toEqual(DAYS.flatMap((day) => ['ada', 'bea-k', 'cleo'].map((id) => `${day} ${id}`)));
    expect(rows().every((line) => line.split(',').length === 8)).toBe(true);
    expect(readdirSync(join(folder, 'record'))).toEqual(['done.csv']);
  });

  test('one that is killed leaves whole lines, and nobody waits for it', async () => {
    const killedAfter = [180, 260, 320, 380, 440, 520];
    for (const [index, milliseconds] of killedAfter.entries()) {
      const args = [PROGRAM, 'done', '--plan', folder, '--date', DAYS[index % DAYS.length] ?? ''];
      const child = spawn(process.execPath, args, { stdio: 'ignore' });
      const ended = new Promise((resolve) => child.once('exit', resolve));
      setTimeout(() => child.kill('SIGKILL'), milliseconds);
      await ended;
      if (existsSync(recordPath())) expect(record()).toMatch(/^(?:.+\n)*$/u);
    }
    // A lock as one leaves it that dies while it holds it.
    const lock = join(folder, 'record/.done.csv.lock');
    const dead = spawn(process.execPath, ['--eval', ''], { stdio: 'ignore' });
    await new Promise((resolve) => dead.once('exit', resolve));
    await start('2024-01-16');
    writeFileSync(lock, `${await machine()} ${dead.pid}\n`);
    await Promise.all(['2024-01-18', '2024-01-23', '2024-01-25'].map(start));
    expect(rows().filter((line) => line >= '2024-01-16')).toHaveLength(12);
    expect(readdirSync(join(folder, 'record'))).toEqual(['done.csv']);
  });

  const machine = async (): Promise<string> => (await import('../../src/host/running-process.ts')).THIS_MACHINE;
});
