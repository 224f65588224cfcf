// Which process on which machine wrote something, and whether it still runs: for files that say who holds them.

import { createHash } from 'node:crypto';
import { hostname } from 'node:os';
import { codeOf } from './system-errors.ts';

export const THIS_MACHINE = createHash('sha256').update(hostname()).digest('hex').slice(0, 8);

/** Whether a process of this machine runs, ours or another person's. */
export function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return codeOf(error) === 'EPERM';
  }
}
