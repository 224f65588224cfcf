// `footfall diff` on a plan in a real git repository: what changed is said, and nothing is checked out.

import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { afterAll, beforeAll, beforeEach, expect, test, vi } from 'vitest';
import { footfall, shell } from './footfall.ts';
import type { Ran } from './footfall.ts';
import { LEFT_OUT } from '../../src/report/week-words.ts';

// A season takes its time to compile, and a busy machine takes longer.
vi.setConfig({ testTimeout: 120_000, hookTimeout: 120_000 });

const repository = mkdtempSync(join(tmpdir(), 'footfall-diff-'));
const entry = join(repository, 'season', 'season.yaml');
const program = join(process.cwd(), 'bin', 'footfall.js');

const git = (...args: readonly string[]): string =>
  execFileSync('git', ['-c', 'user.name=Coach', '-c', 'user.email=coach@example.org', ...args], {
    cwd: repository,
    encoding: 'utf8',
  });

beforeAll(() => {
  cpSync('examples/four-weeks', join(repository, 'season'), { recursive: true });
  git('init', '--quiet');
  git('add', '.');
  git('commit', '--quiet', '--message', 'first');
});

afterAll(() => {
  rmSync(repository, { recursive: true });
});

beforeEach(() => {
  git('checkout', '--quiet', '--', '.');
});

function edit(from: string, to: string): void {
  const text = readFileSync(entry, 'utf8');
  expect(text).toContain(from);
  writeFileSync(entry, text.replace(from, to));
}

const diff = async (...args: readonly string[]): Promise<Ran> =>
  await shell(`cd '${repository}'; node '${program}' diff --plan season ${args.join(' ')}`);

test('the same build gives no output, whatever the comments say', async () => {
  edit('places:', '# where we train\nplaces:');
  expect(await diff('--exit-code')).toEqual({ status: 0, out: '', err: '' });
});

test('an edit is told with its line and what follows, and the working tree stays as it is', async () => {
  edit('{ day: friday, minutes: 70, place: gym }', '{ day: thursday, minutes: 70, place: gym }');
  const before = git('status', '--porcelain');
  const { status, out } = await diff('--exit-code');
  expect(status).toBe(1);
  expect(out).toContain('slot thursday added, season.yaml:10');
  expect(out).toContain('slot friday removed, season.yaml:10');
  expect(out).toMatch(/jumps Fri \d+ May → Thu \d+ May: Pia N\., Teo J\., Uma E\./);
  expect(out).toMatch(/In all: .*athletes 3\.\n$/);
  expect(git('status', '--porcelain')).toBe(before);
});

test('a number the coach wrote is edited, the weeks behind it follow', async () => {
  edit('practice:', 'pins: [{ athletes: [pia], week: 2027-05-10, contacts-a-week: 100, because: exams }]\n\npractice:');
  const { out } = await diff();
  expect(out).toMatch(/edited pin of contacts\n +week of 10 May +contacts 165 → 100: Pia N\./);
  expect(out).toMatch(/follows from pin of contacts\n(.*\n)* +week of 17 May +contacts 180 → \d+: Pia N\./);
});

test('weeks that are out come first', async () => {
  edit('practice:', 'pins: [{ athletes: [pia], week: 2027-05-10, contacts-a-week: 100, because: exams }]\n\npractice:');
  const { out } = await diff('--printed', '2027-05-11');
  const [, again = '', changed = ''] = /Print again\n([^]*)\nChanged\n([^]*)/.exec(out) ?? [];
  expect(again).toContain('week of 10 May');
  expect(again).not.toContain('17 May');
  expect(changed).toContain('17 May');
});

test('an athlete with another id is the same athlete', async () => {
  edit('  uma:', '  uma-e:');
  const { out } = await diff();
  expect(out).toContain('Uma E. has the id uma-e, before uma');
  expect(out).not.toContain('week of');
});

test('JSON holds what the text says, with ids', async () => {
  edit(
    'mass: 82 kg, level: beginner',
    'mass: 82 kg, level: beginner, now: { contacts-a-session: 30, sessions-a-week: 2 }',
  );
  const { out } = await diff('--format', 'json');
  const found = JSON.parse(out);
  expect(found.edits).toEqual([
    { words: 'athlete Teo J.: now (contacts-a-session)', name: 'athlete Teo J.', place: 'season.yaml:20' },
  ]);
  const changes = found.after.flatMap((section: { changes: readonly unknown[] }) => section.changes);
  expect(changes).toContainEqual(expect.objectContaining({ what: 'contacts', athletes: ['teo'] }));
  expect(found.totals.after.contacts).toBeLessThan(found.totals.before.contacts);
});

test('of several edits each change stands under its own', async () => {
  edit(
    'mass: 82 kg, level: beginner',
    'mass: 82 kg, level: beginner, now: { contacts-a-session: 30, sessions-a-week: 2 }',
  );
  edit('practice:', 'closures: [{ from: 2027-05-10, until: 2027-05-16, because: floor laid }]\n\npractice:');
  const { out } = await diff('--format', 'json');
  const found = JSON.parse(out);
  expect(found).toMatchObject({ edits_known: true, told_apart: true });
  const schema = readFileSync('schemas/diff.schema.json', 'utf8');
  const validate = new Ajv2020({ strict: false, validateFormats: false }).compile(JSON.parse(schema));
  validate(found);
  expect(validate.errors).toBeNull();
  const names = found.edits.map(({ name }: { readonly name: string }) => name);
  expect(names.toSorted()).toEqual(['athlete Teo J.', 'closure floor laid']);
  const [closure, goal] = ['closure floor laid', 'athlete Teo J.'].map((name) => names.indexOf(name));
  const under = (
    how: string,
    ...edits: readonly (number | undefined)[]
  ): readonly { readonly athletes: readonly string[] }[] =>
    found.after
      .filter(
        (one: { readonly how: string; readonly edits: unknown }) =>
          one.how === how && String(one.edits) === edits.join(),
      )
      .flatMap(({ changes }: { readonly changes: readonly unknown[] }) => changes);
  expect(under('one', closure)).toContainEqual(
    expect.objectContaining({ what: 'contacts', week_of: '2027-05-10', after: '0' }),
  );
  expect(under('one', goal).length).toBeGreaterThan(0);
  for (const { athletes } of under('one', goal)) expect(athletes).toEqual(['teo']);
});

test('Markdown is harmless', async () => {
  edit('Teo J.', '"Teo <b>|J"');
  const { out } = await diff('--format', 'markdown');
  expect(out).toContain('Teo \\<b\\>\\|J');
  expect(out).toContain('### Edited');
});

test('two plans by their paths', async () => {
  cpSync(join(repository, 'season'), join(repository, 'other'), { recursive: true });
  edit('jumps: 60', 'jumps: 90');
  const { out } = await diff('other', 'season');
  expect(out).toContain('practice on wednesday: jumps 60 → 90');
});

test('what is no revision is refused, and a plan that is not there in one is said', async () => {
  expect(await diff('no-such')).toMatchObject({ status: 2, out: '', err: expect.stringContaining('no revision') });
  const missing = await shell(`cd '${repository}'; node '${program}' diff --plan nowhere HEAD`);
  expect(missing.status).toBe(2);
});

test('a plan with errors is told, and nothing is compared', async () => {
  edit('level: beginner', 'level: begginer');
  const { status, out, err } = await diff();
  expect([status, out]).toEqual([1, '']);
  expect(err).toContain('season.yaml');
});

test('what a build wrote is compared like a plan, and nothing is said of edits', async () => {
  const built = await shell(`cd '${repository}'; node '${program}' build season --out built`);
  expect(built.status).toBe(0);
  expect(await diff('built', 'season', '--exit-code')).toEqual({ status: 0, out: '', err: '' });
  expect(await diff('built/plan.json', 'built', '--exit-code')).toEqual({ status: 0, out: '', err: '' });
  edit('{ day: friday, minutes: 70, place: gym }', '{ day: thursday, minutes: 70, place: gym }');
  const { status, out } = await diff('built', 'season', '--exit-code');
  expect(status).toBe(1);
  expect(out).toMatch(/jumps Fri \d+ May → Thu \d+ May: Pia N\., Teo J\., Uma E\./);
  expect(out).toContain('a side without its plan: what was edited is not known');
  expect(out).not.toContain('Edited');
  const back = await diff('season', 'built');
  expect(back.out).toMatch(/jumps Thu \d+ May → Fri \d+ May/);
  expect(await diff('built', 'built', '--as-of', '2027-05-10')).toMatchObject({ status: 2, out: '' });
  const late = await diff('built', 'season', '--as-of', '2027-05-10');
  expect(late.out).toMatch(/week of 3 May/);
  writeFileSync(join(repository, 'built', 'plan.json'), '{"format":"footfall build","version":1}');
  const broken = await diff('built', 'season');
  expect([broken.status, broken.out]).toEqual([2, '']);
  expect(broken.err).toContain('built/plan.json: athletes is missing, and should be a list');
  rmSync(join(repository, 'built'), { recursive: true });
});

test('a week that an error keeps from being written is left out, and not taken to 0', async () => {
  const [fine, barred] = [join(repository, 'fine'), join(repository, 'barred')];
  for (const plan of [fine, barred]) cpSync('tests/diagnostics/rule/too-much-by-hand/plan', plan, { recursive: true });
  const text = readFileSync(join(fine, 'season.yaml'), 'utf8');
  writeFileSync(join(fine, 'season.yaml'), text.replace(/^use:\n.*\n/mu, ''));
  for (const plan of [fine, barred]) await footfall(['build', plan, '--out', `${plan}-out`]);
  const compare = async (...args: readonly string[]): Promise<string> => (await footfall(['diff', ...args])).out;
  for (const sides of [
    [fine, barred],
    [`${fine}-out`, barred],
    [`${fine}-out`, `${barred}-out`],
  ])
    expect(await compare(...sides)).toMatch(
      /^ {2}week of 1 Mar +week written → left out: an error stands in the way: mira\n {2}week of 8 Mar/mu,
    );
  const back = await compare(`${barred}-out`, fine, '--format', 'markdown');
  expect(back).toContain('| 2027-03-01 | week left out: an error stands in the way → written | mira |');
  const told: unknown = JSON.parse(await compare(`${fine}-out`, `${barred}-out`, '--format', 'json'));
  const schema = new Ajv2020({ strict: false, validateFormats: false }).compile(
    JSON.parse(readFileSync('schemas/diff.schema.json', 'utf8')),
  );
  expect([schema(told), schema.errors]).toEqual([true, null]);
  const change = { week_of: '2027-03-01', what: 'blocked', before: 'written', after: LEFT_OUT };
  expect(told).toMatchObject({ after: [{ changes: expect.arrayContaining([expect.objectContaining(change)]) }] });
  expect(await compare(`${barred}-out`, barred)).toBe('');
});

test('a week that is over has no sheet to print again', async () => {
  cpSync('examples/harbour-diary', join(repository, 'diary'), { recursive: true });
  cpSync('examples/harbour-diary', join(repository, 'diary-before'), { recursive: true });
  const record = join(repository, 'diary-before', 'record', 'done.csv');
  const rows = readFileSync(record, 'utf8').split('\n');
  writeFileSync(record, rows.filter((row) => !/^2025-(?:01-2[7-9]|01-3|02-)/u.test(row)).join('\n'));
  const { out, err } = await diff('diary-before', 'diary');
  expect(err).toBe(
    'footfall: the old one goes by 2025-01-25, the new one by 2025-02-08, each by the day after its last record; --as-of names one day for both\n',
  );
  expect((await diff('diary-before', 'diary', '--as-of', '2025-02-10')).err).toBe('');
  const [, again = '', changed = ''] = /Print again\n([^]*)\nChanged\n([^]*)/.exec(out) ?? [];
  expect(again).not.toContain('week of 27 Jan');
  expect(changed).toMatch(/week of 27 Jan +contacts \d+ → \d+/);
  expect(out).not.toMatch(/(?:2[7-9]|3[01]) Jan out: /);
  rmSync(join(repository, 'diary'), { recursive: true });
  rmSync(join(repository, 'diary-before'), { recursive: true });
});

test("git asks it with the README's two lines", async () => {
  const readme = readFileSync('README.md', 'utf8');
  const [, attributes = ''] = /echo '([^']+)' >> \.gitattributes/u.exec(readme) ?? [];
  const [, command = ''] = /git config diff\.footfall\.command '([^']+)'/u.exec(readme) ?? [];
  writeFileSync(join(repository, '.gitattributes'), `${attributes}\n`);
  git('config', 'diff.footfall.command', command.replace('footfall', `node '${program}'`));
  edit('jumps: 60', 'jumps: 90');
  const asked = await shell(`cd '${repository}/season'; git diff --ext-diff`);
  expect(asked).toMatchObject({ status: 0, err: expect.not.stringContaining('error') });
  expect(asked.out).toContain('practice on wednesday: jumps 60 → 90, season.yaml:16');
  edit('level: beginner', 'level: begginer');
  const wrong = await shell(`cd '${repository}'; git diff --ext-diff`);
  expect([wrong.status, wrong.out]).toEqual([0, '']);
  expect(wrong.err).toContain('begginer');
  rmSync(join(repository, '.gitattributes'));
});
