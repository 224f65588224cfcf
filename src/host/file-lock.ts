// Lets one footfall at a time write to a file: a hidden file beside it says who does. Whoever comes second waits; what a
// dead process left is taken over. Throws OutputFailed, in words for the person at the command line.

import { closeSync, linkSync, openSync, readFileSync, renameSync, rmSync, statSync, writeSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { makeFolders } from './make-folders.ts';
import { OutputFailed } from './output.ts';
import { isAlive, THIS_MACHINE } from './running-process.ts';
import { codeOf, messageOf } from './system-errors.ts';

/** So many looks, so far apart: a minute. */
const MOST_LOOKS = 3_000;
const LOOK_EVERY_MILLISECONDS = 20;
/** From here on nobody's work goes on: a lock of another machine. */
const STALE_AFTER_MILLISECONDS = 120_000;
/** A lock is signed as soon as it is made: one that is unsigned at so many looks, five seconds, was left by the dead. */
const MOST_LOOKS_AT_UNSIGNED = 250;

/** Does the work while no other footfall writes to the file, which needn't be there yet; its folders are made. */
export async function whileLocked<T>(path: string, work: () => Promise<T>): Promise<T> {
  const lock = join(dirname(path), `.${basename(path)}.lock`);
  const ours = `${THIS_MACHINE} ${process.pid}\n`;
  await take(lock, ours, path);
  try {
    return await work();
  } finally {
    if (contentOf(lock) === ours) rmSync(lock, { force: true });
  }
}

async function take(lock: string, ours: string, path: string): Promise<void> {
  let unsigned = 0;
  for (let looks = 0; !isTaken(lock, ours, path); looks += 1) {
    const theirs = contentOf(lock);
    unsigned = theirs === UNSIGNED ? unsigned + 1 : 0;
    const isLeft =
      theirs === UNSIGNED ? unsigned > MOST_LOOKS_AT_UNSIGNED : theirs !== undefined && isStale(lock, theirs);
    if (theirs !== undefined && isLeft) breakOpen(lock, theirs);
    else if (looks > MOST_LOOKS)
      throw new OutputFailed(`another footfall has been writing to ${path} for a minute; if none is, delete ${lock}`);
    else await pause(LOOK_EVERY_MILLISECONDS);
  }
}

const UNSIGNED = '';

function isTaken(lock: string, ours: string, path: string): boolean {
  try {
    makeFolders(dirname(lock));
    const file = openSync(lock, 'wx');
    writeSync(file, ours);
    closeSync(file);
    return true;
  } catch (error) {
    if (codeOf(error) === 'EEXIST') return false;
    throw new OutputFailed(`${path}: ${messageOf(error)}`, { cause: error });
  }
}

function contentOf(lock: string): string | undefined {
  try {
    return readFileSync(lock, 'utf8');
  } catch {
    return undefined;
  }
}

function isStale(lock: string, theirs: string): boolean {
  const [machine, pid] = theirs.trim().split(' ');
  if (machine === THIS_MACHINE && pid !== undefined) return !isAlive(Number(pid));
  const stats = statSync(lock, { throwIfNoEntry: false });
  return stats !== undefined && Date.now() - stats.mtimeMs > STALE_AFTER_MILLISECONDS;
}

/** Another may have broken it and taken it in the meantime: then it is put back. */
function breakOpen(lock: string, theirs: string): void {
  const aside = `${lock}-${THIS_MACHINE}-${process.pid}`;
  try {
    renameSync(lock, aside);
    if (readFileSync(aside, 'utf8') !== theirs) linkSync(aside, lock);
  } catch {
    return;
  } finally {
    rmSync(aside, { force: true });
  }
}
