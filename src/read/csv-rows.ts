// A CSV file to its header and its rows, each row as long as the header. Called for rosters and for record files.
// Separators, quotes, decimal commas and lengths are judged here; what a cell means is none of it. Of a file with such
// mistakes no row is used, so that they bring no others with them.

import { hasErrors } from '../diagnostics/collector.ts';
import { problem } from '../diagnostics/problem.ts';
import type { Diagnostic, Staged } from '../diagnostics/types.ts';
import type { SourceFile, Span } from '../source/types.ts';
import { coreValue } from './core-schema.ts';
import { hasHidden, withoutControls, withoutHidden } from './hidden-characters.ts';
import { scanCsv } from './scan-csv.ts';
import type { Cell, CsvRow } from './scan-csv.ts';
import type { ScalarNode } from './types.ts';

export interface CsvTable {
  readonly header: CsvRow;
  readonly rows: readonly CsvRow[];
}

/** Mistakes in one file that are shown. */
const MOST_MISTAKES = 100;

/**
 * Header and rows of a file, or undefined if it can't be read as a table. `isFreeText` says of a column, by its name,
 * whether line breaks and commas belong in it.
 */
export function csvRows(file: SourceFile, isFreeText: (column: string) => boolean): Staged<CsvTable | undefined> {
  const { text, diagnostics: unclean } = cleanText(file);
  const diagnostics = [...unclean];
  const separator = otherSeparator(file, text);
  if (separator !== undefined) return { value: undefined, diagnostics: [...diagnostics, separator] };
  const scanned = scanCsv(file, text, diagnostics);
  const { value: header } = scanned.next();
  if (header === undefined) {
    const params = { what: 'its first line has to name the columns' };
    const empty = problem('source/empty', { params, span: { file: file.path, start: 0, end: 0 } });
    return { value: undefined, diagnostics: [...diagnostics, empty] };
  }
  const rows: CsvRow[] = [];
  let problemsBefore = diagnostics.length;
  for (const row of scanned) {
    // A row with a quote in the wrong place has been reported, and its cells are not where they should be.
    if (diagnostics.length === problemsBefore) checkRow(file, header, row, isFreeText, diagnostics);
    problemsBefore = diagnostics.length;
    rows.push(row);
    if (diagnostics.length >= MOST_MISTAKES) break;
  }
  return { value: hasErrors(diagnostics) ? undefined : { header, rows }, diagnostics };
}

function cleanText(file: SourceFile): { readonly text: string; readonly diagnostics: readonly Diagnostic[] } {
  const sound = withoutControls(file);
  if (!hasHidden(sound.text)) return sound;
  const clean = withoutHidden(file, sound.text, unquotedCells(file, sound.text));
  return { text: clean.text, diagnostics: [...sound.diagnostics, ...clean.diagnostics] };
}

function* unquotedCells(file: SourceFile, text: string): Generator<Cell> {
  for (const { cells } of scanCsv(file, text, [])) yield* cells.filter(({ quoted }) => !quoted);
}

/** A first line without a comma and with another mark between its words. */
function otherSeparator(file: SourceFile, text: string): Diagnostic | undefined {
  const start = /[^\r\n]/u.exec(text)?.index ?? 0;
  const [line = ''] = text.slice(start, start + 10_000).split(/[\r\n]/u, 1);
  if (line.includes(',')) return undefined;
  const at = line.search(/[;\t|]/u);
  if (at === -1) return undefined;
  const found = line[at] === ';' ? 'semicolons' : line[at] === '\t' ? 'tabs' : 'upright bars';
  const span = { file: file.path, start: start + at, end: start + at + 1 };
  return problem('csv/separator', { params: { found }, span });
}

function checkRow(
  file: SourceFile,
  header: CsvRow,
  row: CsvRow,
  isFreeText: (column: string) => boolean,
  diagnostics: Diagnostic[],
): void {
  const found = row.cells.length;
  const wanted = header.cells.length;
  if (found !== wanted) {
    const broken = brokenNumbers(file, row);
    if (broken.length === found - wanted) diagnostics.push(...broken);
    else diagnostics.push(cellCount(file, row, found, wanted));
    return;
  }
  for (const [index, cell] of row.cells.entries()) {
    const column = header.cells[index]?.text ?? '';
    if (!cell.quoted || isFreeText(column)) continue;
    if (cell.text.includes('\n')) {
      diagnostics.push(problem('csv/line-break', { params: { column }, span: cellSpan(file, cell) }));
    } else if (DECIMAL_COMMA.test(cell.text)) {
      diagnostics.push(decimalCommaProblem(cell.text, cellSpan(file, cell)));
    }
  }
}

/** Where a cell stands in its file. */
export const cellSpan = (file: SourceFile, { start, end }: { readonly start: number; readonly end: number }): Span => ({
  file: file.path,
  start,
  end,
});

const cellCount = (file: SourceFile, row: CsvRow, found: number, wanted: number): Diagnostic =>
  problem('csv/cell-count', { params: { found, wanted }, span: cellSpan(file, row) });

const DECIMAL_COMMA = /^[-+]?[0-9]+,[0-9]+(?:\s*[A-Za-z%]+)?$/u;

/** Cells that look like the halves of one number; none if three or more in a row could be. */
function brokenNumbers(file: SourceFile, { cells }: CsvRow): readonly Diagnostic[] {
  const found: Diagnostic[] = [];
  let lastEnd = -1;
  for (const [index, cell] of cells.entries()) {
    const next = cells[index + 1];
    if (next === undefined || cell.quoted || next.start !== cell.end + 1) continue;
    const number = `${cell.text},${next.text}`;
    if (!DECIMAL_COMMA.test(number)) continue;
    if (cell.end === lastEnd) return [];
    lastEnd = next.end;
    found.push(decimalCommaProblem(number, cellSpan(file, { start: cell.start, end: next.end })));
  }
  return found;
}

function decimalCommaProblem(found: string, span: Span): Diagnostic {
  const point = found.replace(',', '.');
  const thousands = /,[0-9]{3}(?![0-9])/u.test(found);
  const wanted = thousands ? `${found.replace(',', '')}, or ${point} if the comma is not for thousands` : point;
  return problem('csv/decimal-comma', { params: { found, wanted }, span });
}

/** A cell as a scalar of the language; quotes around a cell say nothing about its value. */
export const cellNode = (file: SourceFile, cell: Cell): ScalarNode => ({
  kind: 'scalar',
  span: cellSpan(file, cell),
  text: cell.text,
  value: coreValue(cell.text),
  quoted: false,
});
