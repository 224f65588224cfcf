// The process itself: what it was started with and how it ends. Never ended while there is something to wait for, so that
// nothing written is lost. Used by cli/main.ts alone.

/** The words after the program's name. */
export const programArguments = (): readonly string[] => process.argv.slice(2);

/**
 * Leaves the exit status behind. The process ends when its output is written, and then at once: Node would first take all
 * its memory apart, which a short run waits for longer than for reading its plan.
 */
export function setExitStatus(status: number): void {
  process.exitCode = status;
  process.once('exit', () => process.exit());
}
