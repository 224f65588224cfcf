// What a coach sees while typing: a plan made by `footfall new`, in a real YAML language server that is told nothing but
// what the first line of each file says. In the entry file and in a file that it includes.

import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { footfall } from '../cli/footfall.ts';
import { marked, startEditor } from './language-server.ts';
import type { Editor } from './language-server.ts';

let folder = '';
let editor: Editor;
let opened = 0;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'footfall-editor-'));
  await footfall(['new', folder, '--starts', '2027-01-04']);
  editor = await startEditor(folder);
});

afterAll(async () => {
  await editor.close();
  rmSync(folder, { recursive: true, force: true });
});

interface Slip {
  readonly find: string;
  readonly wrong: string;
  readonly says: RegExp;
}

interface File {
  readonly name: string;
  /** What stands before the mark is typed so far. */
  readonly typed: readonly (readonly [after: string, typed: string, offered: readonly string[]])[];
  readonly hovered: readonly (readonly [key: string, says: RegExp])[];
  readonly slips: readonly Slip[];
}

const FILES: readonly File[] = [
  {
    name: 'season.yaml',
    typed: [
      ['season:\n', '  ¦\n', ['ends', 'sport', 'time-zone', 'in-season']],
      ['files: [athletes.yaml]\n', '¦\n', ['pins', 'waivers', 'drills', 'programmes']],
      ['slots:\n', '  - day: ¦\n', ['monday', 'sunday']],
    ],
    hovered: [
      ['smallest-plate', /plate/u],
      ['prepare', /the season aims at it/u],
      ['practice', /It counts/u],
    ],
    slips: [
      { find: 'minutes: 75', wrong: 'minutes: long', says: /number|integer/u },
      { find: 'day: tuesday', wrong: 'day: teusday', says: /monday/u },
      { find: 'smallest-plate: 1.25 kg', wrong: 'smallest-plate: 1.25', says: /./u },
      { find: 'surface:', wrong: 'surfce:', says: /surfce/u },
    ],
  },
  {
    name: 'athletes.yaml',
    typed: [
      ['  ada:\n', '    ¦\n', ['goal', 'cleared', 'limits', 'returning', 'away']],
      ['  ada:\n', '    lifts:\n      ¦\n', ['back-squat', 'romanian-deadlift']],
    ],
    hovered: [
      ['mass', /mass/iu],
      ['contacts-a-session', /session/u],
    ],
    slips: [
      { find: 'mass: 64 kg', wrong: 'mass: 64', says: /./u },
      { find: 'level: intermediate', wrong: 'level: intermedate', says: /intermediate/u },
      { find: 'squad: first', wrong: 'sqad: first', says: /sqad/u },
    ],
  },
];

describe.each(FILES)('$name', ({ name, typed, hovered, slips }) => {
  let text = '';
  beforeEach(() => {
    text = readFileSync(join(folder, name), 'utf8');
  });

  /** Each text is a document of its own, so that no answer can be one to another text. */
  const open = async (changed: string): Promise<{ path: string; found: Awaited<ReturnType<Editor['open']>> }> => {
    opened += 1;
    const path = `${String(opened)}-${name}`;
    return { path, found: await editor.open(path, changed) };
  };

  test('has nothing wrong in it', async () => {
    expect((await open(text)).found).toEqual([]);
  });

  test.each(typed)('after %j, %j is offered keys and words', async (after, line, offered) => {
    expect(text).toContain(after);
    const { text: changed, position } = marked(text.replace(after, `${after}${line}`));
    const { path } = await open(changed);
    const labels = (await editor.completions(path, position)).map(({ label }) => label);
    expect(labels).toEqual(expect.arrayContaining([...offered]));
  });

  test.each(hovered)('%s is explained', async (key, says) => {
    const { position } = marked(text.replace(`${key}:`, `${key.slice(0, 1)}¦${key.slice(1)}:`));
    const { path } = await open(text);
    expect(await editor.hover(path, position)).toMatch(says);
  });

  test.each(slips)('$wrong is marked', async ({ find, wrong, says }) => {
    expect(text).toContain(find);
    const changed = text.replace(find, wrong);
    const { found } = await open(changed);
    const line = changed.slice(0, changed.indexOf(wrong)).split('\n').length - 1;
    const here = found.filter(({ range }) => range.start.line === line);
    expect(here.map(({ message }) => message).join('\n')).toMatch(says);
  });
});
