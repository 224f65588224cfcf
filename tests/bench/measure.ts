// Runs one program and says how long it took and how much memory it had at most. Called by bench.ts.

import { spawnSync } from 'node:child_process';
import { closeSync, openSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';

export interface Use {
  /** From start to end, as a clock on the wall sees it. */
  readonly milliseconds: number;
  readonly cpuMilliseconds: number;
  /** The most memory it held at once. */
  readonly peakKilobytes: number;
}

const REPORT_USE = pathToFileURL(resolve('tests/bench/report-use.mjs')).href;

/** Runs Node with the arguments, its output in a file. Throws with what the program said when it fails. */
export function measure(nodeArguments: readonly string[], folder: string): Use {
  const report = join(folder, 'use.json');
  const outputPath = join(folder, 'output.txt');
  const output = openSync(outputPath, 'w');
  const started = performance.now();
  const run = spawnSync(process.execPath, ['--import', REPORT_USE, ...nodeArguments], {
    env: { ...process.env, USE_REPORT: report },
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
