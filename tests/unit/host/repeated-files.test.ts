// A folder that is written again and again by the same process: each time it holds what was asked for, its list knows it, and
// whatever somebody else did to it meanwhile is found.

import { createHash } from 'node:crypto';
import {
  appendFileSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  statSync,
  truncateSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { FolderMemory } from '../../../src/host/output-folder.ts';
import { writeOutputFolder } from '../../../src/host/output-folder.ts';
import { behind } from '../../../src/host/repeated-files.ts';

let parent = '';
let folder = '';
let memory: FolderMemory = {};

beforeEach(() => {
  parent = mkdtempSync(join(tmpdir(), 'footfall-again-'));
  folder = join(parent, 'tables');
  memory = {};
});

afterEach(() => {
  rmSync(parent, { recursive: true, force: true });
});

type Tables = Readonly<Record<string, readonly (string | Uint8Array)[]>>;

async function write(tables: Tables, isKept = true): Promise<void> {
  await writeOutputFolder(
    folder,
    async ({ append }) => {
      for (const [name, pieces] of Object.entries(tables)) for (const piece of pieces) append(name, piece);
    },
    { isAtOnce: true, ...(isKept && { memory }) },
  );
}

const read = (name: string): string => readFileSync(join(folder, name), 'utf8');
const bytes = (text: string): Uint8Array => Buffer.from(text);
const rows = (many: number): readonly Uint8Array[] =>
  Array.from({ length: many }, (_, at) => bytes(`é${at},${'x'.repeat(at * 3)}\r\n`));

/** What the folder and its list must be. */
function expectWritten(tables: Tables): void {
  const lines = Object.entries(tables).map(([name, pieces]) => {
    const text = pieces.map((piece) => Buffer.from(piece).toString()).join('');
    expect(read(name)).toBe(text);
    return `${createHash('sha256').update(text).digest('hex')}  ${name}\n`;
  });
  expect(read('.footfall')).toBe(lines.join(''));
}

test('holds what was asked for, whichever pieces are new, and its list knows it', async () => {
  const all = rows(230);
  const edits: readonly ((pieces: readonly Uint8Array[]) => readonly Uint8Array[])[] = [
    (pieces) => pieces,
    (pieces) => pieces.with(180, bytes('another\r\n')),
    ...[47, 48, 49, 50, 51].map(
      (at) => (pieces: readonly Uint8Array[]) => pieces.with(at, bytes('around what is kept of the digest\r\n')),
    ),
    (pieces) => pieces.with(0, bytes('the very first\r\n')),
    (pieces) => pieces.slice(0, 100),
    (pieces) => [...pieces, ...all.slice(100)],
    (pieces) => pieces.with(7, Buffer.from(pieces[7] ?? '')),
    (pieces) => [...pieces.slice(1), ...pieces.slice(0, 1)],
    (pieces) => pieces.map((piece, at) => (at === 150 ? bytes('x'.repeat(300_000)) : piece)),
    () => [],
    () => all,
  ];
  let pieces = all;
  for (const edit of edits) {
    pieces = edit(pieces);
    const tables = { 'lines.csv': ['athlete\r\n', ...pieces], 'weeks.csv': ['week\r\n', ...all.slice(0, 3)] };
    await write(tables);
    expectWritten(tables);
  }
});

describe('is refused where somebody has meanwhile', () => {
  const tables = { 'lines.csv': ['athlete\r\n', ...rows(120)], 'weeks.csv': ['week\r\n', bytes('mira,3,120\r\n')] };
  const expectRefused = async (name: string): Promise<void> => {
    const before = read(name);
    await expect(write({ ...tables, 'weeks.csv': ['week\r\n'] })).rejects.toThrow(`${name}, which was changed since`);
    expect(read(name)).toBe(before);
  };
  /** As it was, but for what it holds: size and times are the same. */
  const editUnseen = (name: string, edit: (text: string) => string): void => {
    const path = join(folder, name);
    const { atime, mtime } = statSync(path);
    writeFileSync(path, edit(read(name)));
    utimesSync(path, atime, mtime);
  };

  test('changed a number, the size and the time of the file being the same', async () => {
    await write(tables);
    editUnseen('weeks.csv', (text) => text.replace('120', '180'));
    await expectRefused('weeks.csv');
  });

  test('changed the last letter of a long file', async () => {
    await write(tables);
    editUnseen('lines.csv', (text) => `${text.slice(0, -3)}y\r\n`);
    await expectRefused('lines.csv');
  });

  test('added a row', async () => {
    await write(tables);
    appendFileSync(join(folder, 'weeks.csv'), 'mira,4,130\r\n');
    await expectRefused('weeks.csv');
  });

  test("put another build's file back", async () => {
    await write(tables);
    const ours = read('weeks.csv');
    await write({ ...tables, 'weeks.csv': ['week\r\n', bytes('mira,3,90\r\n')] }, false);
    writeFileSync(join(folder, 'weeks.csv'), ours);
    await expectRefused('weeks.csv');
  });

  test('cut a row off, or all of them', async () => {
    await write(tables);
    truncateSync(join(folder, 'weeks.csv'), 6);
    await expectRefused('weeks.csv');
    truncateSync(join(folder, 'weeks.csv'), 0);
    await expectRefused('weeks.csv');
  });
});

test('what another build has put there is replaced as any build of footfall is', async () => {
  const tables = { 'lines.csv': ['athlete\r\n', ...rows(60)] };
  await write(tables);
  await writeOutputFolder(folder, async ({ append }) => {
    append('lines.csv', 'of another plan\r\n');
    append('season.csv', 'of another plan\r\n');
  });
  await write(tables);
  expectWritten(tables);
});

test('a folder that somebody took away is there again', async () => {
  const tables = { 'lines.csv': ['athlete\r\n', ...rows(60)] };
  await write(tables);
  rmSync(folder, { recursive: true });
  await write(tables);
  expectWritten(tables);
});

test('a writing that was refused changes nothing of what is known', async () => {
  const tables = { 'lines.csv': ['athlete\r\n', ...rows(60)] };
  await write(tables);
  writeFileSync(join(folder, 'notes.txt'), 'mine');
  const others = { 'lines.csv': ['athlete\r\n', ...rows(60).with(55, bytes('new\r\n'))] };
  await expect(write(others)).rejects.toThrow("notes.txt, which footfall didn't write");
  rmSync(join(folder, 'notes.txt'));
  await write(others);
  expectWritten(others);
});

test('of pieces that the system took in part the rest is left, from the midst of a piece', () => {
  const pieces = ['', 'ab', 'c', '', 'def'].map(bytes);
  const left = (taken: number): string => Buffer.concat(behind(pieces, taken)).toString('utf8');
  expect([0, 1, 2, 3, 5, 6].map(left)).toEqual(['abcdef', 'bcdef', 'cdef', 'def', 'f', '']);
  expect(behind(pieces, 6)).toEqual([]);
});
