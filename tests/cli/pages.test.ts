// Pages and calendars from the command line: which page answers what, and which options don't go together.

import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { TABLE_NAMES } from '../../src/report/table-names.ts';
import { footfall, HANDBALL } from './footfall.ts';

async function html(...args: readonly string[]): Promise<string> {
  const { status, out } = await footfall(['build', HANDBALL, '--format', 'html', '--quiet', ...args]);
  expect(status).toBe(0);
  expect(out.startsWith('<!DOCTYPE html>\n')).toBe(true);
  expect(out.endsWith('</html>\n')).toBe(true);
  return out;
}

test('--format html is the chart of the season', async () => {
  const page = await html();
  expect(page).toContain('<title>Season chart: Saltmarsh Handball, spring</title>');
  expect(page).toMatch(/size: A4 landscape/u);
});

test('with one --athlete it is the cards, on the paper that is asked for', async () => {
  const page = await html('--athlete', 'mira', '--paper', 'letter');
  expect(page).toContain('<title>Cards: Mira K.</title>');
  expect(page).toMatch(/size: letter portrait/u);
  expect(page.match(/class="card"/gu)?.length).toBeGreaterThan(10);
});

test('with a few days it is the boards', async () => {
  const page = await html('--from', '2027-01-25', '--to', '2027-01-31');
  expect(new Set(page.match(/<h2>.*?<\/h2>/gu)).size).toBe(3);
  expect(page).toContain('Thursday 28 January');
});

test('--format ics is a calendar of the squad, or of one athlete', async () => {
  const squad = await footfall(['build', HANDBALL, '--format', 'ics', '--quiet']);
  const one = await footfall(['build', HANDBALL, '--format', 'ics', '--athlete', 'mira', '--quiet']);
  expect([squad.status, one.status]).toEqual([0, 0]);
  expect(squad.out).toMatch(/^UID:2027-01-04-1-squad@/mu);
  expect(one.out).toMatch(/^UID:2027-01-04-1-mira@/mu);
});

test.each([
  [['--out', 'sheets', '--table', 'weeks'], /leave --table and other formats out/u],
  [['--out', 'sheets', '--format', 'html'], /leave --table and other formats out/u],
  [['--format', 'ics', '--table', 'weeks'], /--format ics has no tables/u],
  [['--paper', 'a4'], /--paper is for pages/u],
  [['--paper', 'a4', '--out', 'sheets', '--format', 'csv'], /--paper is for pages/u],
  [['--paper', 'a3', '--format', 'html'], /a4, letter/u],
])('%j is refused', async (args, words) => {
  const { status, out, err } = await footfall(['build', HANDBALL, ...args]);
  expect({ status, out }).toEqual({ status: 2, out: '' });
  expect(err).toMatch(words);
});

test('--out writes what is asked for and nothing on standard output; a foreign file stops it', async () => {
  const parent = mkdtempSync(join(tmpdir(), 'footfall-cli-out-'));
  try {
    const folder = join(parent, 'deep', 'sheets');
    const wrote = await footfall(['build', HANDBALL, '--out', folder, '--athlete', 'mira', '--quiet']);
    expect(wrote).toEqual({ status: 0, out: '', err: '' });
    expect(readdirSync(join(folder, 'athletes')).toSorted()).toEqual(['mira.html', 'mira.ics']);
    const weeks = readFileSync(join(folder, 'weeks.csv'), 'utf8');
    const printed = await footfall(['build', HANDBALL, '--athlete', 'mira', '--format', 'csv', '--quiet']);
    expect(weeks).toBe(printed.out);
    const plan = await footfall(['build', HANDBALL, '--athlete', 'mira', '--format', 'json', '--quiet']);
    expect(readFileSync(join(folder, 'plan.json'), 'utf8')).toBe(plan.out);
    writeFileSync(join(folder, 'notes.txt'), 'mine');
    const refused = await footfall(['build', HANDBALL, '--out', folder, '--quiet']);
    expect(refused.status).toBe(2);
    expect(refused.err).toMatch(/notes\.txt, which footfall didn't write/u);
  } finally {
    rmSync(parent, { recursive: true, force: true });
  }
});

test('--out with --format csv writes the tables, or the shards of them, and nothing else', async () => {
  const parent = mkdtempSync(join(tmpdir(), 'footfall-cli-tables-'));
  const write = async (name: string, ...more: readonly string[]): Promise<(table: string) => string> => {
    const folder = join(parent, name);
    const wrote = await footfall(['build', HANDBALL, '--out', folder, '--format', 'csv', '--quiet', ...more]);
    expect(wrote).toEqual({ status: 0, out: '', err: '' });
    const names = readdirSync(folder).filter((file) => file.endsWith('.csv'));
    expect(names.toSorted()).toEqual(TABLE_NAMES.map((table) => `${table}.csv`).toSorted());
    expect(readdirSync(folder).filter((file) => /html|ics|json$/u.test(file) && !file.startsWith('.'))).toEqual([]);
    return (table) => readFileSync(join(folder, `${table}.csv`), 'utf8');
  };
  try {
    const [whole, one, two] = [
      await write('whole'),
      await write('1', '--shard', '1/2'),
      await write('2', '--shard', '2/2'),
    ];
    for (const table of TABLE_NAMES) {
      const printed = await footfall(['build', HANDBALL, '--table', table, '--format', 'csv', '--quiet']);
      expect(whole(table)).toBe(printed.out);
      expect(one(table) + two(table)).toBe(printed.out);
    }
  } finally {
    rmSync(parent, { recursive: true, force: true });
  }
});
