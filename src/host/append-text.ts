// Adds text to the end of a file, whole or not at all, and waits until it is on the disk. What is there is never written
// again. Throws OutputFailed, in words for the person at the command line.

import { closeSync, fstatSync, fsyncSync, ftruncateSync, openSync, writeSync } from 'node:fs';
import { dirname } from 'node:path';
import { makeFolders } from './make-folders.ts';
import { OutputFailed } from './output.ts';
import { messageOf } from './system-errors.ts';

/**
 * Appends to the file at a path, which is made where there is none, in one write. `bytesBefore` is its size as the caller
 * read it: a file that has changed since is left alone. Where not all can be written nothing is.
 */
export function appendText(path: string, text: string, bytesBefore: number): void {
  try {
    makeFolders(dirname(path));
    const file = openSync(path, 'a');
    try {
      if (fstatSync(file).size !== bytesBefore) throw new OutputFailed('somebody has just changed it; try again');
      writeWhole(file, text, bytesBefore);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
    if (bytesBefore === 0) syncFolder(dirname(path));
  } catch (error) {
    throw new OutputFailed(`${path}: ${messageOf(error)}; nothing was added to it`, { cause: error });
  }
}

/** A full disk takes less than it was given: then the file gets its old length back. */
function writeWhole(file: number, text: string, bytesBefore: number): void {
  const bytes = new TextEncoder().encode(text);
  let failure: unknown = new Error('the disk is full');
  try {
    if (writeSync(file, bytes) === bytes.length) return;
  } catch (error) {
    failure = error;
  }
  ftruncateSync(file, bytesBefore);
  throw failure;
}

/** So that a new file's name is on the disk too. Not every system can. */
function syncFolder(path: string): void {
  try {
    const folder = openSync(path, 'r');
    fsyncSync(folder);
    closeSync(folder);
  } catch {
    return;
  }
}
