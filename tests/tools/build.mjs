// Bundles src/cli/main.ts into dist/: minified ES modules, split so that a command's code is loaded when it is used.
// Names are kept, so that the trace in a bug report can be read; that costs no time one can measure.
// Called by `npm run build`, by npm before packing, and by ready.mjs when dist/ is stale. Everything is bundled, so the
// installed package has no dependencies; the licences of what went in travel along in dist/licences.txt.

import { createHash } from 'node:crypto';
import { existsSync, readFileSync, readdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import * as esbuild from 'esbuild';

const OUTPUT = 'dist';
const STAMP = join(OUTPUT, 'source.sha256');

// Some bundled packages are CommonJS and ask for Node's own modules through `require`.
const REQUIRE = "import{createRequire as requireFrom}from'node:module';const require=requireFrom(import.meta.url);";

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
  for (const file of [...filesBelow('src'), 'package.json', 'package-lock.json', 'tests/tools/build.mjs']) {
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

/** Bundles into a folder and gives the files that went in. Ends the process when the source has mistakes, which are told. */
async function bundle(/** @type {string} */ folder) {
  const result = esbuild.build({
    entryPoints: ['src/cli/main.ts'],
    outdir: folder,
    bundle: true,
    splitting: true,
    minifyWhitespace: true,
    minifySyntax: true,
    lineLimit: 400,
    format: 'esm',
    platform: 'node',
    target: 'node20',
    banner: { js: REQUIRE },
    chunkNames: 'chunks/[name]-[hash]',
    legalComments: 'none',
    metafile: true,
    logLevel: 'warning',
  });
  try {
    return Object.keys((await result).metafile.inputs);
  } catch (error) {
    if (!(error instanceof Error && 'errors' in error)) throw error;
    console.error('footfall: dist/ is not built; see above');
    return process.exit(1);
  }
}

// Written beside dist/ and swapped in whole, so that a half-made build never runs.
export async function build() {
  const mark = sourceMark();
  const fresh = `${OUTPUT}.${process.pid}`;
  const inputs = await bundle(fresh);
  writeFileSync(join(fresh, 'licences.txt'), licences(inputs));
  writeFileSync(join(fresh, 'source.sha256'), mark);
  rmSync(OUTPUT, { recursive: true, force: true });
  renameSync(fresh, OUTPUT);
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) await build();
