// A table as CSV after RFC 4180: UTF-8, comma, CRLF, a header row, quotes only where a cell needs them. Called by the
// command line, which writes the lines as they come, so that a table of millions of rows is never in memory. Text that a
// spreadsheet would turn into something else is made harmless.

import type { Cell, Column, Row, Table } from '../../report/table.ts';
import { harmless } from './harmless.ts';

/** Names and exercises come again and again, notes don't: remembered up to here, then from anew. */
const MOST_REMEMBERED = 10_000;
const NEEDS_QUOTES = /[",\r\n]/u;

/** The file line by line, each with its end; `headed` is false where it goes on from another. */
export function* renderCsv(table: Table, headed = true): Iterable<string> {
  const { columns, rows } = table;
  const encodeText = createTextEncoder();
  if (headed) yield lineOf(columns.map(({ name }) => name));
  for (const row of rows) yield lineOf(columns.map((column, index) => encodeCell(row[index], column, encodeText)));
}

/** Makes text of cells that begin with the column of that number, from 0: what of a line they are. */
export function cellsEncoder(columns: readonly Column[]): (cells: Row, from: number) => string {
  const encodeText = createTextEncoder();
  return (cells, from) =>
    cells
      .map((cell, index) => {
        const column = columns[from + index];
        if (column === undefined) throw new Error(`there is no column ${from + index}`);
        return encodeCell(cell, column, encodeText);
      })
      .join(',');
}

/** A line with its end, put together of text of its cells. */
export const csvLine = (first: string, others: string): string => `${first},${others}\r\n`;

/** One cell of a column, as it stands in a line. */
export function csvCell(cell: Cell, column: Column): string {
  return encodeCell(cell, column, encode);
}

/** Joined in one go, end and all: put together piece by piece a line would keep all its pieces for as long as it is kept. */
function lineOf(cells: string[]): string {
  cells.push(`${cells.pop() ?? ''}\r\n`);
  return cells.join(',');
}

function encodeCell(cell: Cell, column: Column, encodeText: (text: string) => string): string {
  if (cell === undefined) return '';
  if (typeof cell === 'number') return Number.isInteger(cell) ? String(cell) : decimal(cell);
  return column.kind === 'text' ? encodeText(cell) : cell;
}

/**
 * A decimal that no spreadsheet takes for a month and a day, as those with a decimal comma do with `7.5` and `1.25`: with
 * a second place where that is no day, and otherwise with an exponent.
 */
function decimal(value: number): string {
  const text = String(value);
  const [whole = '', places = ''] = text.split('.');
  if (Number(whole) < 1 || Number(whole) > MONTHS) return text;
  const day = Number(places.padEnd(2, '0'));
  if (places.length > 2 || day < 1 || day > MOST_DAYS) return places.length === 1 ? `${text}0` : text;
  return `${text}E0`;
}

const MONTHS = 12;
const MOST_DAYS = 31;

function createTextEncoder(): (text: string) => string {
  const remembered = new Map<string, string>();
  return (text) => {
    const known = remembered.get(text);
    if (known !== undefined) return known;
    const encoded = encode(text);
    if (remembered.size >= MOST_REMEMBERED) remembered.clear();
    remembered.set(text, encoded);
    return encoded;
  };
}

function encode(text: string): string {
  const safe = harmless(text);
  return NEEDS_QUOTES.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
