// How far a long piece of work is, on one line of a terminal that is written over and gone at the end. Nothing for work
// that is soon done, and nothing at all where nobody watches: in a pipe or a file.

import type { Stream } from './terminal.ts';

export interface Progress {
  /** So many of so many are done. */
  readonly tell: (done: number, of: number) => void;
  /** Takes the line away. */
  readonly end: () => void;
}

interface Written extends Stream {
  readonly write: (text: string) => boolean;
}

const SILENT: Progress = { tell: () => {}, end: () => {} };
const FIRST_AFTER_MILLISECONDS = 1000;
const AGAIN_AFTER_MILLISECONDS = 200;
const CLEAR_LINE = '\r\u{1b}[K';

/** Progress on a stream, told in `what`: `athletes`. `now` gives milliseconds. */
export function createProgress(stream: Written, what: string, now: () => number = Date.now): Progress {
  if (stream.isTTY !== true) return SILENT;
  let next = now() + FIRST_AFTER_MILLISECONDS;
  let isShown = false;
  return {
    tell: (done, of) => {
      if (now() < next) return;
      next = now() + AGAIN_AFTER_MILLISECONDS;
      isShown = true;
      stream.write(`${CLEAR_LINE}footfall: ${done} of ${of} ${what}`);
    },
    end: () => {
      if (isShown) stream.write(CLEAR_LINE);
      isShown = false;
    },
  };
}

/** Progress on standard error, so that results stay clean. */
export const errorProgress = (what: string): Progress => createProgress(process.stderr, what);
