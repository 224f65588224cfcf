// Runs footfall for the tests: in this process with outputs in memory, which is quick, or the built program as a shell
// starts it, for what only a process has: exit status, pipes, time zones.

import { execa } from 'execa';
import { run } from '../../src/cli/run.ts';
import { fileSystem } from '../../src/host/files.ts';
import type { Output } from '../../src/host/output.ts';
import { terminalOf } from '../../src/host/terminal.ts';
import type { Environment } from '../../src/host/terminal.ts';
import { isBuilt } from '../tools/build.mjs';

/** A day of 2052: behind every record of the examples, and before the one that is meant to be still to come. */
const LATE = 30_000;

export const HANDBALL = 'examples/handball-spring';

export interface Ran {
  readonly status: number | undefined;
  readonly out: string;
  readonly err: string;
}

interface MemoryOutput extends Output {
  readonly written: () => string;
}

function memoryOutput(): MemoryOutput {
  const pieces: string[] = [];
  const write = async (text: string): Promise<void> => {
    pieces.push(text);
  };
  return {
    write,
    writeAll: async (texts) => {
      for (const text of texts) await write(text);
    },
    end: async () => {},
    written: () => pieces.join(''),
  };
}

const runs = new Map<string, Promise<Ran>>();

/**
 * One run in this process, as if into pipes; the environment says otherwise. Records may be of any day. What was run
 * before isn't run again, as it would give the same.
 */
export async function footfall(args: readonly string[], env: Environment = {}): Promise<Ran> {
  const key = JSON.stringify([args, env]);
  const ran = runs.get(key) ?? runNow(args, env);
  runs.set(key, ran);
  return await ran;
}

async function runNow(args: readonly string[], env: Environment): Promise<Ran> {
  const out = memoryOutput();
  const err = memoryOutput();
  const terminal = terminalOf({}, env);
  const session = { files: fileSystem, out, err, outTerminal: terminal, errTerminal: terminal, today: LATE };
  const status = await run(args, session);
  return { status, out: out.written(), err: err.written() };
}

/**
 * One run of the built program through a shell, where `$f` is the program. Fails when dist/ isn't the build of the
 * present source, so that no test speaks of an old one: `npm test` and `npm run build` make it.
 */
export async function shell(command: string, env: Readonly<Record<string, string>> = {}): Promise<Ran> {
  if (!isBuilt()) throw new Error('dist/ is not the build of the present source: npm run build');
  const script = `set -o pipefail; f="node bin/footfall.js"; ${command}`;
  const { exitCode, stdout, stderr } = await execa('bash', ['--norc', '-c', script], {
    stdin: 'ignore',
    reject: false,
    stripFinalNewline: false,
    extendEnv: false,
    env: { PATH: process.env['PATH'] ?? '', ...env },
    maxBuffer: 100_000_000,
  });
  return { status: exitCode, out: stdout, err: stderr };
}

/** Rows of a CSV text without its header, split at commas: for cells that hold none. */
export const rowsOf = (csv: string): readonly (readonly string[])[] =>
  csv
    .split('\r\n')
    .slice(1, -1)
    .map((line) => line.split(','));
