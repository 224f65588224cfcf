// A folder written whole or not at all: what may be replaced, and what is left when the writing fails or two write at once.

import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createHash } from 'node:crypto';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { writeOutputFolder } from '../../../src/host/output-folder.ts';
import { OutputFailed } from '../../../src/host/output.ts';
import { exchangeFolders, putInPlace } from '../../../src/host/swap-folders.ts';
import { clearLeftovers } from '../../../src/host/unfinished-folders.ts';

let parent = '';
let folder = '';

beforeEach(() => {
  parent = mkdtempSync(join(tmpdir(), 'footfall-out-'));
  folder = join(parent, 'sheets');
});

afterEach(() => {
  rmSync(parent, { recursive: true, force: true });
});

async function write(text: string): Promise<void> {
  await writeOutputFolder(folder, async ({ append }) => {
    append('index.html', text);
    append('athletes/mira.html', `${text}, `);
    append('athletes/mira.html', 'again');
  });
}

const read = (name: string): string => readFileSync(join(folder, name), 'utf8');

test('is there with all that was written, and nothing stays beside it', async () => {
  await write('one');
  expect([read('index.html'), read('athletes/mira.html')]).toEqual(['one', 'one, again']);
  expect(readdirSync(parent)).toEqual(['sheets']);
});

test('holds pieces of any length in their order, letters of several bytes among them, and its list knows what it holds', async () => {
  const pieces = [1, 1000, 30_000, 5, 90_000, 400_000, 2, 270_000].map((length, index) =>
    `${'é→a'[index % 3]}`.repeat(length),
  );
  await writeOutputFolder(folder, async ({ append }) => {
    for (const piece of pieces) for (const name of ['one.csv', 'two/two.csv']) append(name, piece);
  });
  for (const name of ['one.csv', 'two/two.csv']) {
    expect(read(name)).toBe(pieces.join(''));
    expect(read('.footfall')).toContain(createHash('sha256').update(pieces.join('')).digest('hex'));
  }
});

test('writes bytes that are made late between other pieces, each time as they are then', async () => {
  const shared = new Uint8Array(300_000);
  const late = (value: number, length: number): { length: number; make: () => Uint8Array } => ({
    length,
    make: () => shared.subarray(0, length).fill(value),
  });
  const lengths = [10, 99_999, 300_000, 100_000, 100_000, 70_000];
  await writeOutputFolder(folder, async ({ append }) => {
    for (const [index, length] of lengths.entries()) {
      append('late.csv', late(97 + index, length));
      append('late.csv', '|');
    }
  });
  expect(read('late.csv')).toBe(lengths.map((length, index) => `${'abcdef'[index]?.repeat(length)}|`).join(''));
});

test('takes the place of the last one, whose files that are no more are gone', async () => {
  await writeOutputFolder(folder, async ({ append }) => {
    append('old.html', 'old');
  });
  await write('two');
  expect(existsSync(join(folder, 'old.html'))).toBe(false);
  expect([read('index.html'), readdirSync(parent)]).toEqual(['two', ['sheets']]);
});

test('lists what was written, in a form that sha256sum checks', async () => {
  await write('one');
  expect(read('.footfall')).toMatch(/^[\da-f]{64} {2}athletes\/mira\.html\n[\da-f]{64} {2}index\.html\n$/u);
});

test('reads what the last one held', async () => {
  await write('one');
  await writeOutputFolder(folder, async ({ append, readLast }) => {
    append('index.html', `${readLast('index.html')} and ${readLast('no.html')}`);
  });
  expect(read('index.html')).toBe('one and undefined');
});

test('a writing that throws leaves everything as it was', async () => {
  await write('one');
  const failing = writeOutputFolder(folder, async ({ append }) => {
    append('index.html', 'two');
    throw new Error('no more');
  });
  await expect(failing).rejects.toThrow('no more');
  expect([read('index.html'), readdirSync(parent)]).toEqual(['one', ['sheets']]);
});

describe('is refused, and left as it is,', () => {
  test('with a file that footfall did not write', async () => {
    await write('one');
    writeFileSync(join(folder, 'notes.txt'), 'mine');
    await expect(write('two')).rejects.toThrow(/holds notes\.txt, which footfall didn't write/u);
    expect([read('notes.txt'), read('index.html')]).toEqual(['mine', 'one']);
  });

  test('with a file that was changed since', async () => {
    await write('one');
    writeFileSync(join(folder, 'index.html'), 'mine');
    await expect(write('two')).rejects.toThrow(/holds index\.html, which was changed since/u);
    expect(read('index.html')).toBe('mine');
  });

  test('when it is of somebody else altogether', async () => {
    mkdirSync(folder);
    writeFileSync(join(folder, 'thesis.doc'), 'mine');
    await expect(write('two')).rejects.toBeInstanceOf(OutputFailed);
    expect(read('thesis.doc')).toBe('mine');
  });

  test('when a file has its name', async () => {
    writeFileSync(folder, 'a file');
    await expect(write('two')).rejects.toThrow(/is not a folder/u);
  });

  test('when a link stands among its files', async () => {
    await write('one');
    symlinkSync('/etc/hostname', join(folder, 'link'));
    await expect(write('two')).rejects.toThrow(/holds link/u);
  });
});

test('an empty folder, one with leavings of a file manager, and one reached by a link are written', async () => {
  mkdirSync(folder);
  writeFileSync(join(folder, '.DS_Store'), '');
  await write('one');
  symlinkSync('sheets', join(parent, 'link'));
  await writeOutputFolder(join(parent, 'link'), async ({ append }) => {
    append('index.html', 'through the link');
  });
  expect([read('index.html'), readdirSync(parent).toSorted()]).toEqual(['through the link', ['link', 'sheets']]);
});

test('two at once end with one whole folder', async () => {
  await write('none');
  for (let round = 0; round < 20; round += 1) {
    await Promise.all(['one', 'two', 'three'].map(async (text) => await write(text)));
    const text = read('index.html');
    expect(['one', 'two', 'three']).toContain(text);
    expect(read('athletes/mira.html')).toBe(`${text}, again`);
  }
  expect(readdirSync(parent)).toEqual(['sheets']);
});

test('what dead writers left beside it is cleared away, and a last folder set aside is put back', async () => {
  await write('one');
  const [machine] = await leftoverMachine();
  const dead = `.sheets.footfall-${machine}-4194999-1`;
  mkdirSync(join(parent, dead));
  mkdirSync(join(parent, '.sheets.footfall-00000000-4194999-1'));
  const aside = join(parent, `${dead}-before`);
  rmSync(aside, { recursive: true, force: true });
  mkdirSync(aside);
  for (const name of ['index.html', '.footfall']) writeFileSync(join(aside, name), '');
  rmSync(folder, { recursive: true });
  let seen = false;
  await expect(
    writeOutputFolder(folder, async () => {
      seen = existsSync(join(folder, 'index.html'));
    }),
  ).rejects.toThrow(/index\.html/u);
  expect(seen).toBe(false);
  expect(existsSync(folder)).toBe(true);
  // One of another machine may still be written.
  expect(readdirSync(parent).filter((name) => name.startsWith('.'))).toEqual(['.sheets.footfall-00000000-4194999-1']);
});

test('what a dead writer left has another name when it is removed, so that an exchange it had begun finds nothing', async () => {
  await write('one');
  const [machine] = await leftoverMachine();
  const left = join(parent, `.sheets.footfall-${machine}-4194999-1`);
  mkdirSync(left);
  const exchanged: boolean[] = [];
  clearLeftovers(folder, (path) => {
    exchanged.push(exchangeFolders(left, folder), existsSync(left));
    rmSync(path, { recursive: true });
  });
  expect(exchanged).toEqual([false, false]);
  expect(readdirSync(parent)).toEqual(['sheets']);
  expect(read('index.html')).toBe('one');
});

/** What this machine's hidden folders are called. */
async function leftoverMachine(): Promise<readonly string[]> {
  let names: readonly string[] = [];
  await writeOutputFolder(join(parent, 'other'), async () => {
    names = readdirSync(parent).filter((name) => name.startsWith('.other'));
  });
  rmSync(join(parent, 'other'), { recursive: true, force: true });
  return names.map((name) => name.split('-')[1] ?? '');
}

test('where folders cannot trade places it takes two renames, and nothing is left of the old one', async () => {
  const fresh = join(parent, 'fresh');
  for (const [path, text] of [
    [folder, 'old'],
    [fresh, 'new'],
  ] as const) {
    mkdirSync(path);
    writeFileSync(join(path, 'file'), text);
  }
  putInPlace(fresh, folder, () => false);
  expect([read('file'), readdirSync(parent)]).toEqual(['new', ['sheets']]);
});
