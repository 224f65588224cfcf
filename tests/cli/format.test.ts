// `footfall format`: one tidy shape that means the same and stays, for the examples and for what becomes of them when
// somebody edits in a hurry; files are replaced whole, and those with mistakes are left alone.

import {
  chmodSync,
  cpSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { parseYaml } from '../../src/read/parse-yaml.ts';
import { tidyYaml } from '../../src/read/tidy-yaml.ts';
import { sourceFile } from '../../src/source/source-file.ts';
import { plainValue } from '../unit/read/plain-value.ts';
import { footfall, HANDBALL, shell } from './footfall.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'footfall-format-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

const tidy = (text: string): string | undefined => tidyYaml(sourceFile('plan.yaml', text)).value;

const commentsOf = (text: string): readonly string[] =>
  Array.from(text.matchAll(/(?<=^|\s)#[^\n\r]*/gu), ([comment]) => comment.trim()).toSorted();

const plans = [
  ...readdirSync('examples', { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.yaml'))
    .map((path) => join('examples', path)),
  'tests/unit/plan/every-key.yaml',
];

describe.each(plans)('%s', (path) => {
  const text = readFileSync(path, 'utf8');
  const made = tidy(text) ?? '';

  test('keeps its values, their order and its comments', () => {
    const before = parseYaml(sourceFile('plan.yaml', text)).value.root;
    const after = parseYaml(sourceFile('plan.yaml', made)).value.root;
    expect(JSON.stringify(plainValue(after))).toBe(JSON.stringify(plainValue(before)));
    expect(commentsOf(made)).toEqual(commentsOf(text));
  });

  test('formats to itself', () => {
    expect(tidy(made)).toBe(made);
  });

  test('whatever is done to its spaces, gaps and brackets', () => {
    const edit = fc.record({
      at: fc.nat(text.length),
      insert: fc.constantFrom(
        ' ',
        '  ',
        '\n',
        '\n\n',
        '# so\n',
        ' # so',
        ',',
        '"',
        "'",
        '- ',
        ': ',
        '[ ]',
        '\r\n',
        '&a ',
        'é',
      ),
      cut: fc.nat(2),
    });
    fc.assert(
      fc.property(fc.array(edit, { minLength: 1, maxLength: 6 }), (edits) => {
        let changed = text;
        for (const { at, insert, cut } of edits) changed = changed.slice(0, at) + insert + changed.slice(at + cut);
        const file = sourceFile('plan.yaml', changed);
        const { value, diagnostics } = tidyYaml(file);
        if (value === undefined) {
          expect(diagnostics).not.toEqual([]);
          return;
        }
        expect(tidy(value)).toBe(value);
        expect(plainValue(parseYaml(sourceFile('plan.yaml', value)).value.root)).toEqual(
          plainValue(parseYaml(file).value.root),
        );
      }),
      { numRuns: 40 },
    );
  });
});

describe('the shape', () => {
  test.each([
    ['mass:   68 kg    # as of may', 'mass: 68 kg # as of may\n'],
    ['days: [ monday,tuesday ]', 'days: [monday, tuesday]\n'],
    ['now: {a: 1,b: 2}', 'now: { a: 1, b: 2 }\n'],
    ['pins:\n- {a: 1}\n\n\n\n- {b: 2}', 'pins:\n  - { a: 1 }\n\n  - { b: 2 }\n'],
    ['mira:\n      mass: 68 kg\r\n      level: beginner', 'mira:\n  mass: 68 kg\n  level: beginner\n'],
    ['at: "18:00"', 'at: "18:00"\n'],
    ['# nothing but a remark\n', '# nothing but a remark\n'],
    ['', ''],
  ])('%j', (text, made) => {
    expect(tidy(text)).toBe(made);
  });
});

describe('files', () => {
  const untidy = 'footfall:   1\nseason: {title: Spring}\n';

  test('of a plan are all written, and named', async () => {
    cpSync(HANDBALL, folder, { recursive: true });
    const juniors = join(folder, 'squad/juniors.yaml');
    const text = readFileSync(juniors, 'utf8');
    writeFileSync(juniors, text.replaceAll(': {', ':   {'));
    chmodSync(juniors, 0o640);
    expect(await footfall(['format', '--check', folder])).toEqual({ status: 1, out: `${juniors}\n`, err: '' });
    const ran = await footfall(['format', folder]);
    expect(ran).toEqual({ status: 0, out: `${juniors}\n`, err: '' });
    expect(readFileSync(juniors, 'utf8')).toBe(text);
    expect(statSync(juniors).mode & 0o777).toBe(0o640);
    expect(readdirSync(join(folder, 'squad')).toSorted()).toEqual(['juniors.yaml', 'seniors.yaml']);
  });

  test('behind a link are written where they are', async () => {
    writeFileSync(join(folder, 'real.yaml'), untidy);
    symlinkSync('real.yaml', join(folder, 'season.yaml'));
    expect((await footfall(['format', join(folder, 'season.yaml')])).status).toBe(0);
    expect(readFileSync(join(folder, 'real.yaml'), 'utf8')).toBe('footfall: 1\nseason: { title: Spring }\n');
  });

  test('with a mistake are left as they are', async () => {
    const path = join(folder, 'season.yaml');
    writeFileSync(path, `${untidy}athletes:\n\tmira: 1\n`);
    const ran = await footfall(['format', path]);
    expect(ran.status).toBe(1);
    expect(ran.err.match(/yaml\/tab-indent/gu)).toHaveLength(1);
    expect(readFileSync(path, 'utf8')).toContain('footfall:   1');
  });

  test('that are not there are a wrong command', async () => {
    expect((await footfall(['format', join(folder, 'none.yaml')])).status).toBe(2);
  });

  test.each(['done.csv', 'notes.md', 'plan.json', 'season'])(
    'of another kind are left as they are: %s',
    async (name) => {
      const path = join(folder, name);
      const text = 'date,athlete,kind\n2027-01-05,mira,session\n2027-01-07,mira,session\n';
      writeFileSync(path, text);
      const ran = await footfall(['format', path]);
      expect(ran).toEqual({
        status: 2,
        out: '',
        err: `footfall: ${path} is no YAML file by its name, and is left as it is\n`,
      });
      expect(readFileSync(path, 'utf8')).toBe(text);
    },
  );

  test.each(['date,athlete\n2027-01-05,mira\n', '- a\n-   b\n', '"a\n b"\n'])(
    'that hold no keys are left as they are: %j',
    async (text) => {
      const path = join(folder, 'done.yaml');
      writeFileSync(path, text);
      const ran = await footfall(['format', path]);
      expect(ran.status).toBe(1);
      expect(ran.err).toContain('[language/not-a-plan]');
      expect(readFileSync(path, 'utf8')).toBe(text);
    },
  );

  test('can come in and go out through a pipe', async () => {
    const ran = await shell(`printf 'a:   1\\n' | $f format -`);
    expect(ran).toEqual({ status: 0, out: 'a: 1\n', err: '' });
  });
});
