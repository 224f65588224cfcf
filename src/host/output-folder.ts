// Writes a folder whole or not at all: files go to a hidden folder beside it, which takes its place when everything is
// written. A build that fails, is killed or finds the disk full leaves the last one as it was; what it leaves behind is
// cleared away by the next. Throws OutputFailed, in words for the person at the command line.

import { chmodSync, existsSync, mkdirSync, readFileSync, realpathSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { findForeign, LIST_NAME, listLine } from './folder-contents.ts';
import type { Foreign } from './folder-contents.ts';
import { growingFiles } from './growing-files.ts';
import type { FilesToWrite, Piece } from './growing-files.ts';
import { makeFolders } from './make-folders.ts';
import { OutputFailed } from './output.ts';
import { repeatedFiles } from './repeated-files.ts';
import type { WrittenFiles } from './repeated-files.ts';
import { putInPlace } from './swap-folders.ts';
import { clearLeftovers, nameBeside } from './unfinished-folders.ts';
import { codeOf, reasonOf } from './system-errors.ts';

export interface OutputFolder {
  /** What a file of the last build held; undefined when there was none. `path` as in `append`. */
  readonly readLast: (path: string) => string | undefined;
  /**
   * Adds to the end of a file; bytes are those of text in UTF-8, and stay as they are until everything is written, but for
   * those that are made late. `path` is below the folder, with forward slashes; folders on it are made.
   */
  readonly append: (path: string, piece: Piece) => void;
}

export interface Filling {
  /** Nobody would wait in vain: what the folder holds is looked at behind the filling alone. */
  readonly isAtOnce?: boolean;
  /** Of who writes the folder again and again: all that it holds stays in memory until the next time. */
  readonly memory?: FolderMemory;
}

/** What was written last. */
export interface FolderMemory {
  written?: WrittenFiles;
}

/**
 * Has `fill` write the folder anew and puts it in place with a list of what was written; when anything throws, all stays
 * as it was. Throws OutputFailed when the folder can't be written, or holds what footfall didn't write: before `fill` is
 * called, so that nobody waits in vain, and once more behind it.
 */
export async function writeOutputFolder(
  path: string,
  fill: (folder: OutputFolder) => Promise<void>,
  { isAtOnce = false, memory }: Filling = {},
): Promise<void> {
  const last = memory?.written ?? NOTHING_YET;
  const { target, fresh, mode } = inWords(path, () => openFolder(path, isAtOnce ? undefined : last));
  try {
    const repeated = memory === undefined ? undefined : repeatedFiles(fresh, last);
    const files = repeated ?? growingFiles(fresh);
    await fill(folderOf(path, target, files));
    inWords(path, () => {
      writeList(fresh, files.finish());
      if (mode !== undefined) chmodSync(fresh, mode);
      refuseForeign(path, target, last);
      putInPlace(fresh, target);
      if (memory !== undefined && repeated !== undefined) memory.written = repeated.written();
    });
  } finally {
    rmSync(fresh, { recursive: true, force: true });
  }
}

const NOTHING_YET: WrittenFiles = new Map();

interface Opened {
  /** Where the folder really is. */
  readonly target: string;
  /** The hidden one that will take its place. */
  readonly fresh: string;
  /** Permissions of the folder that is there. */
  readonly mode?: number;
}

/** What is there is looked at where it is told what was `last` written. */
function openFolder(path: string, last: WrittenFiles | undefined): Opened {
  const target = finalPath(path);
  clearLeftovers(target);
  if (last !== undefined) refuseForeign(path, target, last);
  const fresh = nameBeside(target);
  mkdirSync(fresh);
  const there = statSync(target, { throwIfNoEntry: false });
  return { target, fresh, ...(there !== undefined && { mode: there.mode }) };
}

/** A link is followed, folders above are made. */
function finalPath(path: string): string {
  const absolute = resolve(path);
  if (existsSync(absolute)) return realpathSync(absolute);
  makeFolders(dirname(absolute));
  return join(realpathSync(dirname(absolute)), basename(absolute));
}

function refuseForeign(path: string, target: string, last: WrittenFiles): void {
  const there = statSync(target, { throwIfNoEntry: false });
  if (there === undefined) return;
  if (!there.isDirectory()) throw new OutputFailed(`${path} is not a folder`);
  const foreign = lookedAtWhole(target, last, there.ino);
  if (foreign === undefined) return;
  const what = foreign.changed ? 'which was changed since footfall wrote it' : "which footfall didn't write";
  const why = 'and a build replaces the whole folder; move it away or name another folder';
  throw new OutputFailed(`${path} holds ${foreign.path}, ${what}, ${why}`);
}

/** Another build may put its own folder there meanwhile: then what was found was of neither, and is looked for again. */
function lookedAtWhole(target: string, last: WrittenFiles, before: number): Foreign | undefined {
  const numberNow = (): number => statSync(target, { throwIfNoEntry: false })?.ino ?? before;
  try {
    const foreign = findForeign(target, last);
    if (numberNow() === before) return foreign;
  } catch (error) {
    if (numberNow() === before) throw error;
  }
  return lookedAtWhole(target, last, numberNow());
}

function folderOf(path: string, target: string, files: FilesToWrite): OutputFolder {
  return {
    readLast: (name) => findText(join(target, name)),
    append: (name, piece) => {
      inWords(path, () => {
        files.append(name, piece);
      });
    },
  };
}

function writeList(folder: string, digests: ReadonlyMap<string, string>): void {
  const names = [...digests.keys()].toSorted();
  writeFileSync(join(folder, LIST_NAME), names.map((name) => listLine(digests.get(name) ?? '', name)).join(''));
}

function findText(path: string): string | undefined {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return undefined;
  }
}

/** What the system refuses, told in words. */
function inWords<T>(path: string, act: () => T): T {
  try {
    return act();
  } catch (error) {
    if (error instanceof OutputFailed) throw error;
    if (codeOf(error) === '') throw error;
    throw new OutputFailed(`${path}: ${reasonOf(error)}`, { cause: error });
  }
}
