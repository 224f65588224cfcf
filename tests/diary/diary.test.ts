// A season's diary: a squad of 14 over 16 weeks, each Monday the record of the week before, what else the coach changed, a
// commit, a build as of that day near the sheets that were out, and the diff to the Monday before. The record is invented:
// Mira misses two weeks, Tuva's knee hurts and she stays away, nobody writes Oda down for two weeks, Mira lifts more, the
// final is moved. The story is in story.txt; FOOTFALL_UPDATE=1 writes it anew, to be read before it is kept.

import { execFileSync } from 'node:child_process';
import { appendFileSync, cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test, vi } from 'vitest';
import type { BuiltAthlete } from '../../src/build/types.ts';
import { compileAt } from '../../src/cli/open-plan.ts';
import { diffBuilds } from '../../src/diff/diff-builds.ts';
import { athleteSheet } from '../../src/diff/side.ts';
import type { Side } from '../../src/diff/side.ts';
import { fileSystem } from '../../src/host/files.ts';
import { createPalette } from '../../src/render/palette.ts';
import { renderDiff } from '../../src/render/terminal/diff.ts';
import { reportDiff } from '../../src/report/diff-report.ts';
import type { Published } from '../../src/schedule/days.ts';
import { isoDate, parseIsoDate } from '../../src/util/days.ts';
import type { Day } from '../../src/util/days.ts';

vi.setConfig({ testTimeout: 240_000 });

const STORY = 'tests/diary/story.txt';
const FIRST_MONDAY = parseIsoDate('2027-01-04') ?? 0;
const WEEKS = 16;

const repository = mkdtempSync(join(tmpdir(), 'footfall-diary-'));
const plan = join(repository, 'season');
const record = join(plan, 'record', 'done.csv');
const git = (...args: readonly string[]): string =>
  execFileSync('git', ['-c', 'user.name=Coach', '-c', 'user.email=coach@example.org', ...args], {
    cwd: repository,
    encoding: 'utf8',
  });

afterAll(() => {
  rmSync(repository, { recursive: true, force: true });
});

const edit = (file: string, from: string, to: string): void => {
  const text = readFileSync(join(plan, file), 'utf8');
  expect(text).toContain(from);
  writeFileSync(join(plan, file), text.replace(from, to));
};

/** What the coach changes in the plan before the Monday behind so many weeks. */
const EDITS: ReadonlyMap<number, () => void> = new Map([
  [9, () => edit('squad/seniors.yaml', 'max: 92.5 kg, on: 2026-12-12', 'max: 97.5 kg, on: 2027-03-07')],
  [11, () => edit('season.yaml', 'County cup final, date: 2027-04-24', 'County cup final, date: 2027-05-01')],
]);

/** What is recorded of one session in a week; nothing where the row stays away. */
function row(week: number, athlete: string, day: Day): string {
  const done = (contacts: string, pain: string, note: string): string =>
    `${isoDate(day)},${athlete},session,${contacts},,,${pain},${note}\n`;
  if (athlete === 'mira' && (week === 4 || week === 5)) return done('0', '', 'ill');
  if (athlete === 'tuva' && week === 6) return done('', '6', 'knee');
  if (athlete === 'tuva' && week === 8) return done('0', '', 'at home');
  if (athlete === 'tuva' && week === 9) return done('10', '1', 'tried again');
  if (athlete === 'oda' && (week === 10 || week === 11)) return '';
  return done('', '', '');
}

interface Monday {
  readonly side: Side;
  readonly athletes: readonly BuiltAthlete[];
  readonly published: Published;
}

function buildOn(day: Day, published?: Published): Monday {
  const { build, diagnostics } = compileAt(
    plan,
    { files: fileSystem, today: 30_000 },
    { asOf: day, ...(published !== undefined && { published }) },
  );
  if (build === undefined) throw new Error(diagnostics.map(({ message }) => message).join('\n'));
  const athletes = [...build.athletes];
  const sheets = athletes.map(athleteSheet);
  return {
    side: { plan: build.plan, units: build.plan.season.units, athletes: build.plan.athletes, sheets },
    athletes,
    published: new Map(
      athletes.map(({ athlete, weeks }) => [
        athlete.id,
        new Map(weeks.flatMap(({ sessions }) => sessions.map(({ day: on, jumps, lifts }) => [on, { jumps, lifts }]))),
      ]),
    ),
  };
}

/** A row for each session with jumps in the week that begins on a day. */
function recordWeek(week: number, starts: Day, { athletes }: Monday): void {
  for (const { athlete, weeks } of athletes)
    for (const { day, jumps } of weeks.find((one) => one.starts === starts)?.sessions ?? [])
      if (jumps) appendFileSync(record, row(week, athlete.id, day));
  // Who doesn't jump at all has no sheet to tick, and may be looked after all the same.
  if (week === 7) appendFileSync(record, `${isoDate(starts + 1)},tuva,session,0,,,1,knee is calm\n`);
}

function told(before: Monday, after: Monday, monday: Day): string {
  const found = diffBuilds(before.side, after.side);
  // What is over differs from its sheets by its nature: the story is of the days ahead.
  const ahead = found.athletes.map((one) => ({ ...one, weeks: one.weeks.filter(({ starts }) => starts >= monday) }));
  const report = reportDiff(
    { ...found, athletes: ahead },
    { before: before.side, after: after.side, printed: monday + 6 },
  );
  const canvas = { palette: createPalette(0), width: 110 };
  const lines = report === undefined ? ['nothing'] : renderDiff(report, canvas);
  const most = 14;
  const rest = lines.length > most ? [`… and ${lines.length - most} lines more`, lines.at(-1) ?? ''] : [];
  return [...lines.slice(0, most), ...rest].join('\n');
}

const contactsOf = ({ athletes }: Monday, id: string, starts: Day): string => {
  const week = athletes.find(({ athlete }) => athlete.id === id)?.weeks.find((one) => one.starts === starts);
  return week === undefined ? '-' : `${week.contacts} (${week.kind})`;
};

test('a season as it really went', () => {
  cpSync('examples/handball-spring', plan, { recursive: true });
  mkdirSync(join(plan, 'record'), { recursive: true });
  writeFileSync(record, 'date,athlete,kind,contacts,minutes,effort,pain,note\n');
  git('init', '--quiet');
  git('add', '.');
  git('commit', '--quiet', '--message', 'the plan of January');
  let before = buildOn(FIRST_MONDAY);
  const story: string[] = [];
  for (let week = 1; week <= WEEKS; week += 1) {
    const starts = FIRST_MONDAY + 7 * (week - 1);
    const monday = starts + 7;
    recordWeek(week, starts, before);
    EDITS.get(week)?.();
    git('add', '.');
    git('commit', '--quiet', '--message', `week ${week}`);
    const now = buildOn(monday, before.published);
    const errors = now.athletes.flatMap(({ diagnostics }) =>
      diagnostics.filter(({ severity }) => severity === 'error'),
    );
    expect(errors.map(({ message }) => `week ${week}: ${message}`)).toEqual([]);
    const watched = ['mira', 'tuva', 'oda', 'ella'].map((id) => `${id} ${contactsOf(now, id, monday)}`).join(', ');
    story.push(
      `== Monday ${isoDate(monday)}, week ${week} is over\nthis week: ${watched}`,
      told(before, now, monday),
      '',
    );
    before = now;
  }
  expect(git('rev-list', '--count', 'HEAD').trim()).toBe(String(WEEKS + 1));
  const text = `${story.join('\n')}\n`;
  if (process.env['FOOTFALL_UPDATE'] === '1') writeFileSync(STORY, text);
  expect(text).toBe(readFileSync(STORY, 'utf8'));
});
