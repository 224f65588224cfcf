// Runs the program as the shell does and keeps what V8 compiled of each script it loaded, for the next start to begin with.
// What is kept already stays. Called by build.mjs in a process of its own: `node keep-code.mjs FOLDER RUNS`, where bin/ and
// dist/ are in the folder and RUNS is JSON, the words of each run.

import { existsSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { resolve } from 'node:path';
import { setFlagsFromString } from 'node:v8';
import vm from 'node:vm';

const [folder = '', runs = '[]'] = process.argv.slice(2);
/** @type {string[][]} */
const toRun = JSON.parse(runs);
const require = createRequire(import.meta.url);
const program = resolve(folder, 'bin/footfall.js');

/** @type {Map<string, vm.Script>} */
const scripts = new Map();

// One script serves all runs, so that what any of them made V8 compile is kept.
const { Script } = vm;
vm.Script = class extends Script {
  /** @param {string} source @param {vm.ScriptOptions & { filename: string }} options */
  constructor(source, options) {
    const known = scripts.get(options.filename);
    if (known !== undefined) return known;
    super(source, options);
    scripts.set(options.filename, this);
  }
};

// V8 drops code that hasn't run for a while; here all that ran is to be kept.
setFlagsFromString('--no-flush-bytecode');

function runNext() {
  const words = toRun.shift();
  if (words === undefined) {
    keep();
    return;
  }
  process.argv.splice(2, Infinity, ...words);
  delete require.cache[program];
  require(program);
  // Without something to wait for, the process would not be about to end a second time.
  setImmediate(() => {});
}

// Kept code is refused under other flags than those it was kept under: the program has set its own.
function keep() {
  process.removeListener('beforeExit', runNext);
  setFlagsFromString('--flush-bytecode');
  for (const [file, script] of scripts) {
    const kept = resolve(folder, file.replace(/\.cjs$/u, '.code'));
    if (!existsSync(kept)) writeFileSync(kept, script.createCachedData());
  }
}

process.on('beforeExit', runNext);
runNext();
