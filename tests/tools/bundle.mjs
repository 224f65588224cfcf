// Bundles src/cli/main.ts into scripts, so that a run reads no more than it uses: `start` is what every run needs, `season`
// what compiling one needs besides, and each further part that is loaded late is a script of its own. Called by build.mjs.
//
// esbuild splits modules only. So they are split first, and then each script is bundled from its parts as a function of
// `require`, as V8 keeps compiled code of a script and, on Node 20, of no module. What a script takes from another it asks
// for as `script:part`; bin/footfall.js answers. Names are kept, so that the trace in a bug report can be read.

import { mkdtempSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { basename, dirname, join } from 'node:path';
import * as esbuild from 'esbuild';

const ENTRY = 'src/cli/main.ts';
/** What the usual runs load late: all of it makes up `season`. */
const USUAL = [
  'src/cli/commands/build.ts',
  'src/cli/commands/check.ts',
  'src/cli/table-rows.ts',
  'src/render/csv/csv.ts',
];

const require = createRequire(import.meta.url);

/** @type {esbuild.BuildOptions} */
const COMMON = { bundle: true, platform: 'node', target: 'node20', legalComments: 'none', logLevel: 'warning' };

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
      const names = Object.keys(require(path));
      const getters = names.map((name) => `get ${name}(){return require('${path}').${name}}`);
      return { contents: `module.exports={${getters.join(',')}}`, loader: 'js' };
    });
  },
};

/**
 * Of some packages there is more than a run needs: of `yaml` the writer, which only `footfall format` uses and is kept in one
 * file with the lexer, and of chalk the look at the machine's terminal, which src/host takes itself.
 * @type {esbuild.Plugin}
 */
const whatIsUsed = {
  name: 'what is used',
  setup: (bundler) => {
    const yaml = join(dirname(require.resolve('yaml/package.json')), 'browser/dist');
    const lexer = "export * as CST from './parse/cst.js'; export { Lexer } from './parse/lexer.js';";
    bundler.onResolve({ filter: /^yaml$/ }, ({ importer }) =>
      importer.endsWith('tidy-yaml.ts') ? { path: join(yaml, 'index.js') } : { path: 'yaml', namespace: 'lexer' },
    );
    bundler.onLoad({ filter: /.*/, namespace: 'lexer' }, () => ({ contents: lexer, resolveDir: yaml }));
    bundler.onResolve({ filter: /^#supports-color$/ }, ({ path }) => ({ path, namespace: 'unasked' }));
    bundler.onLoad({ filter: /.*/, namespace: 'unasked' }, () => ({
      contents: 'export default { stdout: false, stderr: false }',
    }));
  },
};

/** @typedef {{ readonly entryPoint?: string | undefined, readonly needs: readonly string[] }} Part */

/** Writes the parts into a folder as modules; gives them by the name of their file, and the files that went in. */
async function split(/** @type {string} */ folder) {
  const { metafile } = await esbuild.build({
    ...COMMON,
    entryPoints: [ENTRY],
    outdir: folder,
    splitting: true,
    format: 'esm',
    minifySyntax: true,
    plugins: [loadedLate, whatIsUsed],
    metafile: true,
  });
  /** @type {Map<string, Part>} */
  const parts = new Map();
  for (const [file, { entryPoint, imports }] of Object.entries(metafile.outputs)) {
    const needed = imports.filter(({ kind, external }) => kind === 'import-statement' && external !== true);
    parts.set(basename(file), { entryPoint, needs: needed.map(({ path }) => basename(path)) });
  }
  return { parts, inputs: Object.keys(metafile.inputs) };
}

/**
 * The parts of entry points with all that is evaluated along with them.
 * @param {ReadonlyMap<string, Part>} parts @param {readonly string[]} entries source files @returns {ReadonlySet<string>}
 */
function closure(parts, entries) {
  const reached = new Set(
    [...parts].flatMap(([name, { entryPoint = '' }]) => (entries.includes(entryPoint) ? name : [])),
  );
  // A set that grows is walked to its new end.
  for (const name of reached) for (const needed of parts.get(name)?.needs ?? []) reached.add(needed);
  return reached;
}

/** Which script each part goes into. @param {ReadonlyMap<string, Part>} parts @returns {ReadonlyMap<string, string>} */
function scriptsOf(parts) {
  const start = closure(parts, [ENTRY]);
  const season = closure(parts, USUAL);
  const scriptOf = (/** @type {string} */ name) =>
    start.has(name) ? 'start' : season.has(name) ? 'season' : basename(name, '.js');
  return new Map([...parts.keys()].map((name) => [name, scriptOf(name)]));
}

/**
 * @param {string} script @param {ReadonlyMap<string, string>} scripts @param {string} from folder of the parts
 * @param {string} folder where the script is written
 */
async function writeScript(script, scripts, from, folder) {
  const own = [...scripts].flatMap(([name, of]) => (of === script ? name : []));
  await esbuild.build({
    ...COMMON,
    stdin: { contents: own.map((name) => `export * as "${name}" from "./${name}";`).join('\n'), resolveDir: from },
    outfile: join(folder, `${script}.cjs`),
    format: 'cjs',
    minifyWhitespace: true,
    minifySyntax: true,
    lineLimit: 400,
    supported: { 'dynamic-import': false },
    banner: { js: '(function(require,module){' },
    footer: { js: '})' },
    plugins: [
      {
        name: 'from other scripts',
        setup: (bundler) => {
          bundler.onResolve({ filter: /^\.\// }, ({ path }) => {
            const name = basename(path);
            return own.includes(name) ? undefined : { path: `${scripts.get(name)}:${name}`, external: true };
          });
        },
      },
    ],
  });
}

/** Writes all scripts into a folder; gives the files that went in. Rejects when the source has mistakes, which are told. */
export async function bundle(/** @type {string} */ folder) {
  const parted = mkdtempSync(join(tmpdir(), 'footfall-parts-'));
  try {
    const { parts, inputs } = await split(parted);
    const scripts = scriptsOf(parts);
    for (const script of new Set(scripts.values())) await writeScript(script, scripts, parted, folder);
    return inputs;
  } finally {
    rmSync(parted, { recursive: true, force: true });
  }
}
