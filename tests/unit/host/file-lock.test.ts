// Whose lock is waited for, and whose is taken over: one as a writer leaves it that died before it had signed, and one of
// another machine.

import { mkdtempSync, readdirSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { whileLocked } from '../../../src/host/file-lock.ts';

let folder: string;
const path = (): string => join(folder, 'done.csv');

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'footfall-lock-'));
});

afterEach(() => {
  rmSync(folder, { recursive: true });
});

function leaveLock(text: string, secondsAgo: number): void {
  const lock = join(folder, '.done.csv.lock');
  writeFileSync(lock, text);
  const when = Date.now() / 1000 - secondsAgo;
  utimesSync(lock, when, when);
}

/** Which came first: the work, or the time in which it would have been done long since. */
async function firstOf(work: Promise<string>): Promise<string> {
  const waits = new Promise<string>((resolve) => setTimeout(resolve, 1_000, 'waits'));
  return await Promise.race([work, waits]);
}

test('a lock that stays unsigned is taken over, whatever its date says, and leaves nothing', async () => {
  leaveLock('', -3600);
  expect(await whileLocked(path(), async () => 'done')).toBe('done');
  expect(readdirSync(folder)).toEqual([]);
});

test('a lock that was signed elsewhere two minutes ago is taken over, and leaves nothing', async () => {
  leaveLock('elsewhere 4711\n', 121);
  expect(await whileLocked(path(), async () => 'done')).toBe('done');
  expect(readdirSync(folder)).toEqual([]);
});

test.each([
  ['not yet signed, and of an old date', '', 3600],
  ['signed elsewhere a minute ago', 'elsewhere 4711\n', 60],
])('one that is %s is waited for until it is gone', async (_, text, secondsAgo) => {
  leaveLock(text, secondsAgo);
  const work = whileLocked(path(), async () => 'done');
  expect(await firstOf(work)).toBe('waits');
  rmSync(join(folder, '.done.csv.lock'));
  expect(await work).toBe('done');
});
