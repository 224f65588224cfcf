// The colours of the terminal, by what they mean. Every renderer that colours takes a palette; without colour it is one
// that changes nothing, so that no text depends on being coloured.

import { Chalk } from 'chalk';

/** How many colours there are, as chalk counts: none, 16, 256, or all. */
export type ColourDepth = 0 | 1 | 2 | 3;

type Paint = (text: string) => string;

export interface Palette {
  readonly error: Paint;
  readonly warning: Paint;
  readonly notice: Paint;
  readonly strong: Paint;
  /** For what may be read over. */
  readonly quiet: Paint;
  /** For what stands out without being a problem. */
  readonly accent: Paint;
  /** For easy weeks, tapers and the like. */
  readonly easy: Paint;
}

/** The palette for so much colour; at depth 0 each text comes back as it is. */
export function createPalette(depth: ColourDepth): Palette {
  const chalk = new Chalk({ level: depth });
  return {
    error: (text) => chalk.red.bold(text),
    warning: (text) => chalk.yellow.bold(text),
    notice: (text) => chalk.cyan.bold(text),
    strong: (text) => chalk.bold(text),
    quiet: (text) => chalk.dim(text),
    accent: (text) => chalk.cyan(text),
    easy: (text) => chalk.green(text),
  };
}
