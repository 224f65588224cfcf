// The program: takes what the process was started with, runs it, and leaves the exit status behind. Bundled as
// dist/start.cjs, which bin/footfall.js loads.

import { fileSystem } from '../host/files.ts';
import { standardError, standardOutput } from '../host/output.ts';
import { programArguments, setExitStatus } from '../host/program.ts';
import { errorTerminal, outputTerminal } from '../host/terminal.ts';
import { today } from '../host/time.ts';
import { run } from './run.ts';

const ended = run(programArguments(), {
  // Asked for each time: who watches a plan may do so over midnight.
  get today() {
    return today();
  },
  files: fileSystem,
  out: standardOutput(),
  err: standardError(),
  outTerminal: outputTerminal(),
  errTerminal: errorTerminal(),
});
void ended.then(setExitStatus);
