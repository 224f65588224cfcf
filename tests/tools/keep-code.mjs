// Runs the bundled program as bin/footfall.js does and keeps what V8 compiled of it, for the next start to begin with.
// Called by build.mjs in a process of its own for each file kept: `node keep-code.mjs DIST FILE COMMAND… [-- COMMAND…]`.

import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { setFlagsFromString } from 'node:v8';
import { Script } from 'node:vm';

const [dist = '', file = '', ...words] = process.argv.slice(2);
const commands = words
  .join('\n')
  .split('\n--\n')
  .map((command) => command.split('\n'));

// The flags of bin/footfall.js: kept code is refused under others. V8 drops code that hasn't run for a while; here all that ran
// is to be kept.
const FLAGS = ['--no-opt', '--semi-space-growth-factor=1', '--interrupt-budget=200000', '--heap-growing-percent=60'];
setFlagsFromString('--no-flush-bytecode');
const filename = join(dist, 'main.cjs');
const program = new Script(readFileSync(filename, 'latin1'), { filename });
const start = program.runInThisContext();

function runNext() {
  const command = commands.shift();
  if (command === undefined) {
    keep();
    return;
  }
  process.argv.splice(2, Infinity, ...command);
  start(createRequire(import.meta.url));
  // Without something to wait for, the process would not be about to end a second time.
  setImmediate(() => {});
}

function keep() {
  process.removeListener('beforeExit', runNext);
  setFlagsFromString('--flush-bytecode');
  for (const flag of FLAGS) setFlagsFromString(flag);
  writeFileSync(join(dist, file), program.createCachedData());
}

process.on('beforeExit', runNext);
runNext();
