// Makes dist/: the scripts of bundle.mjs, and beside them what V8 compiled of each, by keep-code.mjs, for bin/footfall.js
// to start from. Called by `npm run build`, by npm before packing, and by ready.mjs when dist/ is stale. Everything is
// bundled, so the installed package has no dependencies; the licences of what went in travel along in dist/licences.txt.

import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { cpSync, existsSync, readFileSync, readdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { bundle } from './bundle.mjs';

const OUTPUT = 'dist';
const STAMP = join(OUTPUT, 'source.sha256');

const EXAMPLE = 'examples/handball-spring';

/** What runs decide what V8 keeps of the scripts they load: of each script those that come first. */
const KEPT = [
  [['build', EXAMPLE, '--format', 'csv'], ['check', EXAMPLE], ['build', EXAMPLE], ['--help']],
  [
    ['build', EXAMPLE, '--format', 'html'],
    ['why', 'mira', '2027-02-02', EXAMPLE],
  ],
];

/** @param {string} folder @returns {string[]} every file below it, in order of path */
function filesBelow(folder) {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .toSorted();
}

/** One mark for everything that decides what dist/ holds. */
function sourceMark() {
  const mark = createHash('sha256');
  for (const file of [
    ...filesBelow('src'),
    'package.json',
    'package-lock.json',
    'tests/tools/build.mjs',
    'tests/tools/bundle.mjs',
    'tests/tools/keep-code.mjs',
    'bin/footfall.js',
  ]) {
    mark.update(file).update('\0').update(readFileSync(file)).update('\0');
  }
  return mark.digest('hex');
}

/** Whether dist/ was built from the source as it now is. */
export function isBuilt() {
  return existsSync(STAMP) && readFileSync(STAMP, 'utf8') === sourceMark();
}

/** @param {string} folder @returns {string} */
function licenceOf(folder) {
  const { name, version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const file = readdirSync(folder).find((entry) => /^licen[cs]e/i.test(entry));
  const text = file === undefined ? `Licence: ${license}` : readFileSync(join(folder, file), 'utf8').trim();
  return `${name} ${version}\n\n${text}\n`;
}

/** @param {readonly string[]} inputs files that went into the bundle @returns {string} */
function licences(inputs) {
  const folders = inputs.flatMap((file) => /^(?:.*\/)?node_modules\/(?:@[^/]+\/)?[^/]+/.exec(file)?.[0] ?? []);
  return [...new Set(folders)]
    .toSorted()
    .map(licenceOf)
    .join(`\n${'-'.repeat(80)}\n\n`);
}

/** Ends the process when the source has mistakes, which are told. */
async function bundleOrEnd(/** @type {string} */ folder) {
  try {
    return await bundle(folder);
  } catch (error) {
    if (!(error instanceof Error && 'errors' in error)) throw error;
    console.error('footfall: dist/ is not built; see above');
    return process.exit(1);
  }
}

/**
 * Without kept code the program starts later and does the same. The starting program is run from a copy beside its own
 * scripts, so that it is the fresh one that is kept.
 */
function keepCode(/** @type {string} */ folder) {
  cpSync('bin', join(folder, 'bin'), { recursive: true });
  for (const runs of KEPT) {
    execFileSync(process.execPath, ['tests/tools/keep-code.mjs', folder, JSON.stringify(runs)], { stdio: 'ignore' });
  }
}

// Written beside dist/ and swapped in whole, so that a half-made build never runs.
export async function build() {
  const mark = sourceMark();
  const workshop = `${OUTPUT}.${process.pid}`;
  const fresh = join(workshop, OUTPUT);
  const inputs = await bundleOrEnd(fresh);
  keepCode(workshop);
  writeFileSync(join(fresh, 'licences.txt'), licences(inputs));
  writeFileSync(join(fresh, 'source.sha256'), mark);
  rmSync(OUTPUT, { recursive: true, force: true });
  renameSync(fresh, OUTPUT);
  rmSync(workshop, { recursive: true, force: true });
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) await build();
