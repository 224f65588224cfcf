// One run of footfall: arguments in, exit status out. Whatever goes wrong ends here in words: a wrong command, an output
// that can't be written, a reader that has gone, and, where nothing else explains it, a bug of ours.

import { CommanderError } from 'commander';
import type { Command } from 'commander';
import { OutputFailed, ReaderGone } from '../host/output.ts';
import { DONE, OUR_BUG, WRONG_COMMAND } from './exit-status.ts';
import type { ExitStatus } from './exit-status.ts';
import { createProgram } from './program.ts';
import type { Session } from './session.ts';

/** Runs a command line and gives its exit status. Never rejects. */
export async function run(args: readonly string[], session: Session): Promise<ExitStatus> {
  try {
    const status = await runCommand(args, session);
    await session.out.end();
    return status;
  } catch (error) {
    return await endBadly(error, session);
  }
}

async function runCommand(args: readonly string[], session: Session): Promise<ExitStatus> {
  const said = { out: '', err: '' };
  let status: ExitStatus = DONE;
  const program = createProgram(args, session, (of) => {
    status = of;
  });
  for (const command of [program, ...program.commands]) listen(command, said, session);
  try {
    if (args.length === 0) program.help({ error: true });
    await program.parseAsync([...args], { from: 'user' });
    return status;
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error;
    await session.out.write(said.out);
    await session.err.write(said.err);
    return error.exitCode === 0 ? DONE : WRONG_COMMAND;
  }
}

interface Said {
  out: string;
  err: string;
}

const MOST_HELP_COLUMNS = 100;
/** A description gets so many at least beside its option; narrower, it isn't wrapped. */
const LEAST_WRAPPED = 12;

/** Has a command say things to us instead of the process, and throw instead of ending it. */
function listen(command: Command, said: Said, { outTerminal }: Session): void {
  command.exitOverride();
  command.showSuggestionAfterError(true);
  command.configureHelp({ minWidthToWrap: LEAST_WRAPPED });
  command.configureOutput({
    writeOut: (text) => {
      said.out += text;
    },
    writeErr: (text) => {
      said.err += text;
    },
    outputError: (text, write) => {
      write(`footfall: ${text.replace(/^error: /u, '')}`);
    },
    getOutHelpWidth: () => Math.min(MOST_HELP_COLUMNS, outTerminal.width),
    getErrHelpWidth: () => Math.min(MOST_HELP_COLUMNS, outTerminal.width),
    getOutHasColors: () => false,
    getErrHasColors: () => false,
  });
}

async function endBadly(error: unknown, { err }: Session): Promise<ExitStatus> {
  if (error instanceof ReaderGone) return DONE;
  const [status, words] = badEnd(error);
  await err.write(words);
  return status;
}

function badEnd(error: unknown): readonly [ExitStatus, string] {
  if (error instanceof OutputFailed)
    return [WRONG_COMMAND, `footfall: the output can't be written: ${error.message}\n`];
  const trace = error instanceof Error ? (error.stack ?? error.message) : String(error);
  return [OUR_BUG, bugReport(trace)];
}

const bugReport = (trace: string): string =>
  `footfall: this is a bug in footfall, not in your plan. Nothing it printed before this should be used.\n` +
  `Please report it with the plan, the command and these lines:\n${trace}\n`;
