// Lines of a table that many athletes have, each with another first cell. They are kept as bytes, in which the cell alone
// is written over for the next athlete, when the file is written: put together as text they would be copied twice more, and
// of 10,000 athletes that is half a gigabyte. Called by table-rows.ts.

import type { LateBytes } from '../host/growing-files.ts';

/** Lines behind a first cell, which is text with its comma, as they stand in the file. */
export const linesBehind = (first: string, lines: readonly string[]): string =>
  lines.length === 0 ? '' : first + lines.join(first);

/** Gives the lines behind one first cell after the other: as text the first time, as most lines are asked for once. */
export function repeatedLines(lines: readonly string[]): (first: string) => string | LateBytes {
  let isAskedAgain = false;
  let laid: Laid | undefined;
  return (first) => {
    if (!isAskedAgain || lines.length === 0) {
      isAskedAgain = true;
      return linesBehind(first, lines);
    }
    const cell = Buffer.from(first, 'utf8');
    if (laid?.width !== cell.length) laid = layOut(first, cell.length, lines);
    return lateBytes(laid, cell);
  };
}

/** Lines with a first cell of so many bytes. */
interface Laid {
  readonly width: number;
  readonly bytes: Uint8Array;
  /** Where each line begins. */
  readonly starts: readonly number[];
}

function layOut(first: string, width: number, lines: readonly string[]): Laid {
  const starts: number[] = [];
  let end = 0;
  for (const line of lines) {
    starts.push(end);
    end += width + Buffer.byteLength(line, 'utf8');
  }
  return { width, bytes: Buffer.from(linesBehind(first, lines), 'utf8'), starts };
}

function lateBytes({ bytes, starts }: Laid, cell: Uint8Array): LateBytes {
  return {
    length: bytes.length,
    make: () => {
      // For the few letters of an id a call of `set` takes longer than all of them.
      for (const start of starts) {
        for (let at = 0; at < cell.length; at += 1) bytes[start + at] = cell[at] ?? 0;
      }
      return bytes;
    },
  };
}
