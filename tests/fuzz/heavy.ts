// Inputs made to be too much: the built program is run on each in a process of its own, and has to end with status 1 and
// a diagnostic, in two seconds of the processor and 500 MB.

import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { MOST_MILLISECONDS } from './examine.ts';
import { chanceOf } from './random.ts';

const MOST_KILOBYTES = 500_000;
const REPORT_USE = resolve('tests/bench/report-use.cjs');
const SEASON = 'footfall: 1\nseason: { title: Spring, starts: 2027-01-04 }\n';
/** Just under what is read of one file. */
const ALLOWED = 15_900_000;

const lines = (count: number, line: (index: number) => string): string =>
  Array.from({ length: count }, (_, index) => line(index)).join('\n');

const filled = (piece: string, length = ALLOWED): string => piece.repeat(Math.floor(length / piece.length));

/** The season.yaml of each, by what it is. */
export const heavy: Readonly<Record<string, () => string | Uint8Array>> = {
  '50 MB of comments': () => filled(`# ${'x'.repeat(97)}\n`, 50_000_000),
  '16 MB of comments': () => SEASON + filled(`# ${'x'.repeat(97)}\n`),
  '16 MB on one line': () => `${SEASON}athletes: ${filled('x')}`,
  '16 MB of random bytes': () => {
    const chance = chanceOf(1);
    return Uint8Array.from({ length: ALLOWED }, () => chance.below(256));
  },
  '16 MB of random letters': () => {
    const chance = chanceOf(2);
    return Uint8Array.from({ length: ALLOWED }, () => '\n :-{}[],"#&*ab01'.charCodeAt(chance.below(17)));
  },
  '16 MB of opening brackets': () => `a: ${filled('[')}`,
  '16 MB of closing brackets': () => `a: ${filled(']')}`,
  '16 MB of quotes': () => `a: ${filled('"')}`,
  '16 MB of dashes': () => filled('- '),
  '16 MB of tabs': () => `a:\n${filled('\t')}b: 1`,
  '16 MB of lines with tabs': () => `a:\n${filled('\tb: 1\n')}`,
  '16 MB of carriage returns': () => `a: 1\r${filled('b: 1\r')}`,
  '16 MB of no-break spaces': () => `a: 1\n${filled('\u00A0', ALLOWED / 2)}`,
  '16 MB of unclosed quotes': () => filled('a: "b\n'),
  '16 MB of small entries': () => `athletes:\n${lines(1_400_000, (index) => `  a${String(index)}: 1`)}`,
  'ten thousand keys': () => SEASON + lines(10_000, (index) => `key-${String(index)}: 1`),
  'ten thousand athletes with the same slip': () =>
    `${SEASON}athletes:\n${lines(10_000, (index) => `  a-${String(index)}: { level: beginner, mass: 68 }`)}`,
  'ten thousand equal keys': () => `${SEASON}squads:\n${lines(10_000, () => '  a: { level: beginner }')}`,
  'ten thousand near names': () =>
    `${SEASON}squads:\n${lines(10_000, (index) => `  squad-${String(index)}: {}`)}\nathletes:\n${lines(10_000, (index) => `  a-${String(index)}: { squad: sqaud-${String(index)}, level: beginner }`)}`,
  'a thousand levels': () => lines(1000, (index) => `${' '.repeat(index)}a:`),
  'a thousand brackets': () => `a: ${'['.repeat(1000)}${']'.repeat(1000)}`,
  'an alias bomb': () =>
    `a0: &a0 [x, x, x, x, x, x, x, x, x]\n${lines(20, (index) => `a${String(index + 1)}: &a${String(index + 1)} [${Array.from({ length: 9 }, () => `*a${String(index)}`).join(', ')}]`)}`,
  'a hundred thousand aliases': () => `a: &a [1, 2, 3]\nb: [${Array.from({ length: 100_000 }, () => '*a').join(', ')}]`,
  'a long number': () => `${SEASON}athletes: { a: { mass: ${'9'.repeat(1_000_000)} kg } }`,
};

/** Runs them all and says of each what it took; gives the names of those that took too much, or ended otherwise. */
export function runHeavy(say: (line: string) => void): readonly string[] {
  const folder = mkdtempSync(join(tmpdir(), 'footfall-heavy-'));
  try {
    return Object.entries(heavy)
      .filter(([name, make]) => !isTaken(name, make(), folder, say))
      .map(([name]) => name);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

export const heavyCount = Object.keys(heavy).length;

interface Run {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
  readonly cpuMilliseconds: number;
  readonly peakKilobytes: number;
}

function runOnce(folder: string): Run {
  const report = join(folder, 'use.json');
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ['--require', REPORT_USE, 'bin/footfall.js', 'check', folder],
    { env: { ...process.env, USE_REPORT: report }, encoding: 'utf8', maxBuffer: 100_000_000 },
  );
  return {
    status,
    stdout,
    stderr,
    ...(JSON.parse(readFileSync(report, 'utf8')) as Pick<Run, 'cpuMilliseconds' | 'peakKilobytes'>),
  };
}

const isGood = ({ status, stdout, cpuMilliseconds, peakKilobytes }: Run): boolean =>
  status === 1 &&
  /\[[a-z]+\/[a-z-]+\]/u.test(stdout) &&
  cpuMilliseconds <= MOST_MILLISECONDS &&
  peakKilobytes <= MOST_KILOBYTES;

/** A busy machine makes a run slow, never quick: one that is within the bounds out of three will do. */
function isTaken(name: string, content: string | Uint8Array, folder: string, say: (line: string) => void): boolean {
  writeFileSync(join(folder, 'season.yaml'), content);
  let run = runOnce(folder);
  for (let again = 0; again < 2 && !isGood(run); again += 1) run = runOnce(folder);
  const { status, cpuMilliseconds, peakKilobytes, stderr } = run;
  const use = `${cpuMilliseconds.toFixed(0)} ms, ${(peakKilobytes / 1000).toFixed(0)} MB, status ${String(status)}`;
  say(`${isGood(run) ? 'ok  ' : 'BAD '} ${name}: ${use}`);
  if (!isGood(run)) say(stderr.slice(0, 2000));
  return isGood(run);
}
