// Measures footfall on this machine: `npm run bench` for everything, `npm run bench -- 100 1000` for other squad sizes.
// Small runs are told as multiples of starting Node at all, taken in turn in one go, so that a busy machine slows both;
// large ones as seconds and memory, with the exponent by which they grow with the number of athletes (1 is in proportion).

import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { cpus, tmpdir } from 'node:os';
import { join } from 'node:path';
import { compareContacts } from '../oracle/contacts/compare.ts';
import { loadSolver } from '../oracle/contacts/integer-program.ts';
import { measure, median, PLAIN } from './measure.ts';
import type { Environment, Use } from './measure.ts';
import { measureRounds } from './watch-rounds.ts';
import { writePlan, writeYamlPlan } from './write-plan.ts';
import type { Maxima } from './write-plan.ts';

const FOOTFALL = 'bin/footfall.js';
const EXAMPLE = 'examples/handball-spring';
const ROUNDS = 15;
const SIZES = [100, 1_000, 10_000];
/** Above this many athletes one run has to do. */
const REPEATED_UP_TO = 1_000;

type Commands = Readonly<Record<string, readonly string[]>>;

const smallCommands = (folder: string): Commands => ({
  'node -e 0': ['-e', '0'],
  'footfall --help': [FOOTFALL, '--help'],
  'footfall check': [FOOTFALL, 'check', EXAMPLE],
  'footfall build --format csv': [FOOTFALL, 'build', EXAMPLE, '--format', 'csv'],
  'footfall build --out DIR': [FOOTFALL, 'build', EXAMPLE, '--out', join(folder, 'pages')],
});

function print(rows: readonly (readonly string[])[]): void {
  const widths = (rows[0] ?? []).map((_, column) => Math.max(...rows.map((row) => row[column]?.length ?? 0)));
  for (const row of rows) {
    const cells = row.map((cell, column) =>
      column === 0 ? cell.padEnd(widths[0] ?? 0) : cell.padStart(widths[column] ?? 0),
    );
    console.log(cells.join('  '));
  }
}

const megabytes = (kilobytes: number): string => `${(kilobytes / 1024).toFixed(0)} MB`;

/** Every command once a round, so that all of them meet the same weather. */
function inTurns(
  commands: Commands,
  rounds: number,
  folder: string,
  environment: Environment,
): ReadonlyMap<string, readonly Use[]> {
  const uses = new Map<string, Use[]>(Object.keys(commands).map((name) => [name, []]));
  for (let round = 0; round < rounds; round += 1) {
    for (const [name, command] of Object.entries(commands)) uses.get(name)?.push(measure(command, folder, environment));
  }
  return uses;
}

function benchSmall(folder: string, environment: Environment, also: string): void {
  const uses = [...inTurns(smallCommands(folder), ROUNDS, folder, environment)].map(([name, all]) => ({
    name,
    milliseconds: median(all.map((use) => use.milliseconds)),
    peakKilobytes: median(all.map((use) => use.peakKilobytes)),
  }));
  const bare = uses[0]?.milliseconds ?? Number.NaN;
  print([
    [`${EXAMPLE}, median of ${ROUNDS}${also}`, 'time', 'times node', 'memory'],
    ...uses.map((use) => [
      use.name,
      `${use.milliseconds.toFixed(0)} ms`,
      (use.milliseconds / bare).toFixed(2),
      megabytes(use.peakKilobytes),
    ]),
  ]);
}

/** Growth from one size to the next: seconds or memory above what Node needs for nothing, as a power of the size. */
function exponent(smaller: number, larger: number, sizes: readonly [number, number]): string {
  if (smaller <= 0 || larger <= 0) return '-';
  return (Math.log(larger / smaller) / Math.log(sizes[1] / sizes[0])).toFixed(2);
}

function benchSize(command: readonly string[], athletes: number, folder: string): Use {
  const plan = join(folder, `plan-${athletes}`);
  writePlan(plan, athletes);
  const rounds = athletes <= REPEATED_UP_TO ? 3 : 1;
  const uses = Array.from({ length: rounds }, () =>
    measure([FOOTFALL, command[0] ?? '', plan, ...command.slice(1)], folder),
  );
  return {
    milliseconds: median(uses.map((use) => use.milliseconds)),
    cpuMilliseconds: median(uses.map((use) => use.cpuMilliseconds)),
    peakKilobytes: median(uses.map((use) => use.peakKilobytes)),
  };
}

function benchGrowth(command: readonly string[], sizes: readonly number[], folder: string): void {
  const bare = measure(['-e', '0'], folder);
  const rows = [[`footfall ${command.join(' ')}, 26 weeks`, 'time', 'exponent', 'processor', 'memory', 'exponent']];
  let before: { readonly athletes: number; readonly use: Use } | undefined;
  for (const athletes of sizes) {
    const use = benchSize(command, athletes, folder);
    const growth = (of: (use: Use) => number): string =>
      before === undefined ? '' : exponent(of(before.use) - of(bare), of(use) - of(bare), [before.athletes, athletes]);
    rows.push([
      `${athletes} athletes`,
      `${(use.milliseconds / 1000).toFixed(2)} s`,
      growth(({ milliseconds }) => milliseconds),
      `${(use.cpuMilliseconds / 1000).toFixed(2)} s`,
      megabytes(use.peakKilobytes),
      growth(({ peakKilobytes }) => peakKilobytes),
    ]);
    before = { athletes, use };
  }
  print(rows);
}

const PARSE = "require('yaml').parse(require('node:fs').readFileSync(process.argv[1], 'utf8'))";

/** All four tables of the largest squad, against what the YAML package needs for no more than parsing the same plan. */
function benchTables(sizes: readonly number[], maxima: Maxima, folder: string): void {
  const athletes = Math.max(...sizes);
  const plan = writeYamlPlan(join(folder, 'plan-yaml'), athletes, maxima);
  const out = join(folder, 'tables');
  const bare = measure(['-e', '0'], folder).cpuMilliseconds;
  const parsing = measure(['-e', PARSE, plan], folder);
  const building = measure([FOOTFALL, 'build', plan, '--out', out, '--format', 'csv'], folder);
  const times = (building.cpuMilliseconds - bare) / (parsing.cpuMilliseconds - bare);
  print([
    [`${athletes} athletes in YAML, 26 weeks, maxima ${maxima}`, 'time', 'processor', 'memory', 'times the parse'],
    ['parsed by the YAML package', ...useCells(parsing), '1'],
    ['footfall build --out DIR --format csv', ...useCells(building), times.toFixed(2)],
  ]);
}

const useCells = ({ milliseconds, cpuMilliseconds, peakKilobytes }: Use): readonly string[] => [
  `${(milliseconds / 1000).toFixed(2)} s`,
  `${(cpuMilliseconds / 1000).toFixed(2)} s`,
  megabytes(peakKilobytes),
];

const WATCHED_ATHLETES = 1_000;
const WATCHED_ROUNDS = 9;

/** One athlete edited under `--watch`, against building the same plan from scratch, in processor time. */
async function benchWatch(folder: string): Promise<void> {
  const rows = [[`one of ${WATCHED_ATHLETES} athletes edited, 26 weeks`, 'from scratch', 'under --watch', 'per cent']];
  for (const options of [[], ['--out', join(folder, 'watched'), '--format', 'csv']]) {
    const plan = join(folder, `plan-watched-${options.length}`);
    writePlan(plan, WATCHED_ATHLETES);
    const build = [FOOTFALL, 'build', plan, ...options];
    const cold = median([1, 2, 3].map(() => measure(build, folder).cpuMilliseconds));
    const rounds = await measureRounds([...build, '--watch'], join(plan, 'roster.csv'), WATCHED_ROUNDS);
    const round = median(rounds);
    rows.push([
      `footfall build ${options.length === 0 ? '' : '--out DIR --format csv '}--watch`,
      `${cold.toFixed(0)} ms`,
      `${round.toFixed(0)} ms`,
      ((HUNDRED * round) / cold).toFixed(1),
    ]);
  }
  print(rows);
}

const HUNDRED = 100;
const ORACLE_PLANS = 100;
const ORACLE_SEED = 7;

/** The search for a season's contacts against a mixed-integer solver that finds seasons as good. */
async function benchSearch(): Promise<void> {
  const { plans, weeks, impossible, milliseconds } = compareContacts(await loadSolver(), ORACLE_PLANS, ORACLE_SEED);
  print([
    [`contacts of ${plans} random seasons, ${weeks} weeks`, 'time', 'times ours'],
    ['footfall', `${milliseconds.search.toFixed(0)} ms`, '1'],
    [
      `solver, equal in all levels, ${impossible} impossible by both`,
      `${milliseconds.solver.toFixed(0)} ms`,
      (milliseconds.solver / milliseconds.search).toFixed(0),
    ],
  ]);
}

function sizesWanted(words: readonly string[]): readonly number[] {
  const sizes = words.map(Number);
  if (sizes.some((size) => !Number.isInteger(size) || size < 1)) throw new Error('sizes are whole numbers of athletes');
  return sizes.length === 0 ? SIZES : sizes.toSorted((a, b) => a - b);
}

async function main(): Promise<void> {
  const sizes = sizesWanted(process.argv.slice(2));
  if (!existsSync('dist/start.cjs')) throw new Error('dist/start.cjs is missing: run `npm run build` first');
  const folder = mkdtempSync(join(tmpdir(), 'footfall-bench-'));
  try {
    console.log(`${cpus()[0]?.model.trim() ?? 'unknown processor'}, ${cpus().length} cores, Node ${process.version}\n`);
    benchSmall(folder, PLAIN, '');
    console.log('');
    if (process.env['NODE_EXTRA_CA_CERTS'] !== undefined) {
      benchSmall(folder, process.env, ', with the certificates of NODE_EXTRA_CA_CERTS');
      console.log('');
    }
    await benchSearch();
    for (const command of [['check'], ['build', '--table', 'weeks', '--format', 'csv']]) {
      console.log('');
      benchGrowth(command, sizes, folder);
    }
    for (const maxima of ['of the squad', 'of their own'] as const) {
      console.log('');
      benchTables(sizes, maxima, folder);
    }
    console.log('');
    await benchWatch(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

try {
  await main();
} catch (error) {
  console.error(`bench: ${error instanceof Error ? error.message : String(error)}`);
  process.exitCode = 1;
}
