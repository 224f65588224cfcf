// What an output folder holds, against the list that footfall left in it. A folder is replaced only while everything in
// it was written by footfall and is as it was written, so that nobody's notes or changed tables are lost. The list has
// the form of `sha256sum`, which can check a folder too.

import { createHash } from 'node:crypto';
import { closeSync, openSync, readdirSync, readFileSync, readSync } from 'node:fs';
import type { Dirent } from 'node:fs';
import { join, relative, sep } from 'node:path';
import type { WrittenFiles } from './repeated-files.ts';

export const LIST_NAME = '.footfall';

/** What file managers leave behind without being asked. */
const LEFT_BY_SYSTEMS: ReadonlySet<string> = new Set(['.DS_Store', 'Thumbs.db', 'desktop.ini']);
const LIST_LINE = /^([\da-f]{64}) {2}(.+)$/u;

/** A line of the list: the digest of a file and its path below the folder, with forward slashes. */
export const listLine = (digest: string, path: string): string => `${digest}  ${path}\n`;

export interface Foreign {
  /** Below the folder. */
  readonly path: string;
  /** Written by footfall, and not as it is now. */
  readonly changed: boolean;
}

/**
 * The first file in the folder that footfall didn't write, or wrote otherwise; undefined when all of it is its own. `last`
 * may tell by path what this process has written: what is still there byte for byte needs no digest.
 */
export function findForeign(folder: string, last: WrittenFiles): Foreign | undefined {
  const entries = readdirSync(folder, { recursive: true, withFileTypes: true }).filter(
    (entry) => !entry.isDirectory() && !LEFT_BY_SYSTEMS.has(entry.name),
  );
  if (entries.length === 0) return undefined;
  const written = readList(folder);
  const paths = entries.map((entry) => ({ entry, path: pathBelow(folder, entry) })).toSorted(byPath);
  for (const { entry, path } of paths) {
    if (path === LIST_NAME && written !== undefined) continue;
    const digest = written?.get(path);
    if (digest === undefined || !entry.isFile()) return { path, changed: false };
    const known = last.get(path);
    const file = join(folder, path);
    const isLast = known?.digest === digest && holdsPieces(file, known.pieces);
    if (!isLast && digestOf(file) !== digest) return { path, changed: true };
  }
  return undefined;
}

const byPath = (a: { readonly path: string }, b: { readonly path: string }): number => (a.path < b.path ? -1 : 1);

const pathBelow = (folder: string, entry: Dirent): string =>
  relative(folder, join(entry.parentPath, entry.name)).replaceAll(sep, '/');

/** Digests by path; undefined when the folder has no list, or something else by its name. */
function readList(folder: string): ReadonlyMap<string, string> | undefined {
  let text: string;
  try {
    text = readFileSync(join(folder, LIST_NAME), 'utf8');
  } catch {
    return undefined;
  }
  const lines = text.split('\n').filter((line) => line !== '');
  const pairs = lines.map((line) => LIST_LINE.exec(line));
  if (pairs.includes(null)) return undefined;
  return new Map(pairs.map((pair) => [pair?.[2] ?? '', pair?.[1] ?? '']));
}

const PIECE_BYTES = 256 * 1024;

/** Read piece by piece into the same memory: that of a whole file costs more than its digest. */
function digestOf(path: string): string {
  const hash = createHash('sha256');
  for (const bytes of bytesOf(path)) hash.update(bytes);
  return hash.digest('hex');
}

/** Whether a file is these pieces one behind the other. */
function holdsPieces(path: string, pieces: readonly Uint8Array[]): boolean {
  let at = 0;
  let from = 0;
  for (const bytes of bytesOf(path)) {
    for (let read = 0; read < bytes.length;) {
      const piece = pieces[at];
      if (piece === undefined) return false;
      const length = Math.min(piece.length - from, bytes.length - read);
      if (bytes.compare(piece, from, from + length, read, read + length) !== 0) return false;
      read += length;
      from += length;
      if (from < piece.length) continue;
      at += 1;
      from = 0;
    }
  }
  return at === pieces.length;
}

/** What is given stands until the next is asked for. */
function* bytesOf(path: string): Iterable<Buffer> {
  const piece = Buffer.allocUnsafe(PIECE_BYTES);
  const file = openSync(path, 'r');
  try {
    for (let read = readSync(file, piece); read > 0; read = readSync(file, piece)) yield piece.subarray(0, read);
  } finally {
    closeSync(file);
  }
}
