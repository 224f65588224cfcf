import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test, vi } from 'vitest';
import { TABLE_NAMES } from '../../src/report/table-names.ts';
import { CAUTIONS } from '../../src/report/cautions.ts';
import { footfall, HANDBALL, rowsOf } from './footfall.ts';

// A season takes its time to compile, and a busy machine takes longer.
vi.setConfig({ testTimeout: 120_000 });

const EXAMPLES = ['four-weeks', 'handball-spring', 'jumpers-two-peaks', 'youth-group'];

async function csv(table: string, ...more: readonly string[]): Promise<readonly (readonly string[])[]> {
  const { out, status } = await footfall(['build', HANDBALL, '--format', 'csv', '--table', table, '--quiet', ...more]);
  expect(status).toBe(0);
  return rowsOf(out);
}

const sum = (rows: readonly (readonly string[])[], column: number): number =>
  rows.reduce((total, row) => total + Number(row[column]), 0);

describe('tables', () => {
  test('tell the same contacts: weeks, sessions, lines, season', async () => {
    const contacts = [
      sum(await csv('weeks'), 6),
      sum(await csv('sessions'), 7),
      sum(await csv('lines'), 7),
      sum(await csv('season'), 5),
    ];
    expect(contacts[0]).toBeGreaterThan(10_000);
    expect(new Set(contacts).size).toBe(1);
  });

  test('without a name CSV is the weeks', async () => {
    const { out } = await footfall(['build', HANDBALL, '--format', 'csv', '--quiet']);
    expect(rowsOf(out)).toEqual(await csv('weeks'));
  });

  test.each(TABLE_NAMES)('%s is the same in JSON as in CSV', async (table) => {
    const { out } = await footfall([
      'build',
      HANDBALL,
      '--format',
      'json',
      '--table',
      table,
      '--quiet',
      '--athlete',
      'mira',
    ]);
    const objects: Record<string, string | number | null>[] = JSON.parse(out);
    const fromCsv = await csv(table, '--athlete', 'mira');
    expect(
      objects.map((object) =>
        Object.values(object)
          .map((cell) => String(cell ?? ''))
          .join(),
      ),
    ).toEqual(fromCsv.map((row) => row.join()));
  });

  test.each(TABLE_NAMES)('%s has a text form that ends with the cautions', async (table) => {
    const { out, status } = await footfall(['build', HANDBALL, '--table', table, '--squad', 'juniors', '--quiet']);
    expect(status).toBe(0);
    expect(out).toMatch(/Lin A\.|lin/);
    expect(out.replaceAll(/\s+/g, ' ')).toContain(CAUTIONS.join(' '));
  });
});

describe('only what is asked for', () => {
  const athletes = (rows: readonly (readonly string[])[]): readonly (string | undefined)[] => [
    ...new Set(rows.map(([athlete]) => athlete)),
  ];

  test('athletes, named together or one after the other, and squads', async () => {
    expect(athletes(await csv('season', '--athlete', 'mira,tuva'))).toEqual(['mira', 'tuva']);
    expect(athletes(await csv('season', '--athlete', 'tuva', '--athlete', 'mira'))).toEqual(['mira', 'tuva']);
    expect(athletes(await csv('season', '--squad', 'juniors', '--athlete', 'mira'))).toEqual([
      'ella',
      'frid',
      'lin',
      'maja',
      'mira',
      'nora',
      'saga',
    ]);
  });

  test('days', async () => {
    const dates = (await csv('sessions', '--from', '2027-02-01', '--to', '2027-02-07')).map(([, date = '']) => date);
    expect(dates.length).toBeGreaterThan(0);
    expect(dates.every((date) => '2027-02-01' <= date && date <= '2027-02-07')).toBe(true);
    const weeks = await csv('weeks', '--from', '2027-02-03', '--to', '2027-02-09', '--athlete', 'mira');
    expect(weeks.map(([, week]) => week)).toEqual(['5', '6']);
  });
});

describe('shards', () => {
  const build = async (...more: readonly string[]): Promise<string> =>
    (await footfall(['build', HANDBALL, '--format', 'csv', '--quiet', ...more])).out;

  const parts = async (of: number, ...more: readonly string[]): Promise<string> => {
    let whole = '';
    for (let part = 1; part <= of; part += 1) whole += await build(...more, '--shard', `${part}/${of}`);
    return whole;
  };

  test.each(TABLE_NAMES)('of %s, one behind the other, are the whole', async (table) => {
    expect(await parts(3, '--table', table)).toBe(await build('--table', table));
  });

  test('may be one, or more than there are athletes', async () => {
    const whole = await build();
    expect([await parts(1), await parts(17)]).toEqual([whole, whole]);
  });

  test('share out whoever is asked for, and keep nobody from being so', async () => {
    const juniors = ['--squad', 'juniors'];
    const [one, two] = [await build(...juniors, '--shard', '1/2'), await build(...juniors, '--shard', '2/2')];
    expect(one + two).toBe(await build(...juniors));
    expect(one.split('\r\n').length - 1).toBe(two.split('\r\n').length);
  });

  test.each([
    [['--shard', '3/2', '--format', 'csv'], 'the second of eight'],
    [['--shard', '0/2', '--format', 'csv'], 'the second of eight'],
    [['--shard', 'half', '--format', 'csv'], 'the second of eight'],
    [['--shard', '1/2'], '--format csv'],
    [['--shard', '1/2', '--out', 'sheets'], '--format csv'],
  ])('%s is refused', async (more, words) => {
    const { status, err } = await footfall(['build', HANDBALL, ...more]);
    expect({ status, said: err.includes(words) }).toEqual({ status: 2, said: true });
  });
});

describe('text', () => {
  test('without a table is the season: everybody, every week, what the marks mean', async () => {
    const { out } = await footfall(['build', HANDBALL, '--quiet']);
    for (const name of ['Mira K.', 'Frid O.', 'County cup final, Sat 24 Apr', 'easy week', 'taper'])
      expect(out).toContain(name);
    expect(out).toMatch(/week( +\d+){17}\n/);
  });

  test('of one athlete is the weeks with their reasons, and the sessions', async () => {
    const { out } = await footfall(['build', HANDBALL, '--athlete', 'oda', '--quiet'], { COLUMNS: '140' });
    expect(out).toMatch(/10 +8 Mar +maintenance .* 40 .*the coach's own number, season\.yaml:\d+/);
    expect(out).toContain('Tue 5 Jan');
  });

  test('of a week has the sessions to read out', async () => {
    const { out } = await footfall(['build', HANDBALL, '--from', '2027-01-04', '--to', '2027-01-10', '--quiet']);
    expect(out).toContain('Thursday 7 January, 18:00, hall');
    expect(out).toContain('stop: ');
  });

  test.each([40, 60, 100, 140])('fits a window of %i columns', async (columns) => {
    for (const more of [
      [],
      ['--athlete', 'mira'],
      ['--from', '2027-01-04', '--to', '2027-01-10'],
      ['--table', 'weeks'],
    ]) {
      const { out } = await footfall(['build', HANDBALL, '--quiet', ...more], { COLUMNS: String(columns) });
      expect(out.split('\n').filter((line) => line.length > Math.max(columns, 60))).toEqual([]);
    }
  });

  test('has no colour in a pipe, some when asked for, and says the same with it', async () => {
    const plain = await footfall(['build', HANDBALL]);
    const coloured = await footfall(['build', HANDBALL], { FORCE_COLOR: '1' });
    const refused = await footfall(['build', HANDBALL], { NO_COLOR: '1' });
    const escape = String.fromCodePoint(27);
    expect(plain.out).not.toContain(escape);
    expect(coloured.out).toContain(`${escape}[`);
    expect(coloured.out.replaceAll(new RegExp(`${escape}\\[\\d+m`, 'g'), '')).toBe(plain.out);
    expect(refused).toEqual(plain);
  });
});

describe('JSON', () => {
  const schema: object = JSON.parse(readFileSync('schemas/build.schema.json', 'utf8'));

  test.each(EXAMPLES)('of %s is as its schema says', async (example) => {
    const { out } = await footfall(['build', `examples/${example}`, '--format', 'json', '--quiet']);
    const validate = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(schema);
    const document: unknown = JSON.parse(out);
    expect(validate(document), JSON.stringify(validate.errors?.slice(0, 3))).toBe(true);
  });

  test('has a reason and a place for a number the coach set', async () => {
    const { out } = await footfall(['build', HANDBALL, '--format', 'json', '--athlete', 'oda', '--quiet']);
    const document: {
      athletes: { weeks: { week: number; bound_by: string; reasons: { by: string; places: object[] }[] }[] }[];
    } = JSON.parse(out);
    const week = document.athletes[0]?.weeks.find((one) => one.week === 10);
    expect(week?.bound_by).toBe('pin');
    expect(week?.reasons.some(({ by, places }) => by === 'pin' && places.length > 0)).toBe(true);
  });

  test('has no reason of health in it', async () => {
    const { out } = await footfall(['build', HANDBALL, '--format', 'json', '--quiet']);
    expect(out).not.toContain('left knee');
  });
});

test('--quiet leaves standard error empty where there is no error', async () => {
  expect((await footfall(['build', HANDBALL, '--quiet'])).err).toBe('');
  expect((await footfall(['build', HANDBALL])).err).toMatch(
    /^\d+ warnings?, \d+ notices?; footfall check shows them whole\n/,
  );
});

test('says which day a plan with a record goes by, where none is named', async () => {
  const said = /^footfall: planned as of 2025-02-08, the day after the last record; --as-of names another$/mu;
  const diary = ['build', 'examples/harbour-diary', '--athlete', 'alma'];
  expect((await footfall(diary)).err).toMatch(said);
  expect((await footfall([...diary, '--as-of', '2025-02-10'])).err).not.toContain('planned as of');
  expect((await footfall([...diary, '--quiet'])).err).toBe('');
  expect((await footfall(['build', HANDBALL])).err).not.toContain('planned as of');
});
