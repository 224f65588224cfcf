// A table as CSV after RFC 4180: UTF-8, comma, CRLF, a header row, quotes only where a cell needs them. Called by the
// command line, which writes the lines as they come, so that a table of millions of rows is never in memory. Text that a
// spreadsheet would turn into something else is made harmless.

import type { Cell, Column, Table } from '../../report/table.ts';
import { harmless } from './harmless.ts';

/** Names and exercises come again and again, notes don't: remembered up to here, then from anew. */
const MOST_REMEMBERED = 10_000;
const NEEDS_QUOTES = /[",\r\n]/u;

/** The file line by line, each with its end. */
export function* renderCsv(table: Table): Iterable<string> {
  const encodeText = createTextEncoder();
  yield `${table.columns.map(({ name }) => name).join(',')}\r\n`;
  for (const row of table.rows) {
    let line = '';
    for (let index = 0; index < table.columns.length; index += 1) {
      if (index > 0) line += ',';
      line += encodeCell(row[index], table.columns[index], encodeText);
    }
    yield `${line}\r\n`;
  }
}

function encodeCell(cell: Cell, column: Column | undefined, encodeText: (text: string) => string): string {
  if (cell === undefined) return '';
  if (typeof cell === 'number') return String(cell);
  return column?.kind === 'text' ? encodeText(cell) : cell;
}

function createTextEncoder(): (text: string) => string {
  const remembered = new Map<string, string>();
  return (text) => {
    const known = remembered.get(text);
    if (known !== undefined) return known;
    const safe = harmless(text);
    const encoded = NEEDS_QUOTES.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
    if (remembered.size >= MOST_REMEMBERED) remembered.clear();
    remembered.set(text, encoded);
    return encoded;
  };
}
