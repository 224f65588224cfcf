// `footfall review` from the command line: text, tables, JSON, and what it refuses.

import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { footfall, HANDBALL, rowsOf } from './footfall.ts';
import { isoDate, parseIsoDate } from '../../src/util/days.ts';
import { REVIEW_TABLE_NAMES } from '../../src/report/review-table-names.ts';

const DIARY = 'examples/harbour-diary';

describe('the page', () => {
  test('begins with what to decide, then what went otherwise, then the numbers', async () => {
    const { out, status } = await footfall(['review', DIARY]);
    expect(status).toBe(0);
    const places = [
      'To decide',
      'Otherwise than written',
      'Contacts done of those planned',
      'Jump tests',
      'not medical advice',
    ].map((words) => out.indexOf(words));
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    expect(Math.min(...places)).toBeGreaterThan(0);
    expect(out).not.toMatch(/undefined|NaN|\[object/u);
  });

  test('says of those under 16 no more than the first name', async () => {
    const { out } = await footfall(['review', DIARY]);
    expect(out).toContain('Gus');
    expect(out).not.toContain('Gus B.');
  });

  test('is of the day that is asked for, and knows nothing recorded later', async () => {
    const { out } = await footfall(['review', DIARY, '--as-of', '2025-01-27']);
    expect(out).toContain('Monday 27 Jan 2025');
    expect(out).not.toContain('pain of 7');
  });

  test('is of the athletes that are asked for', async () => {
    const { out } = await footfall(['review', DIARY, '--athlete', 'cato']);
    expect(out).toContain('Cato F.');
    expect(out).not.toMatch(/Alma|Berit|Dina/u);
    const other = await footfall(['review', DIARY, '--squad', 'school']);
    expect(other.out).not.toMatch(/Cato|event-gap/u);
  });
});

describe('tables', () => {
  test.each(REVIEW_TABLE_NAMES)('%s is the same as CSV and as JSON', async (table) => {
    const csv = await footfall(['review', DIARY, '--table', table, '--format', 'csv']);
    const json = await footfall(['review', DIARY, '--table', table, '--format', 'json']);
    const objects: readonly object[] = JSON.parse(json.out);
    expect(rowsOf(csv.out)).toHaveLength(objects.length);
    expect(objects.length).toBeGreaterThan(0);
    expect(csv.out.split('\r\n')[0]?.split(',')).toEqual(Object.keys(objects[0] ?? {}));
  });

  test('the one without a name is weeks', async () => {
    const named = await footfall(['review', DIARY, '--table', 'weeks', '--format', 'csv']);
    const plain = await footfall(['review', DIARY, '--format', 'csv']);
    expect(plain.out).toBe(named.out);
  });
});

describe('what was planned', () => {
  // Another way to the same number: the sessions that a build as of the week's first day has in it.
  test.each(['2025-01-13', '2025-01-27', '2025-02-03'])('in the week of %s is what its sheets had', async (starts) => {
    const { out } = await footfall(['review', DIARY, '--table', 'weeks', '--format', 'json']);
    const weeks: readonly { athlete: string; starts: string; planned: number }[] = JSON.parse(out);
    const until = isoDate((parseIsoDate(starts) ?? 0) + 6);
    const days = ['--as-of', starts, '--from', starts, '--to', until];
    const sheets = await footfall(['build', DIARY, ...days, '--table', 'sessions', '--format', 'json']);
    const sessions: readonly { athlete: string; contacts: number }[] = JSON.parse(sheets.out);
    const mine = weeks.filter((week) => week.starts === starts);
    expect(mine).toHaveLength(7);
    for (const { athlete, planned } of mine) {
      const sum = sessions.reduce((total, one) => (one.athlete === athlete ? total + one.contacts : total), 0);
      expect([athlete, planned]).toEqual([athlete, sum]);
    }
  });
});

describe('JSON', () => {
  test.each([
    [['review', DIARY]],
    [['review', DIARY, '--as-of', '2025-01-01']],
    [['review', DIARY, '--as-of', '2025-01-22']],
    [['review', DIARY, '--as-of', '2025-06-01']],
    [['review', HANDBALL, '--as-of', '2027-03-10', '--squad', 'juniors']],
    [['review', 'examples/youth-group', '--as-of', '2027-04-30']],
  ])('%j is as its schema says', async (args) => {
    const { out, status } = await footfall([...args, '--format', 'json']);
    expect(status).toBe(0);
    const validate = new Ajv2020({ strict: false, validateFormats: false }).compile(
      JSON.parse(readFileSync('schemas/review.schema.json', 'utf8')),
    );
    validate(JSON.parse(out));
    expect(validate.errors).toBeNull();
  });

  test('holds no comparison of children', async () => {
    const { out } = await footfall(['review', 'examples/youth-group', '--as-of', '2027-04-30', '--format', 'json']);
    const { best_jumpers: best, forecast }: Record<string, readonly unknown[]> = JSON.parse(out);
    expect([best, forecast]).toEqual([[], []]);
  });
});

describe('the page to print', () => {
  test('escapes what it shows, and stands alone', async () => {
    const { out, status } = await footfall(['review', DIARY, '--format', 'html', '--paper', 'letter']);
    expect(status).toBe(0);
    expect(out).toContain('size: letter portrait');
    expect(out).not.toMatch(/<script|<link|<img|https?:/u);
  });
});

describe('what is wrong with a command', () => {
  test('a review without a record wants its day', async () => {
    const { status, err, out } = await footfall(['review', HANDBALL]);
    expect({ status, out }).toEqual({ status: 2, out: '' });
    expect(err).toContain('--as-of');
  });

  test('options that do not go together are refused', async () => {
    for (const args of [
      ['--table', 'weeks', '--format', 'html'],
      ['--paper', 'a4'],
    ]) {
      const { status, out } = await footfall(['review', DIARY, ...args]);
      expect({ status, out }).toEqual({ status: 2, out: '' });
    }
  });

  test('an unknown athlete is refused with the nearest', async () => {
    const { status, err } = await footfall(['review', DIARY, '--athlete', 'alam']);
    expect(status).toBe(2);
    expect(err).toContain('alma');
  });
});
