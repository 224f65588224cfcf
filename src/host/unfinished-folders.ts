// The hidden folders beside an output folder: what they are called, and what becomes of those whose build died. A name
// says which process on which machine writes it, so that a build that still runs keeps its own.

import { existsSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { isAlive, THIS_MACHINE } from './running-process.ts';
import { MILLISECONDS_AN_HOUR } from '../util/units.ts';

/** Ends the name of a last build that was set aside for the moment in which the new one takes its place. */
export const SET_ASIDE = '-before';

/** From here on what another machine left is no build that still runs. */
const MOST_HOURS = 24;

let made = 0;

/** A name beside the folder that no other build uses. */
export function nameBeside(target: string): string {
  made += 1;
  return join(dirname(target), `.${basename(target)}.footfall-${THIS_MACHINE}-${process.pid}-${made}`);
}

/** Removes what dead builds left beside the folder, and puts a last build back that one of them had set aside. */
export function clearLeftovers(target: string, remove: typeof removeFolder = removeFolder): void {
  const start = `.${basename(target)}.footfall-`;
  const names = readdirSync(dirname(target)).filter((name) => name.startsWith(start));
  for (const name of names) {
    const path = join(dirname(target), name);
    if (isInUse(path, name.slice(start.length))) continue;
    if (name.endsWith(SET_ASIDE) && !existsSync(target)) renameSync(path, target);
    else takeAway(path, nameBeside(target), remove);
  }
}

/**
 * Under a name of our own first: what a build had begun when it was killed, the exchange of two folders, may still be on its
 * way, and would put in place what is half removed.
 */
function takeAway(path: string, away: string, remove: typeof removeFolder): void {
  try {
    renameSync(path, away);
  } catch {
    return; // Another build clears up as well.
  }
  remove(away);
}

function removeFolder(path: string): void {
  rmSync(path, { recursive: true, force: true });
}

function isInUse(path: string, rest: string): boolean {
  const [machine = '', pid = ''] = rest.split('-');
  if (machine === THIS_MACHINE) return isAlive(Number(pid));
  try {
    return Date.now() - statSync(path).mtimeMs < MOST_HOURS * MILLISECONDS_AN_HOUR;
  } catch {
    return true;
  }
}
