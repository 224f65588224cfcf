import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { run } from '../../src/cli/run.ts';
import { footfall, HANDBALL, shell } from './footfall.ts';

// A season takes its time to compile, and a busy machine takes longer.
vi.setConfig({ testTimeout: 120_000 });

let folder = '';
const plan = (name: string): string => join(folder, name);

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'footfall-status-'));
  const season = 'footfall: 1\nseason: { title: A, starts: 2027-01-04, ends: 2027-01-31 }\n';
  writeFileSync(plan('wrong.yaml'), `${season}athletes: { ada: { level: beginer } }\n`);
  writeFileSync(plan('broken.yaml'), 'footfall: 1\nseason: [\n');
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

describe('0, done:', () => {
  test.each([
    ['build', HANDBALL, '--quiet'],
    ['check', 'examples/four-weeks'],
    ['rules'],
    ['rules', 'weekly-rise'],
    ['library', 'hurdle-hop'],
    ['check', '--explain', 'files/missing'],
    ['--help'],
    ['build', '--help'],
    ['--version'],
  ])('%s %s', async (...args) => {
    const { status, out } = await footfall(args);
    expect(status).toBe(0);
    expect(out).not.toBe('');
  });
});

describe('1, the plan has errors:', () => {
  test.each(['wrong.yaml', 'broken.yaml'])('build %s prints nothing on standard output', async (name) => {
    const { status, out, err } = await footfall(['build', plan(name)]);
    expect([status, out]).toEqual([1, '']);
    expect(err).toMatch(/^\S+\.yaml:\d+:\d+: error: /);
  });

  test('check says the same on standard output', async () => {
    const built = await footfall(['build', plan('wrong.yaml')]);
    const checked = await footfall(['check', plan('wrong.yaml')]);
    expect(checked).toEqual({ status: 1, out: built.err, err: '' });
  });

  test('--strict counts warnings', async () => {
    const lax = await footfall(['build', HANDBALL, '--format', 'csv']);
    const strict = await footfall(['build', HANDBALL, '--format', 'csv', '--strict']);
    expect(lax.err).toMatch(/\d+ warnings?/);
    expect([lax.status, strict.status]).toEqual([0, 1]);
    expect(strict.out).toBe(lax.out);
    expect((await footfall(['check', HANDBALL, '--strict'])).status).toBe(1);
  });
});

describe('2, the command is wrong:', () => {
  test.each([
    { args: ['bild'], says: 'Did you mean build?' },
    { args: ['build', '--tabel', 'weeks'], says: 'Did you mean --table?' },
    { args: ['build', HANDBALL, '--table', 'days'], says: 'Allowed choices are season, weeks, sessions, lines' },
    { args: ['build', HANDBALL, '--from', '2027-02-30'], says: 'must exist' },
    { args: ['build', HANDBALL, '--from', '2027-02-02', '--to', '2027-02-01'], says: '--to is before --from' },
    {
      args: ['build', HANDBALL, '--from', '2028-02-01'],
      says: '--from 2028-02-01 is in no week of the season, 2027-01-04 to 2027-05-02',
    },
    {
      args: ['build', HANDBALL, '--from', '2026-02-01', '--to', '2026-02-07'],
      says: '--from 2026-02-01 --to 2026-02-07 is in no week of the season',
    },
    { args: ['build', HANDBALL, '--athlete', 'mirra'], says: 'there is no athlete "mirra"; did you mean "mira"?' },
    { args: ['build', HANDBALL, '--squad', 'seniores'], says: 'there is no squad "seniores"; did you mean "seniors"?' },
    { args: ['build', HANDBALL, '--athlete', 'mira,,tuva'], says: 'Names stand with a comma between' },
    { args: ['build', 'no-such-plan'], says: 'no-such-plan' },
    { args: ['build', HANDBALL, 'another'], says: 'too many arguments' },
    { args: ['rules', 'weekly-rize'], says: 'did you mean "weekly-rise"?' },
    { args: ['library', 'hurdle-hopp'], says: 'did you mean "hurdle-hop"?' },
    { args: ['library', '--kit', 'hurdle'], says: 'did you mean "hurdles"?' },
    { args: ['library', '--athlete', 'mira'], says: '--athlete needs --plan' },
    { args: ['check', '--explain', 'files/mising'], says: 'did you mean "files/missing"?' },
  ])('$args', async ({ args, says }) => {
    const { status, out, err } = await footfall(args);
    expect([status, out]).toEqual([2, '']);
    expect(err).toContain(says);
  });

  test('no command at all shows what there is', async () => {
    const { status, out, err } = await footfall([]);
    expect([status, out]).toEqual([2, '']);
    expect(err).toContain('build');
  });

  test('a full disk is said', async () => {
    const { status, err } = await shell(`$f build ${HANDBALL} --format csv --quiet > /dev/full`);
    expect(status).toBe(2);
    expect(err).toContain("the output can't be written");
  });
});

describe('the built program leaves the status behind:', () => {
  test.each([
    { command: `$f build ${HANDBALL} --format csv --quiet`, status: 0 },
    { command: `$f check wrong-plan`, status: 2 },
    { command: `$f nonsense`, status: 2 },
  ])('$command', async ({ command, status }) => {
    expect((await shell(command)).status).toBe(status);
  });

  test('of a plan with errors', async () => {
    const { status, out } = await shell(`$f build ${plan('wrong.yaml')}`);
    expect([status, out]).toEqual([1, '']);
  });
});

test('a bug of ours is said to be one, with a trace and a status of its own', async () => {
  const broken = (): never => {
    throw new TypeError('no such thing');
  };
  const said: string[] = [];
  const write = async (text: string): Promise<void> => {
    said.push(text);
  };
  const output = { write, writeAll: async () => {}, end: async () => {} };
  const files = { stat: broken, readFile: broken, list: broken, realPath: broken };
  const terminal = { width: 100, colours: 0 } as const;
  const session = { files, out: output, err: output, outTerminal: terminal, errTerminal: terminal, today: 0 };
  expect(await run(['build', 'anything'], session)).toBe(3);
  expect(said.join('')).toMatch(/bug in footfall, not in your plan.*\n.*\nTypeError: no such thing\n +at /);
});

test('a reader that goes away is no error and gets no word', async () => {
  const { status, out, err } = await shell(`$f build ${HANDBALL} --table lines --format csv --quiet | head -n 1`);
  expect({ status, err }).toEqual({ status: 0, err: '' });
  expect(out).toMatch(/^athlete,date,order,/);
});

test('a pipe gets all that a file gets', async () => {
  const file = plan('lines.csv');
  await shell(`$f build ${HANDBALL} --table lines --format csv --quiet > ${file}`);
  const { out } = await shell(
    `$f build ${HANDBALL} --table lines --format csv --quiet | (sleep 0.5; cat) | cmp - ${file} && wc -c < ${file}`,
  );
  expect(Number(out)).toBeGreaterThan(100_000);
});

test.each([
  ['build', HANDBALL, '--out', ''],
  ['build', HANDBALL, '--near', ' '],
  ['new', ''],
])('2, a folder without a name is not the one that somebody is in: %s %s %s', async (...args) => {
  const { status, out, err } = await footfall(args);
  expect([status, out]).toEqual([2, '']);
  expect(err).toContain('A folder has a name, or is . for the one you are in.');
});
