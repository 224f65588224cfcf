// Files of a folder that is written again and again, mostly of the very same pieces. They stay in memory until all are there,
// and until the next time: a digest then goes on from the first piece that is new, and folder-contents.ts sets the files
// that are there against the pieces. Called by output-folder.ts.

import { createHash } from 'node:crypto';
import type { Hash } from 'node:crypto';
import { closeSync, openSync, writevSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { lastingBytes } from './growing-files.ts';
import { makeFolders } from './make-folders.ts';
import type { FilesToWrite } from './growing-files.ts';

/** A file as it was written: bytes that nobody changes, one behind the other. */
export interface Written {
  readonly pieces: readonly Uint8Array[];
  /** SHA-256 in hexadecimal digits. */
  readonly digest: string;
  /** How the digest stood on the way. */
  readonly stood: readonly Stood[];
}

interface Stood {
  /** Behind so many pieces. */
  readonly at: number;
  readonly hash: Hash;
}

export type WrittenFiles = ReadonlyMap<string, Written>;

export interface RepeatedFiles extends FilesToWrite {
  /** What is to be known the next time; asked for when all is written. */
  readonly written: () => WrittenFiles;
}

/** Files below a folder that is there; none of them is. `last` are those that were written before. */
export function repeatedFiles(folder: string, last: WrittenFiles): RepeatedFiles {
  const files = new Map<string, Uint8Array[]>();
  const written = new Map<string, Written>();
  const append: FilesToWrite['append'] = (name, piece) => {
    const pieces = files.get(name) ?? [];
    files.set(name, pieces);
    pieces.push(lastingBytes(piece));
  };
  const writeFile = (name: string, pieces: readonly Uint8Array[]): Written => {
    const path = join(folder, name);
    makeFolders(dirname(path));
    writePieces(path, pieces);
    const before = last.get(name);
    const same = before === undefined ? 0 : samePieces(before.pieces, pieces);
    return { pieces, ...digestOf(pieces, before?.stood.filter(({ at }) => at <= same) ?? []) };
  };
  const finish = (): ReadonlyMap<string, string> => {
    for (const [name, pieces] of files) written.set(name, writeFile(name, pieces));
    return new Map([...written].map(([name, { digest }]) => [name, digest]));
  };
  return { append, finish, written: () => written };
}

/** Pieces that the system takes at once. */
const PIECES_A_WRITE = 512;

/** One behind the other and as they are, since put together first they would be copied. */
function writePieces(path: string, pieces: readonly Uint8Array[]): void {
  const file = openSync(path, 'w');
  try {
    for (let at = 0; at < pieces.length; at += PIECES_A_WRITE) writeWhole(file, pieces.slice(at, at + PIECES_A_WRITE));
  } finally {
    closeSync(file);
  }
}

/** The system may take less than it is given, in the midst of a piece too. */
function writeWhole(file: number, pieces: readonly Uint8Array[]): void {
  let left = pieces;
  while (left.length > 0) left = behind(left, writevSync(file, left));
}

/** What is left of pieces behind so many bytes. */
export function behind(pieces: readonly Uint8Array[], bytes: number): readonly Uint8Array[] {
  let from = 0;
  for (const [at, piece] of pieces.entries()) {
    if (from + piece.length > bytes) return [piece.subarray(bytes - from), ...pieces.slice(at + 1)];
    from += piece.length;
  }
  return [];
}

/** How many of the first pieces are the same; mostly they are the same objects. */
function samePieces(before: readonly Uint8Array[], now: readonly Uint8Array[]): number {
  const isSame = (one: Uint8Array, other: Uint8Array | undefined): boolean =>
    one === other || (other !== undefined && Buffer.compare(one, other) === 0);
  const first = now.findIndex((piece, at) => !isSame(piece, before[at]));
  return first === -1 ? now.length : first;
}

/** Pieces between two standings that are kept. */
const PIECES_APART = 50;

/** Goes on from the last standing that is `known`. */
function digestOf(pieces: readonly Uint8Array[], known: readonly Stood[]): Pick<Written, 'digest' | 'stood'> {
  const stood = [...known];
  const hash = stood.at(-1)?.hash.copy() ?? createHash('sha256');
  for (let at = stood.at(-1)?.at ?? 0; at < pieces.length;) {
    const next = pieces.slice(at, at + PIECES_APART);
    for (const piece of next) hash.update(piece);
    at += next.length;
    if (next.length === PIECES_APART) stood.push({ at, hash: hash.copy() });
  }
  return { digest: hash.digest('hex'), stood };
}
