// A season's diary: a squad of 14 over 16 weeks, each Monday the record of the week before, what else the coach changed, a
// commit, and then the three commands of a Monday: `build --as-of` near the sheets that were out, `diff HEAD~1`, `review`.
// The record is invented: Mira misses two weeks, Tuva's knee stops her and she stays away, nobody writes Oda down for two
// weeks, Mira lifts more in a test, the final is moved. story.txt has what was told; FOOTFALL_UPDATE=1 writes it anew, to
// be read before it is kept. What must be told, whatever the words around it, is in TOLD.

import { execFileSync } from 'node:child_process';
import { appendFileSync, cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, expect, test, vi } from 'vitest';
import { isoDate, parseIsoDate } from '../../src/util/days.ts';
import type { Day } from '../../src/util/days.ts';
import { footfall, rowsOf, shell } from '../cli/footfall.ts';
import type { Ran } from '../cli/footfall.ts';

vi.setConfig({ testTimeout: 600_000 });

const STORY = resolve('tests/diary/story.txt');
const PROGRAM = resolve('bin/footfall.js');
const HOME = process.cwd();
const FIRST_MONDAY = parseIsoDate('2027-01-04') ?? 0;
const WEEKS = 16;
/** Mondays on which the commands also run as the shell starts them. */
const IN_THE_SHELL: ReadonlySet<number> = new Set([11]);

const repository = mkdtempSync(join(tmpdir(), 'footfall-diary-'));
const sheetsFolder = mkdtempSync(join(tmpdir(), 'footfall-diary-sheets-'));
const plan = join(repository, 'season');
const git = (...args: readonly string[]): string =>
  execFileSync('git', ['-c', 'user.name=Coach', '-c', 'user.email=coach@example.org', ...args], {
    cwd: repository,
    encoding: 'utf8',
  });

afterAll(() => {
  for (const folder of [repository, sheetsFolder]) rmSync(folder, { recursive: true, force: true });
});

function edit(file: string, from: string, to: string): void {
  const text = readFileSync(join(plan, file), 'utf8');
  expect(text).toContain(from);
  writeFileSync(join(plan, file), text.replace(from, to));
}

const append = (file: string, text: string): void => appendFileSync(join(plan, 'record', file), text);

/** What the coach writes besides the record of the sessions, once so many weeks are over. */
const EDITS: ReadonlyMap<number, () => void> = new Map([
  // Who doesn't jump at all has no sheet to tick, and may be looked after all the same.
  [7, () => append('done.csv', '2027-02-16,tuva,session,0,,,1,knee is calm\n')],
  [9, () => append('tests.csv', '2027-03-04,mira,back-squat,1,97.5,kg,,,\n')],
  [10, () => edit('squad/seniors.yaml', 'max: 92.5 kg, on: 2026-12-12', 'max: 97.5 kg, on: 2027-03-04')],
  [11, () => edit('season.yaml', 'County cup final, date: 2027-04-24', 'County cup final, date: 2027-05-01')],
]);

/** What is recorded of one session in a week; nothing where the row stays away. */
function row(week: number, athlete: string, date: string): string {
  const done = (contacts: string, pain: string, note: string): string =>
    `${date},${athlete},session,${contacts},,,${pain},${note}\n`;
  if (athlete === 'mira' && (week === 4 || week === 5)) return done('0', '', 'ill');
  if (athlete === 'tuva' && week === 6) return done('', '6', 'knee');
  if (athlete === 'tuva' && week === 8) return done('0', '', 'at home');
  if (athlete === 'tuva' && week === 9) return done('10', '1', 'tried again');
  if (athlete === 'oda' && (week === 10 || week === 11)) return '';
  return done('', '', '');
}

const sheetsOf = (week: number): string => join(sheetsFolder, String(week));
const table = (week: number, name: string): readonly (readonly string[])[] =>
  rowsOf(readFileSync(join(sheetsOf(week), `${name}.csv`), 'utf8'));

/** A row for each session on the sheets of a week, in order of day. */
function recordWeek(week: number): void {
  const mine = table(week - 1, 'sessions').filter(([, , of]) => Number(of) === week);
  const rows = mine.map(([athlete = '', date = '']) => ({ athlete, date }));
  for (const { athlete, date } of rows.toSorted((a, b) => (a.date < b.date ? -1 : Number(a.date > b.date))))
    append('done.csv', row(week, athlete, date));
}

/** A command as if typed in the repository. */
async function typed(args: readonly string[]): Promise<Ran> {
  process.chdir(repository);
  try {
    return await footfall(args);
  } finally {
    process.chdir(HOME);
  }
}

interface Told {
  readonly diff: string;
  readonly decisions: string;
  readonly exceptions: string;
  readonly ahead: string;
}

/** Builds the sheets of a Monday; an error in them would end with another status. */
async function build(monday: Day, week: number): Promise<void> {
  const near = week === 0 ? [] : ['--near', sheetsOf(week - 1)];
  const ran = await typed(['build', 'season', '--as-of', isoDate(monday), ...near, '--out', sheetsOf(week)]);
  expect([ran.status, /\berror/u.exec(ran.err)?.[0]]).toEqual([0, undefined]);
}

async function tell(monday: Day): Promise<Told> {
  const diff = await typed(diffOn(monday));
  const review = await typed(reviewOn(monday));
  expect([diff.status, review.status]).toEqual([0, 0]);
  const { decisions, exceptions, ahead }: Record<'decisions' | 'exceptions' | 'ahead', readonly Item[]> = JSON.parse(
    review.out,
  );
  return {
    diff: diff.out,
    decisions: decisions.map(itemWords).join('\n'),
    exceptions: exceptions.map(itemWords).join('\n'),
    ahead: ahead.map(itemWords).join('\n'),
  };
}

interface Item {
  readonly kind: string;
  readonly athletes: readonly string[];
  readonly what: string;
  readonly changes?: string;
}

const diffOn = (monday: Day): readonly string[] => ['diff', 'HEAD~1', '--plan', 'season', '--as-of', isoDate(monday)];
const reviewOn = (monday: Day): readonly string[] => [
  'review',
  'season',
  '--as-of',
  isoDate(monday),
  '--format',
  'json',
];

const MANY = 4;
function itemWords({ kind, athletes, what, changes }: Item): string {
  const who = athletes.length > MANY ? `${athletes.length} athletes` : athletes.join(', ');
  return `${kind} | ${who} | ${what}${changes === undefined ? '' : ` | ${changes}`}`;
}

/** What a Monday must tell, in which of the three. */
const TOLD: ReadonlyMap<number, Readonly<Partial<Record<keyof Told, readonly RegExp[]>>>> = new Map([
  // Missed weeks are exceptions, the diff follows from the record, and two of them begin a ladder.
  [
    4,
    {
      diff: [
        /follows from record of training\n {2}week of 18 Jan[\s\S]*week of 25 Jan +week build → no jumps: Mira K\./u,
      ],
      exceptions: [
        /^missed \| mira \| Tue 26 Jan: \d+ planned; ill$/mu,
        /^this week \| mira \| \d+ jumps, and \d+ before/mu,
      ],
    },
  ],
  [5, { exceptions: [/^this week \| mira \| .*coming back: 50 %/mu], ahead: [/^coming back week \| mira \|/mu] }],
  // Pain stops the jumps of the weeks ahead until a better morning; then there is a ladder.
  [
    6,
    {
      diff: [/contacts \d+ → 0: Tuva H\./u],
      decisions: [/^pain stop \| tuva \| pain of 6 .*\(knee\)/mu],
      exceptions: [/^pain \| tuva \| 6 /mu],
    },
  ],
  [7, { diff: [/contacts 0 → \d+: Tuva H\./u] }],
  [8, { ahead: [/^coming back week \| .*tuva/mu], exceptions: [/^missed \| tuva \| .*at home$/mu] }],
  // A tested maximum is something to decide, and kilos only once it is written.
  [
    9,
    {
      diff: [/record of tests: 1 row added/u],
      decisions: [/^new maximum \| mira \| .*97\.5 kg.* \| back squat on 9 Mar 70 kg to 75 kg/mu],
    },
  ],
  [
    10,
    {
      diff: [
        /athlete Mira K\.: lifts \(back-squat\)/u,
        /follows from athlete Mira K\.\n[\s\S]*Back squat [\d.]+ kg → [\d.]+ kg: Mira K\./u,
      ],
      exceptions: [/^not recorded \| oda \|/mu],
    },
  ],
  // The final is moved, and what nobody wrote down isn't taken for done.
  [
    11,
    {
      diff: [
        /competition County cup final: range 24 Apr 2027 → 1 May 2027/u,
        /follows from competition County cup final[^\n]*\n(?:(?!follows)[\s\S])*phase sharpening → maintenance/u,
      ],
      decisions: [/^record missing \| oda \| .*two weeks without a record: nothing rises/mu],
    },
  ],
]);

/** What a Monday may not tell any more. */
const OVER: ReadonlyMap<number, RegExp> = new Map([
  [7, /^pain stop/mu],
  [10, /^new maximum/mu],
]);

const MOST_LINES = 16;
function shortened(text: string): string {
  const lines = text.trimEnd().split('\n');
  if (lines.length <= MOST_LINES) return lines.join('\n');
  return [...lines.slice(0, MOST_LINES), `… and ${lines.length - MOST_LINES} lines more`, lines.at(-1)].join('\n');
}

function weekOf(week: number, athlete: string): string {
  const found = table(week, 'weeks').find(([id, number]) => id === athlete && Number(number) === week + 1);
  return `${athlete} ${found === undefined ? '-' : `${found[6]} (${found[4]})`}`;
}

/** The built program, started by a shell in the repository, says the same. */
async function expectSameInTheShell(monday: Day, week: number): Promise<void> {
  const near = ['--near', sheetsOf(week - 1), '--table', 'weeks', '--format', 'csv'];
  const commands = [diffOn(monday), reviewOn(monday), ['build', 'season', '--as-of', isoDate(monday), ...near]];
  for (const args of commands) {
    const started = await shell(`cd '${repository}'; node '${PROGRAM}' ${args.join(' ')}`);
    expect(started).toEqual(await typed(args));
  }
}

test('a season as it really went', async () => {
  cpSync('examples/handball-spring', plan, { recursive: true });
  writeFileSync(join(plan, 'record', 'done.csv'), 'date,athlete,kind,contacts,minutes,effort,pain,note\n');
  writeFileSync(join(plan, 'record', 'tests.csv'), 'date,athlete,test,trial,value,unit,method,arms,note\n');
  git('init', '--quiet');
  git('add', '.');
  git('commit', '--quiet', '--message', 'the plan of January');
  await build(FIRST_MONDAY, 0);
  const story: string[] = [];
  for (let week = 1; week <= WEEKS; week += 1) {
    const monday = FIRST_MONDAY + 7 * week;
    recordWeek(week);
    EDITS.get(week)?.();
    git('add', '.');
    git('commit', '--quiet', '--message', `week ${week}`);
    await build(monday, week);
    const told = await tell(monday);
    const { diff = [], decisions = [], exceptions = [], ahead = [] } = TOLD.get(week) ?? {};
    for (const words of diff) expect(told.diff).toMatch(words);
    for (const words of decisions) expect(told.decisions).toMatch(words);
    for (const words of exceptions) expect(told.exceptions).toMatch(words);
    for (const words of ahead) expect(told.ahead).toMatch(words);
    const over = OVER.get(week);
    if (over !== undefined) expect(told.decisions).not.toMatch(over);
    expect(told.decisions).not.toMatch(/^week blocked/mu);
    if (IN_THE_SHELL.has(week)) await expectSameInTheShell(monday, week);
    story.push(
      `== Monday ${isoDate(monday)}, week ${week} is over`,
      `this week: ${['mira', 'tuva', 'oda', 'ella'].map((id) => weekOf(week, id)).join(', ')}`,
      `-- diff\n${shortened(told.diff)}`,
      `-- to decide\n${told.decisions}`,
      `-- otherwise than written\n${told.exceptions}`,
      `-- the week ahead\n${told.ahead}`,
      '',
    );
  }
  expect(git('rev-list', '--count', 'HEAD').trim()).toBe(String(WEEKS + 1));
  expect(git('status', '--porcelain')).toBe('');
  const text = `${story.join('\n')}\n`;
  if (process.env['FOOTFALL_UPDATE'] === '1') writeFileSync(STORY, text);
  expect(text).toBe(readFileSync(STORY, 'utf8'));
});
