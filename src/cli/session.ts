// What a command works with: where it reads, where it writes and what the terminals show. Made once by main.ts; tests
// make their own.

import type { Output } from '../host/output.ts';
import type { Terminal } from '../host/terminal.ts';
import type { FileHost } from '../read/file-host.ts';
import type { Day } from '../util/days.ts';
import type { ExitStatus } from './exit-status.ts';
import { WRONG_COMMAND } from './exit-status.ts';

export interface Session {
  /** The latest day that it is today anywhere. */
  readonly today: Day;
  readonly files: FileHost;
  /** Results. */
  readonly out: Output;
  /** Everything about the run. */
  readonly err: Output;
  readonly outTerminal: Terminal;
  readonly errTerminal: Terminal;
}

/** Says what is wrong with the command and gives the status for it. */
export async function refuse(session: Session, message: string): Promise<ExitStatus> {
  await session.err.write(`footfall: ${message}\n`);
  return WRONG_COMMAND;
}

/** Lines as texts to write, each with its end. */
export function* lined(lines: Iterable<string>): Iterable<string> {
  for (const line of lines) yield `${line}\n`;
}
