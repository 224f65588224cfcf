// What a save costs under `build --watch`, in processor time of the process that watches: one athlete's mass in a roster is
// edited, again and again. Called by bench.ts, which sets it against a build from scratch.

import { once } from 'node:events';
import { readFileSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { spawn } from 'node:child_process';
import { pathToFileURL } from 'node:url';
import { PLAIN } from './measure.ts';

const TELL_USE = pathToFileURL(resolve('tests/bench/tell-use.mjs')).href;
const WATCHING = /Ctrl-C ends it/u;
/** The last that a round says. */
const TOLD = /In all: .*\n|nothing on the sheets has changed/u;

/** Milliseconds of processor time for each of so many saves. Throws with what the program said where it ends meanwhile. */
export async function measureRounds(
  nodeArguments: readonly string[],
  roster: string,
  rounds: number,
): Promise<readonly number[]> {
  const child = spawn(process.execPath, ['--import', TELL_USE, ...nodeArguments], {
    stdio: ['ignore', 'pipe', 'pipe', 'ipc'],
    env: PLAIN,
  });
  let said = '';
  const ended = once(child, 'exit');
  for (const stream of [child.stdout, child.stderr]) {
    stream?.setEncoding('utf8').on('data', (text: string) => {
      said += text;
      child.emit('heard');
    });
  }
  const until = async (words: RegExp): Promise<void> => {
    while (!words.test(said)) {
      if (child.exitCode !== null) throw new Error(`the watch ended:\n${said}`);
      await Promise.race([once(child, 'heard'), ended]);
    }
    said = '';
  };
  const used = async (): Promise<number> => {
    const answer = once(child, 'message');
    child.send('use');
    const [milliseconds]: readonly unknown[] = await answer;
    return Number(milliseconds);
  };
  try {
    await until(WATCHING);
    const costs: number[] = [];
    for (let round = 0; round < rounds; round += 1) {
      const before = await used();
      writeFileSync(roster, withAnotherMass(readFileSync(roster, 'utf8'), round));
      await until(TOLD);
      costs.push((await used()) - before);
    }
    return costs;
  } finally {
    child.kill('SIGINT');
    await ended;
  }
}

/** Rows far from each other, each another time. */
function withAnotherMass(roster: string, round: number): string {
  const lines = roster.split('\n');
  const at = 1 + ((round * 137 + 11) % (lines.length - 2));
  lines[at] = (lines[at] ?? '').replace(/(\d+) kg$/u, (_, kilos: string) => `${String(Number(kilos) + 30)} kg`);
  return lines.join('\n');
}
