#!/usr/bin/env node
// What the shell starts: runs the scripts that `npm run build` bundled from src/cli/main.ts into dist/, each when it is
// first asked for, with the machine code that V8 kept of it there, where this is the V8 that made it. CommonJS, as that
// starts sooner than a module.

'use strict';

const { closeSync, existsSync, fstatSync, openSync, readSync } = require('node:fs');
const { join } = require('node:path');
const { setFlagsFromString } = require('node:v8');
const { Script } = require('node:vm');

// Under other flags V8 refuses the code that Node keeps of its own modules, so those of every run are loaded before.
void [process.stdout, process.stderr];

// Most runs are over before optimised code or a heap cleared of what is old has paid for its making, and each page of memory
// that is touched costs time: V8 is to leave both and give young objects little room until src/host/engine.ts says that the
// run is a long one.
setFlagsFromString('--no-opt');
setFlagsFromString('--no-incremental-marking');
setFlagsFromString('--semi-space-growth-factor=1');
// And then V8 is to think of it later than it does by itself.
setFlagsFromString('--interrupt-budget=200000');
// Of a big squad little is alive at once: the heap may grow by so many per cent before it is cleared, not fourfold.
setFlagsFromString('--heap-growing-percent=60');

const dist = join(__dirname, '../dist');

/**
 * Files are read into the same memory one after the other. It has room for the largest from the start, as only what is
 * touched costs anything.
 */
let space = Buffer.allocUnsafeSlow(4 * 1024 * 1024);

/** The bytes of a file, until the next one is read. */
function read(file) {
  const opened = openSync(file);
  try {
    const { size } = fstatSync(opened);
    if (size > space.length) space = Buffer.allocUnsafeSlow(size);
    return space.subarray(0, readSync(opened, space, 0, size, 0));
  } finally {
    closeSync(opened);
  }
}

/** What V8 kept of a script; without it the program starts later and does the same. */
function keptCode(script) {
  try {
    return read(join(dist, `${script}.code`));
  } catch {
    return undefined;
  }
}

const loaded = new Map();

/** What a script exports: its parts by name. */
function load(script) {
  const before = loaded.get(script);
  if (before !== undefined) return before;
  const source = read(join(dist, `${script}.cjs`)).latin1Slice();
  // Kept code holds the name it was kept under, so it is the same wherever the program is installed.
  const filename = `dist/${script}.cjs`;
  const module = { exports: {} };
  new Script(source, { filename, cachedData: keptCode(script) }).runInThisContext()(requirePart, module);
  loaded.set(script, module.exports);
  return module.exports;
}

/** A part of another script, `script:part`, or one of Node's own modules. */
function requirePart(name) {
  const [script, part] = name.split(':');
  return part === undefined || script === 'node' ? require(name) : load(script)[part];
}

if (!existsSync(dist)) {
  process.stderr.write('footfall: not built yet; `npm run build` in its folder does that\n');
  process.exitCode = 2;
} else {
  load('start');
}
