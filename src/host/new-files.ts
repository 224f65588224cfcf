// Writes files that aren't there yet, all of them or none: what stands at a path already, even a link that leads nowhere,
// is never touched. Throws OutputFailed, in words for the person at the command line.

import { closeSync, lstatSync, openSync, rmSync, statSync, writeSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { makeFolders } from './make-folders.ts';
import { OutputFailed } from './output.ts';
import { messageOf } from './system-errors.ts';

export interface NewFile {
  /** Below the folder, with forward slashes. */
  readonly path: string;
  readonly text: string;
  readonly isProgram?: true;
}

const USUAL = 0o666;
const PROGRAM = 0o777;

/** Writes the files below a folder, which is made if it has to be. Throws OutputFailed when one of them is there. */
export function writeNewFiles(folder: string, files: readonly NewFile[]): void {
  refuseWhatIsThere(folder, files);
  const written: string[] = [];
  try {
    for (const { path, text, isProgram } of files) {
      const target = join(folder, path);
      makeFolders(dirname(target));
      // "wx" fails where something has come up since we looked.
      const file = openSync(target, 'wx', isProgram === true ? PROGRAM : USUAL);
      written.push(target);
      try {
        writeWhole(file, text);
      } finally {
        closeSync(file);
      }
    }
  } catch (error) {
    for (const target of written) rmSync(target, { force: true });
    throw new OutputFailed(`${folder}: ${messageOf(error)}; nothing was left in it`, { cause: error });
  }
}

/** A write may take less than it was given. */
function writeWhole(file: number, text: string): void {
  const bytes = new TextEncoder().encode(text);
  for (let at = 0; at < bytes.length;) at += writeSync(file, bytes, at);
}

function refuseWhatIsThere(folder: string, files: readonly NewFile[]): void {
  if (isNoFolder(folder)) throw new OutputFailed(`${folder} is a file, and a folder is wanted`);
  const taken = files.find(({ path }) => isThere(join(folder, path)));
  if (taken === undefined) return;
  throw new OutputFailed(
    `${join(folder, taken.path)} is there already, and no file is written over; nothing was written`,
  );
}

/** Something that isn't a folder. Throws OutputFailed where it can't be looked at, as below a file. */
function isNoFolder(path: string): boolean {
  try {
    return statSync(path, { throwIfNoEntry: false })?.isDirectory() === false;
  } catch (error) {
    throw new OutputFailed(`${path}: ${messageOf(error)}; nothing was written`, { cause: error });
  }
}

/** Something stands at the path, or on the way to it where a folder would have to be. */
function isThere(path: string): boolean {
  try {
    return lstatSync(path, { throwIfNoEntry: false }) !== undefined;
  } catch {
    return true;
  }
}
