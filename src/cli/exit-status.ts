// How footfall ends, for whoever calls it from a script. Every command returns one of these; main.ts leaves it behind.

export type ExitStatus = 0 | 1 | 2 | 3;

export const DONE: ExitStatus = 0;
/** The plan has errors, or warnings under `--strict`. */
export const PLAN_HAS_ERRORS: ExitStatus = 1;
/** The command itself is wrong, or something can't be read or written. */
export const WRONG_COMMAND: ExitStatus = 2;
export const OUR_BUG: ExitStatus = 3;
