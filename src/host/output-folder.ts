// Writes a folder whole or not at all: files go to a hidden folder beside it, which takes its place when everything is
// written. A build that fails, is killed or finds the disk full leaves the last one as it was; what it leaves behind is
// cleared away by the next. Throws OutputFailed, in words for the person at the command line.

import { createHash } from 'node:crypto';
import type { Hash } from 'node:crypto';
import { chmodSync, closeSync, existsSync, mkdirSync, openSync, readFileSync, realpathSync, rmSync } from 'node:fs';
import { statSync, writeSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { findForeign, LIST_NAME, listLine } from './folder-contents.ts';
import type { Foreign } from './folder-contents.ts';
import { OutputFailed } from './output.ts';
import { putInPlace } from './swap-folders.ts';
import { clearLeftovers, nameBeside } from './unfinished-folders.ts';

export interface OutputFolder {
  /** What a file of the last build held; undefined when there was none. `path` as in `append`. */
  readonly readLast: (path: string) => string | undefined;
  /**
   * Adds to the end of a file; bytes are those of text in UTF-8. `path` is below the folder, with forward slashes; folders
   * on it are made.
   */
  readonly append: (path: string, text: string | Uint8Array) => void;
}

/** Text is kept back until so many characters are there. */
const MOST_PENDING = 256 * 1024;
/** Shorter texts are put together. Long ones aren't: one text of many long ones would be copied once more. */
const SHORT = 1024;

/** Text, or text as it stands in a file. */
type Piece = string | Uint8Array;

/**
 * Has `fill` write the folder anew and puts it in place with a list of what was written; when anything throws, all stays
 * as it was. Throws OutputFailed when the folder can't be written, or holds what footfall didn't write: before `fill` is
 * called, so that nobody waits in vain, and once more behind it; only behind it where it `isFilledAtOnce`.
 */
export async function writeOutputFolder(
  path: string,
  fill: (folder: OutputFolder) => Promise<void>,
  isFilledAtOnce = false,
): Promise<void> {
  const { target, fresh, mode } = inWords(path, () => openFolder(path, isFilledAtOnce));
  try {
    const folder = createFolder(path, target, fresh);
    await fill(folder);
    inWords(path, () => {
      folder.finish();
      if (mode !== undefined) chmodSync(fresh, mode);
      refuseForeign(path, target);
      putInPlace(fresh, target);
    });
  } finally {
    rmSync(fresh, { recursive: true, force: true });
  }
}

interface Opened {
  /** Where the folder really is. */
  readonly target: string;
  /** The hidden one that will take its place. */
  readonly fresh: string;
  /** Permissions of the folder that is there. */
  readonly mode?: number;
}

function openFolder(path: string, isFilledAtOnce: boolean): Opened {
  const target = finalPath(path);
  clearLeftovers(target);
  if (!isFilledAtOnce) refuseForeign(path, target);
  const fresh = nameBeside(target);
  mkdirSync(fresh);
  const there = statSync(target, { throwIfNoEntry: false });
  return { target, fresh, ...(there !== undefined && { mode: there.mode }) };
}

/** A link is followed, folders above are made. */
function finalPath(path: string): string {
  const absolute = resolve(path);
  if (existsSync(absolute)) return realpathSync(absolute);
  mkdirSync(dirname(absolute), { recursive: true });
  return join(realpathSync(dirname(absolute)), basename(absolute));
}

function refuseForeign(path: string, target: string): void {
  const there = statSync(target, { throwIfNoEntry: false });
  if (there === undefined) return;
  if (!there.isDirectory()) throw new OutputFailed(`${path} is not a folder`);
  const foreign = lookedAtWhole(target, there.ino);
  if (foreign === undefined) return;
  const what = foreign.changed ? 'which was changed since footfall wrote it' : "which footfall didn't write";
  const why = 'and a build replaces the whole folder; move it away or name another folder';
  throw new OutputFailed(`${path} holds ${foreign.path}, ${what}, ${why}`);
}

/** Another build may put its own folder there meanwhile: then what was found was of neither, and is looked for again. */
function lookedAtWhole(target: string, before: number): Foreign | undefined {
  const numberNow = (): number => statSync(target, { throwIfNoEntry: false })?.ino ?? before;
  try {
    const foreign = findForeign(target);
    if (numberNow() === before) return foreign;
  } catch (error) {
    if (numberNow() === before) throw error;
  }
  return lookedAtWhole(target, numberNow());
}

interface Pending {
  readonly hash: Hash;
  readonly pieces: Piece[];
}

function createFolder(path: string, target: string, fresh: string): OutputFolder & { readonly finish: () => void } {
  const files = new Map<string, Pending>();
  let pendingCharacters = 0;
  const flush = (): void => {
    for (const [name, { pieces, hash }] of files) {
      if (pieces.length === 0) continue;
      mkdirSync(dirname(join(fresh, name)), { recursive: true });
      appendTo(join(fresh, name), pieces, hash);
      pieces.length = 0;
    }
    pendingCharacters = 0;
  };
  const append = (name: string, piece: Piece): void => {
    const pending = files.get(name) ?? { hash: createHash('sha256'), pieces: [] };
    files.set(name, pending);
    addPiece(pending.pieces, piece);
    pendingCharacters += piece.length;
    if (pendingCharacters >= MOST_PENDING) inWords(path, flush);
  };
  const finish = (): void => {
    flush();
    const names = [...files.keys()].toSorted();
    const list = names.map((name) => listLine(files.get(name)?.hash.digest('hex') ?? '', name));
    appendTo(join(fresh, LIST_NAME), list);
  };
  return { readLast: (name) => findText(join(target, name)), append, finish };
}

function findText(path: string): string | undefined {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return undefined;
  }
}

function addPiece(pieces: Piece[], piece: Piece): void {
  const last = pieces.at(-1);
  if (typeof piece === 'string' && typeof last === 'string' && last.length < SHORT)
    pieces[pieces.length - 1] = last + piece;
  else if (piece.length > 0) pieces.push(piece);
}

/** Adds pieces to the end of a file, and to its hash. */
function appendTo(path: string, pieces: readonly Piece[], hash?: Hash): void {
  const file = openSync(path, 'a');
  try {
    for (const bytes of encoded(pieces)) {
      hash?.update(bytes);
      for (let written = 0; written < bytes.length;) written += writeSync(file, bytes, written);
    }
  } finally {
    closeSync(file);
  }
}

/** Texts are encoded into the same few bytes each time: new ones for every text would cost more than what is written. */
const scratch = Buffer.allocUnsafeSlow(MOST_PENDING);
/** At most, of a UTF-16 unit. */
const UTF8_BYTES = 3;

/** Pieces as bytes, in their order. Those that are given stand until the next are asked for. */
function* encoded(pieces: readonly Piece[]): Iterable<Uint8Array> {
  let filled = 0;
  for (const piece of pieces) {
    const fits = typeof piece === 'string' && piece.length * UTF8_BYTES <= scratch.length - filled;
    if (!fits && filled > 0) {
      yield scratch.subarray(0, filled);
      filled = 0;
    }
    if (typeof piece !== 'string') yield piece;
    else if (piece.length * UTF8_BYTES > scratch.length) yield Buffer.from(piece, 'utf8');
    else filled += scratch.write(piece, filled, 'utf8');
  }
  if (filled > 0) yield scratch.subarray(0, filled);
}

const REASONS: Readonly<Record<string, string>> = {
  EACCES: 'permission denied',
  EPERM: 'permission denied',
  EROFS: 'the disk is read-only',
  ENOSPC: 'the disk is full',
  EDQUOT: 'the disk quota is used up',
  EFBIG: 'a file is larger than the system allows',
  EEXIST: 'a part of the path is not a folder',
  ENOTDIR: 'a part of the path is not a folder',
  EBUSY: 'another program holds it',
  ENAMETOOLONG: 'the path is too long',
  EIO: 'the disk reports an error',
};

/** What the system refuses, told in words. */
function inWords<T>(path: string, act: () => T): T {
  try {
    return act();
  } catch (error) {
    if (error instanceof OutputFailed) throw error;
    const code = error instanceof Error && 'code' in error ? error.code : undefined;
    if (typeof code !== 'string') throw error;
    throw new OutputFailed(`${path}: ${REASONS[code] ?? `the system refuses it (${code})`}`, { cause: error });
  }
}
