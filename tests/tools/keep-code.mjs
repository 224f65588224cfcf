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

// V8 drops code that hasn't run for a while; all that ran is to be kept. Kept code is refused under other flags.
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
  setFlagsFromString('--interrupt-budget=200000');
  setFlagsFromString('--heap-growing-percent=60');
  writeFileSync(join(dist, file), program.createCachedData());
}

process.on('beforeExit', runNext);
runNext();
