// `npm run fuzz [-- --seconds 300] [--seed N]`: mutates the examples and fixtures and looks whether anything but
// diagnostics comes of it. What reports a set of codes not seen before is mutated further. A finding is written to
// `footfall-fuzz-N/` in the system's folder for temporary files, said with the seed, and makes the exit status 1.

import { mkdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { parseArgs } from 'node:util';
import { corpus } from './corpus.ts';
import type { PlanBytes } from './corpus.ts';
import { examine } from './examine.ts';
import { heavyCount, runHeavy } from './heavy.ts';
import { mutate, randomBytes } from './mutate.ts';
import { chanceOf } from './random.ts';
import type { Chance } from './random.ts';

const { values } = parseArgs({
  args: process.argv.slice(2),
  options: {
    seconds: { type: 'string', default: '300' },
    seed: { type: 'string', default: String(Date.now() % 1_000_000) },
  },
});
const seconds = Number(values.seconds);
const seed = Number(values.seed);
if (!Number.isFinite(seconds) || !Number.isInteger(seed)) throw new Error('--seconds and --seed are numbers');

const MOST_FINDINGS = 10;
/** Inputs larger than this are not mutated further. */
const MOST_BYTES = 60_000;
/** Of so many inputs one is random bytes. */
const RANDOM_EVERY = 50;

const sizeOf = (plan: PlanBytes): number => Object.values(plan).reduce((sum, { length }) => sum + length, 0);

function nextPlan(plans: readonly PlanBytes[], chance: Chance): PlanBytes {
  if (chance.below(RANDOM_EVERY) === 0) return { '/plan/season.yaml': randomBytes(chance) };
  const plan = chance.of(plans);
  const [path, bytes] = chance.of(Object.entries(plan));
  const other = chance.of(Object.values(chance.of(plans)));
  return { ...plan, [path]: mutate(bytes, other, chance) };
}

function keep(plan: PlanBytes, name: string): string {
  const folder = join(tmpdir(), name);
  for (const [path, bytes] of Object.entries(plan)) {
    const target = join(folder, path.slice('/plan/'.length));
    mkdirSync(dirname(target), { recursive: true });
    writeFileSync(target, bytes);
  }
  return folder;
}

console.log(`seed ${String(seed)}, ${String(seconds)} s`);
const tooMuch = runHeavy((line) => {
  console.log(line);
});
const chance = chanceOf(seed);
const plans = [...corpus()];
const started = plans.length;
const seen = new Set<string>();
const codes = new Set<string>();
const until = Date.now() + seconds * 1000;
let inputs = 0;
let findings = 0;
while (Date.now() < until && findings < MOST_FINDINGS) {
  const plan = nextPlan(plans, chance);
  inputs += 1;
  try {
    const examined = examine(plan);
    for (const code of examined.codes) codes.add(code);
    const kind = examined.codes.join(' ');
    if (!seen.has(kind) && sizeOf(plan) < MOST_BYTES) plans.push(plan);
    seen.add(kind);
  } catch (error) {
    findings += 1;
    const folder = keep(plan, `footfall-fuzz-${String(seed)}-${String(inputs)}`);
    console.log(`FOUND ${folder}\n${error instanceof Error ? (error.stack ?? error.message) : String(error)}`);
  }
}
console.log(
  `${String(inputs)} mutated inputs from ${String(started)} plans, ${String(heavyCount)} heavy ones: ` +
    `${String(codes.size)} codes reported in ${String(seen.size)} combinations, ${String(findings + tooMuch.length)} findings`,
);
process.exitCode = findings + tooMuch.length === 0 ? 0 : 1;
