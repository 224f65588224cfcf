// Writes a file anew where one stands: to a hidden file beside it, which takes its place when it is whole, so that a full
// disk or a crash leaves the old one. A link is followed, permissions stay. Throws OutputFailed.

import { chmodSync, closeSync, fsyncSync, openSync, realpathSync, renameSync, rmSync, statSync } from 'node:fs';
import { writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { OutputFailed } from './output.ts';
import { messageOf } from './system-errors.ts';

/** Puts `text` in the place of what the file at `path` holds. */
export function replaceFile(path: string, text: string): void {
  let fresh: string | undefined;
  try {
    const target = realpathSync(path);
    const { mode } = statSync(target);
    const beside = join(dirname(target), `.${basename(target)}.footfall-${process.pid}`);
    const file = openSync(beside, 'wx');
    fresh = beside;
    try {
      writeFileSync(file, text);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
    chmodSync(beside, mode);
    renameSync(beside, target);
  } catch (error) {
    if (fresh !== undefined) rmSync(fresh, { force: true });
    throw new OutputFailed(`${path}: ${messageOf(error)}`, { cause: error });
  }
}
