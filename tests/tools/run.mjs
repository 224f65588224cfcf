// Runs a TypeScript script with the Node that is here: `node tests/tools/run.mjs tests/bench/bench.ts [arguments]`.
// The script is bundled into node_modules/.cache first, packages left outside, since Node 20 reads no TypeScript.
// Its own place is lost by that, so scripts name files from the project's folder, where npm starts them.

import { mkdirSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const [script, ...rest] = process.argv.slice(2);
if (script === undefined) {
  console.error('usage: node tests/tools/run.mjs SCRIPT.ts [arguments]');
  process.exit(2);
}

const folder = join('node_modules', '.cache', 'footfall');
mkdirSync(folder, { recursive: true });
const outfile = resolve(folder, `${basename(script, '.ts')}.${process.pid}.mjs`);
await build({
  entryPoints: [script],
  outfile,
  bundle: true,
  packages: 'external',
  format: 'esm',
  platform: 'node',
  target: 'node20',
  logLevel: 'warning',
});
process.argv = [process.argv[0] ?? 'node', resolve(script), ...rest];
await import(pathToFileURL(outfile).href);
