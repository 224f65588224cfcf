// Runs one program and says how long it took and how much memory it had at most. Called by bench.ts.

import { spawnSync } from 'node:child_process';
import { closeSync, openSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';

export interface Use {
  /** From start to end, as a clock on the wall sees it. */
  readonly milliseconds: number;
  readonly cpuMilliseconds: number;
  /** The most memory it held at once. */
  readonly peakKilobytes: number;
}

export type Environment = Readonly<Record<string, string | undefined>>;

/**
 * Node reads a file of certificates at every start where NODE_EXTRA_CA_CERTS names one, and that takes longer than all the
 * rest of its start: beside it everything would look quick.
 */
export const PLAIN: Environment = { ...process.env, NODE_EXTRA_CA_CERTS: undefined };

const REPORT_USE = resolve('tests/bench/report-use.cjs');

/** Runs Node with the arguments, its output in a file. Throws with what the program said when it fails. */
export function measure(nodeArguments: readonly string[], folder: string, environment: Environment = PLAIN): Use {
  const report = join(folder, 'use.json');
  const outputPath = join(folder, 'output.txt');
  const output = openSync(outputPath, 'w');
  const started = performance.now();
  const run = spawnSync(process.execPath, ['--require', REPORT_USE, ...nodeArguments], {
    env: { ...environment, USE_REPORT: report },
    stdio: ['ignore', output, output],
  });
  const milliseconds = performance.now() - started;
  closeSync(output);
  if (run.status !== 0) {
    const said = readFileSync(outputPath, 'utf8').split('\n').slice(0, 12).join('\n');
    throw new Error(`node ${nodeArguments.join(' ')} ended with status ${run.status ?? run.signal}:\n${said}`);
  }
  return { milliseconds, ...JSON.parse(readFileSync(report, 'utf8')) };
}

/** The middle one of an odd number of values, the lower middle of an even number. */
export function median(values: readonly number[]): number {
  const middle = values.toSorted((a, b) => a - b)[Math.floor((values.length - 1) / 2)];
  if (middle === undefined) throw new Error('no values, no median');
  return middle;
}
