#!/usr/bin/env node
// What the shell starts: runs the program that `npm run build` bundled from src/cli/main.ts into dist/, with the machine
// code that V8 kept of it there, where this is the V8 that made it. CommonJS, as that starts sooner than a module.

'use strict';

const { readFileSync } = require('node:fs');
const { join } = require('node:path');
const { setFlagsFromString } = require('node:v8');
const { Script } = require('node:vm');

// Most runs are over before optimised code has paid for its making, and each page of memory that is touched costs time: V8
// is to leave that code and give young objects little room until src/host/engine.ts says that the run is a long one.
setFlagsFromString('--no-opt');
setFlagsFromString('--semi-space-growth-factor=1');
// And then V8 is to think of it later than it does by itself.
setFlagsFromString('--interrupt-budget=200000');
// Of a big squad little is alive at once: the heap may grow by so many per cent before it is cleared, not fourfold.
setFlagsFromString('--heap-growing-percent=60');

const dist = join(__dirname, '../dist');
const filename = join(dist, 'main.cjs');

/** Helps and versions are answered from the little they need, all else from what a whole build needs. */
function keptCode() {
  const kept = /^[a-z]/u.test(process.argv[2] ?? '') && !process.argv.includes('--help') ? 'build' : 'help';
  try {
    return readFileSync(join(dist, `${kept}.code`));
  } catch {
    return undefined;
  }
}

const program = new Script(readFileSync(filename, 'latin1'), { filename, cachedData: keptCode() });
program.runInThisContext()(require);
