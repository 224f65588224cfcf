// Puts a finished folder where another stands, so that the name a reader opens always leads to one whole folder. On Linux
// the two trade places in a single step, which Node has no call for: perl, part of every Linux, makes it. Elsewhere it
// takes two renames, and a build that dies between them is put right by the next.

import { spawnSync } from 'node:child_process';
import { existsSync, renameSync, rmSync } from 'node:fs';
import { SET_ASIDE } from './unfinished-folders.ts';
import { codeOf } from './system-errors.ts';

/** Number of the system call renameat2 on Linux, by Node's name of the processor. */
const RENAMEAT2: Readonly<Record<string, number>> = { x64: 316, arm64: 276 };
/** `AT_FDCWD` for both paths, `RENAME_EXCHANGE` as the flag; ends with an error where the system refuses. */
const CALL = 'my ($call, $a, $b) = @ARGV; exit(syscall($call + 0, -100, $a, -100, $b, 2) == 0 ? 0 : 1);';
/** Other builds may put theirs there at the same moment; so many in a row is something else. */
const MOST_TRIES = 20;

/** Moves `fresh` to `target`; what stood there is gone, or is left under the name of `fresh` for the caller to remove. */
export function putInPlace(fresh: string, target: string, exchange: typeof exchangeFolders = exchangeFolders): void {
  for (let tries = 1; ; tries += 1) {
    try {
      if (!existsSync(target)) renameSync(fresh, target);
      else if (!exchange(fresh, target)) renameTwice(fresh, target);
      return;
    } catch (error) {
      if (tries === MOST_TRIES || !isCrossed(error)) throw error;
    }
  }
}

/** Exchanges two folders in one step; false, with nothing changed, where the system can't. */
export function exchangeFolders(one: string, other: string): boolean {
  const call = process.platform === 'linux' ? RENAMEAT2[process.arch] : undefined;
  if (call === undefined) return false;
  return spawnSync('perl', ['-e', CALL, String(call), one, other], { stdio: 'ignore' }).status === 0;
}

function renameTwice(fresh: string, target: string): void {
  const aside = `${fresh}${SET_ASIDE}`;
  renameSync(target, aside);
  try {
    renameSync(fresh, target);
  } catch (error) {
    if (!existsSync(target)) renameSync(aside, target);
    throw error;
  } finally {
    rmSync(aside, { recursive: true, force: true });
  }
}

/** Whether another build took or freed the name in between. */
function isCrossed(error: unknown): boolean {
  return ['ENOENT', 'ENOTEMPTY', 'EEXIST'].includes(codeOf(error));
}
