// The process itself: what it was started with and how it ends. Never ended by force, so that nothing written is lost.
// Used by cli/main.ts alone.

/** The words after the program's name. */
export const programArguments = (): readonly string[] => process.argv.slice(2);

/** Leaves the exit status behind; the process ends when its output is written. */
export function setExitStatus(status: number): void {
  process.exitCode = status;
}
