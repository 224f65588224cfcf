// Bundles src/cli/main.ts into dist/main.cjs: one script, a function of `require`, so that V8 can keep what it compiled of
// it, by keep-code.mjs, and bin/footfall.js start from there. A command's code is still run when it is used and not before.
// Names are kept, so that the trace in a bug report can be read; that costs no time one can measure.
// Called by `npm run build`, by npm before packing, and by ready.mjs when dist/ is stale. Everything is bundled, so the
// installed package has no dependencies; the licences of what went in travel along in dist/licences.txt.

import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, readdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import * as esbuild from 'esbuild';

const OUTPUT = 'dist';
const STAMP = join(OUTPUT, 'source.sha256');

const EXAMPLE = 'examples/handball-spring';

/** What V8 keeps: for `--help` little, so that it is read at once; for all else what the usual commands need. */
const KEPT = {
  'help.code': ['--help'],
  'build.code': ['build', EXAMPLE, '--format', 'csv', '--', 'check', EXAMPLE, '--', 'build', EXAMPLE],
};

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

/**
 * Of Node's own modules some take long to load, and most runs never use them: whoever imports one gets a stand-in that
 * loads it when the first name is asked for.
 * @type {esbuild.Plugin}
 */
const loadedLate = {
  name: 'loaded late',
  setup: (bundler) => {
    bundler.onResolve({ filter: /^(?:node:)?(?:child_process|crypto)$/ }, ({ path, namespace }) =>
      namespace === 'loaded-late'
        ? undefined
        : { path: path.replace(/^(?:node:)?/u, 'node:'), namespace: 'loaded-late' },
    );
    bundler.onLoad({ filter: /.*/, namespace: 'loaded-late' }, ({ path }) => {
      const names = Object.keys(createRequire(import.meta.url)(path));
      const getters = names.map((name) => `get ${name}(){return require('${path}').${name}}`);
      return { contents: `module.exports={${getters.join(',')}}`, loader: 'js' };
    });
  },
};

/** Bundles into a folder and gives the files that went in. Ends the process when the source has mistakes, which are told. */
async function bundle(/** @type {string} */ folder) {
  const result = esbuild.build({
    entryPoints: ['src/cli/main.ts'],
    outfile: join(folder, 'main.cjs'),
    bundle: true,
    minifyWhitespace: true,
    minifySyntax: true,
    lineLimit: 400,
    format: 'cjs',
    platform: 'node',
    target: 'node20',
    banner: { js: '(function(require){var module={exports:{}};' },
    footer: { js: '})' },
    legalComments: 'none',
    plugins: [loadedLate],
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

/** Without kept code the program starts later and does the same. */
function keepCode(/** @type {string} */ folder) {
  for (const [file, commands] of Object.entries(KEPT)) {
    execFileSync(process.execPath, ['tests/tools/keep-code.mjs', folder, file, ...commands], { stdio: 'ignore' });
  }
}

// Written beside dist/ and swapped in whole, so that a half-made build never runs.
export async function build() {
  const mark = sourceMark();
  const fresh = `${OUTPUT}.${process.pid}`;
  const inputs = await bundle(fresh);
  keepCode(fresh);
  writeFileSync(join(fresh, 'licences.txt'), licences(inputs));
  writeFileSync(join(fresh, 'source.sha256'), mark);
  rmSync(OUTPUT, { recursive: true, force: true });
  renameSync(fresh, OUTPUT);
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) await build();
