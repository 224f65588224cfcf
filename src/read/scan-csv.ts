// CSV text to rows of cells, each with the stretch of text it stands in. Called by csv-rows. RFC 4180 with LF or CRLF;
// spaces around a cell are not part of it, rows without any text are left out. Written here rather than taken from a
// package because every cell needs its place; the tests hold it against csv-parse.

import type { Diagnostic } from '../diagnostics/types.ts';
import { problem } from '../diagnostics/problem.ts';
import type { SourceFile } from '../source/types.ts';

export interface Cell {
  /** Without its quotes. */
  readonly text: string;
  readonly start: number;
  readonly end: number;
  /** Where `text` begins: behind a quote and the spaces in it. */
  readonly textStart: number;
  readonly quoted: boolean;
}

export interface CsvRow {
  readonly start: number;
  readonly end: number;
  readonly cells: readonly Cell[];
}

interface Scan {
  readonly file: SourceFile;
  readonly text: string;
  readonly diagnostics: Diagnostic[];
  at: number;
}

/** The rows of a text, one after another; problems are added to `diagnostics` as they are met. */
export function* scanCsv(file: SourceFile, text: string, diagnostics: Diagnostic[]): Generator<CsvRow, void> {
  const scan: Scan = { file, text, diagnostics, at: 0 };
  while (scan.at < text.length) {
    const start = scan.at;
    const cells = scanRow(scan);
    const end = cells.at(-1)?.end ?? start;
    if (cells.some((cell) => cell.text !== '')) yield { start, end, cells };
  }
}

function scanRow(scan: Scan): readonly Cell[] {
  const cells: Cell[] = [];
  for (;;) {
    skipSpaces(scan);
    cells.push(scan.text.charAt(scan.at) === '"' ? quotedCell(scan) : plainCell(scan));
    const separator = scan.text.charAt(scan.at);
    scan.at += separator === '\r' ? 2 : 1;
    if (separator !== ',') return cells;
  }
}

function skipSpaces(scan: Scan): void {
  while (scan.text.charAt(scan.at) === ' ' || scan.text.charAt(scan.at) === '\t') scan.at += 1;
}

/** Moves to the comma or line end behind a cell. */
function skipToCellEnd(scan: Scan): void {
  const cellEnd = /,|\r?\n|$/gu;
  cellEnd.lastIndex = scan.at;
  scan.at = cellEnd.exec(scan.text)?.index ?? scan.text.length;
}

function plainCell(scan: Scan): Cell {
  const start = scan.at;
  skipToCellEnd(scan);
  const text = scan.text.slice(start, scan.at).trimEnd();
  const quote = text.indexOf('"');
  if (quote !== -1) reportQuote(scan, 'csv/stray-quote', start + quote);
  return { text, start, end: start + text.length, textStart: start, quoted: false };
}

function quotedCell(scan: Scan): Cell {
  const start = scan.at;
  const end = closingQuote(scan.text, start);
  if (end === -1) {
    reportQuote(scan, 'csv/unclosed-quote', start);
    scan.at = scan.text.length;
    return { text: scan.text.slice(start + 1), start, end: scan.at, textStart: start + 1, quoted: true };
  }
  scan.at = end + 1;
  skipSpaces(scan);
  const behind = scan.text.charAt(scan.at);
  if (behind !== '' && behind !== ',' && behind !== '\n' && behind !== '\r') {
    reportQuote(scan, 'csv/stray-quote', end);
    skipToCellEnd(scan);
  }
  const inner = scan.text.slice(start + 1, end);
  const textStart = start + 1 + inner.length - inner.trimStart().length;
  return { text: inner.replaceAll('""', '"').trim(), start, end: end + 1, textStart, quoted: true };
}

function closingQuote(text: string, open: number): number {
  let at = text.indexOf('"', open + 1);
  while (at !== -1 && text.charAt(at + 1) === '"') at = text.indexOf('"', at + 2);
  return at;
}

function reportQuote(scan: Scan, code: 'csv/stray-quote' | 'csv/unclosed-quote', at: number): void {
  scan.diagnostics.push(problem(code, { span: { file: scan.file.path, start: at, end: at + 1 } }));
}
