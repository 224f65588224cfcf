// Files of one folder that grow side by side, a piece now here and now there. Pieces wait until there are enough of them to
// be worth a write, and each file's digest is worked out on the way. Called by output-folder.ts; repeated-files.ts writes
// the same way what is kept.

import { createHash } from 'node:crypto';
import type { Hash } from 'node:crypto';
import { closeSync, openSync, writeSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { makeFolders } from './make-folders.ts';

/** Bytes that are made when they are written. */
export interface LateBytes {
  /** How many they are. */
  readonly length: number;
  /** They stand until any others are made. */
  readonly make: () => Uint8Array;
}

/** Text, or text as it stands in a file: bytes that nobody changes, or late ones. */
export type Piece = string | Uint8Array | LateBytes;

export interface FilesToWrite {
  /** `name` is below the folder, with forward slashes; folders on it are made. Throws what the system says. */
  readonly append: (name: string, piece: Piece) => void;
  /** Writes what isn't yet, and gives the digest of each file: SHA-256 in hexadecimal digits. Throws what the system says. */
  readonly finish: () => ReadonlyMap<string, string>;
}

/** Text is kept back until so many characters are there. */
const MOST_PENDING = 256 * 1024;
/** Late bytes hold hardly anything until they are made, and a file is opened for all that waits at once. */
const LATE_PENDING = 256;
/** Shorter texts are put together. Long ones aren't: one text of many long ones would be copied once more. */
const SHORT = 1024;

interface Growing {
  readonly hash: Hash;
  /** What waits. */
  readonly pieces: Piece[];
}

/** Files below a folder that is there; none of them is. */
export function growingFiles(folder: string): FilesToWrite {
  const files = new Map<string, Growing>();
  const folders = new Set<string>([folder]);
  let pending = 0;
  const flush = (): void => {
    for (const [name, { pieces, hash }] of files) {
      if (pieces.length === 0) continue;
      const path = join(folder, name);
      makeFolder(dirname(path), folders);
      appendTo(path, pieces, (bytes) => {
        hash.update(bytes);
      });
      pieces.length = 0;
    }
    pending = 0;
  };
  const append = (name: string, piece: Piece): void => {
    const file = files.get(name) ?? { hash: createHash('sha256'), pieces: [] };
    files.set(name, file);
    addPiece(file.pieces, piece);
    pending += waiting(piece);
    if (pending >= MOST_PENDING) flush();
  };
  const finish = (): ReadonlyMap<string, string> => {
    flush();
    return new Map([...files].map(([name, { hash }]) => [name, hash.digest('hex')]));
  };
  return { append, finish };
}

/** How much memory a piece holds while it waits, about. */
const waiting = (piece: Piece): number =>
  typeof piece === 'string' || piece instanceof Uint8Array ? piece.length : LATE_PENDING;

/** Makes a folder that isn't known as `made`. */
function makeFolder(path: string, made: Set<string>): void {
  if (made.has(path)) return;
  makeFolders(path);
  made.add(path);
}

function addPiece(pieces: Piece[], piece: Piece): void {
  const last = pieces.at(-1);
  if (typeof piece === 'string' && typeof last === 'string' && last.length < SHORT)
    pieces[pieces.length - 1] = last + piece;
  else if (piece.length > 0) pieces.push(piece);
}

/** Adds pieces to the end of a file; `see` is given the bytes on the way, which stand until it is given the next. */
export function appendTo(path: string, pieces: readonly Piece[], see: (bytes: Uint8Array) => void = () => {}): void {
  const file = openSync(path, 'a');
  try {
    for (const bytes of encoded(pieces)) {
      see(bytes);
      for (let written = 0; written < bytes.length;) written += writeSync(file, bytes, written);
    }
  } finally {
    closeSync(file);
  }
}

/** Pieces are put into the same bytes each time: new ones for every text would cost more than what is written. */
const scratch = Buffer.allocUnsafeSlow(MOST_PENDING);
/** At most, of a UTF-16 unit. */
const UTF8_BYTES = 3;

/** Pieces as bytes, in their order. Those that are given stand until the next are asked for. */
function* encoded(pieces: readonly Piece[]): Iterable<Uint8Array> {
  let filled = 0;
  for (const piece of pieces) {
    const most = typeof piece === 'string' ? piece.length * UTF8_BYTES : piece.length;
    if (most > scratch.length - filled && filled > 0) {
      yield scratch.subarray(0, filled);
      filled = 0;
    }
    if (most > scratch.length) yield bytesOf(piece);
    else if (typeof piece === 'string') filled += scratch.write(piece, filled, 'utf8');
    else {
      scratch.set(bytesOf(piece), filled);
      filled += piece.length;
    }
  }
  if (filled > 0) yield scratch.subarray(0, filled);
}

/** Of a late piece they stand until any others are made. */
function bytesOf(piece: Piece): Uint8Array {
  if (typeof piece === 'string') return Buffer.from(piece, 'utf8');
  return piece instanceof Uint8Array ? piece : piece.make();
}

/** The bytes of a piece as they stay, whatever is made later. */
export function lastingBytes(piece: Piece): Uint8Array {
  return typeof piece === 'string' || piece instanceof Uint8Array ? bytesOf(piece) : Buffer.from(piece.make());
}
