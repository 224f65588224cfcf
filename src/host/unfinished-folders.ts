// The hidden folders beside an output folder: what they are called, and what becomes of those whose build died. A name
// says which process on which machine writes it, so that a build that still runs keeps its own.

import { createHash } from 'node:crypto';
import { existsSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { hostname } from 'node:os';
import { basename, dirname, join } from 'node:path';

/** Ends the name of a last build that was set aside for the moment in which the new one takes its place. */
export const SET_ASIDE = '-before';

const MACHINE = createHash('sha256').update(hostname()).digest('hex').slice(0, 8);
/** From here on what another machine left is no build that still runs. */
const MOST_HOURS = 24;
const MILLISECONDS_AN_HOUR = 3_600_000;

let made = 0;

/** A name beside the folder that no other build uses. */
export function nameBeside(target: string): string {
  made += 1;
  return join(dirname(target), `.${basename(target)}.footfall-${MACHINE}-${process.pid}-${made}`);
}

/** Removes what dead builds left beside the folder, and puts a last build back that one of them had set aside. */
export function clearLeftovers(target: string): void {
  const start = `.${basename(target)}.footfall-`;
  const names = readdirSync(dirname(target)).filter((name) => name.startsWith(start));
  for (const name of names) {
    const path = join(dirname(target), name);
    if (isInUse(path, name.slice(start.length))) continue;
    if (name.endsWith(SET_ASIDE) && !existsSync(target)) renameSync(path, target);
    else rmSync(path, { recursive: true, force: true });
  }
}

function isInUse(path: string, rest: string): boolean {
  const [machine = '', pid = ''] = rest.split('-');
  if (machine === MACHINE) return isAlive(Number(pid));
  try {
    return Date.now() - statSync(path).mtimeMs < MOST_HOURS * MILLISECONDS_AN_HOUR;
  } catch {
    return true;
  }
}

/** Whether a process of this machine runs, ours or another person's. */
function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code === 'EPERM';
  }
}
