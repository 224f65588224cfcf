// A record file to rows of located cells: each row a map from column to scalar, an empty cell left out, so that later
// stages decode it like any other part of a plan. Called once for each file `record:` names.

import { hasErrors } from '../diagnostics/collector.ts';
import { problem } from '../diagnostics/problem.ts';
import type { Diagnostic, Staged } from '../diagnostics/types.ts';
import type { SourceFile, Span } from '../source/types.ts';
import { nearest } from '../util/did-you-mean.ts';
import { cellNode, cellSpan, csvRows } from './csv-rows.ts';
import type { CsvTable } from './csv-rows.ts';
import type { FileHost } from './file-host.ts';
import { loadFile, MOST_CSV_BYTES } from './load-file.ts';
import { findPlanFolder, findTarget } from './plan-folder.ts';
import { parsePlanPath } from './plan-path.ts';
import type { Cell, CsvRow } from './scan-csv.ts';
import type { MapEntry, MapNode, ScalarNode } from './types.ts';

export interface TableColumn {
  readonly name: string;
  /** `filled`: the column has to be there, with a value in every row; `there`: its cells may be empty. */
  readonly needs: 'filled' | 'there' | 'nothing';
  /** Text written freely: line breaks and commas belong in it. */
  readonly freeText?: boolean;
}

export interface Table {
  /** Absent if there is no such file. */
  readonly file?: SourceFile;
  readonly rows: readonly MapNode[];
}

/** The rows of the file that `path`, a value in the plan, names; none if the file has mistakes. */
export function readTable(
  entryPath: string,
  path: ScalarNode,
  columns: readonly TableColumn[],
  host: FileHost,
): Staged<Table> {
  const folder = findPlanFolder(entryPath, host);
  if (!('kind' in folder)) return nothing(folder);
  const parsed = parsePlanPath(path.text, path.span);
  if (!('kind' in parsed)) return nothing(parsed);
  if (!/\.csv$/iu.test(parsed.path)) {
    const params = { wanted: parsed.path, endings: '.csv', key: 'record:' };
    return nothing(problem('files/wrong-ending', { params, span: path.span }));
  }
  const target = findTarget(folder, parsed, path.span, host);
  if (!('kind' in target)) return nothing(target);
  const wanted = { ...target, wanted: parsed.path, namedAt: path.span, mostBytes: MOST_CSV_BYTES };
  const loaded = loadFile(wanted, host);
  if (!('file' in loaded)) return nothing(loaded);
  if (!loaded.sound) return { value: { file: loaded.file, rows: [] }, diagnostics: loaded.diagnostics };
  return tableOf(loaded.file, columns);
}

const nothing = (diagnostic: Diagnostic): Staged<Table> => ({ value: { rows: [] }, diagnostics: [diagnostic] });

/** The rows of a file that has been loaded. */
export function tableOf(file: SourceFile, columns: readonly TableColumn[]): Staged<Table> {
  const freeText = new Set(columns.filter((column) => column.freeText === true).map(({ name }) => name));
  const { value: table, diagnostics } = csvRows(file, (column) => freeText.has(column));
  if (table === undefined) return { value: { file, rows: [] }, diagnostics };
  const headerProblems = checkHeader(file, table.header, columns);
  const header = asMeant(table.header, columns);
  if (hasErrors(checkHeader(file, header, columns)))
    return { value: { file, rows: [] }, diagnostics: [...diagnostics, ...headerProblems] };
  const missing = missingCells(file, header, columns);
  const rowProblems = table.rows.map((row) => missing(row));
  // A row that lacks what it needs has been reported.
  const rows = table.rows.filter((_, index) => rowProblems[index]?.length === 0);
  return {
    value: { file, rows: nodesOf(file, { header, rows }) },
    diagnostics: [...diagnostics, ...headerProblems, ...rowProblems.flat()],
  };
}

/** Other words for columns. */
const ALSO_CALLED: ReadonlyMap<string, string> = new Map([
  ['rpe', 'effort'],
  ['comment', 'note'],
  ['comments', 'note'],
  ['name', 'athlete'],
]);

/** The known column that a name was meant to be. */
function meantColumn(name: string, known: readonly string[]): string | undefined {
  const other = ALSO_CALLED.get(name.toLowerCase());
  return nearest(name, known) ?? (other !== undefined && known.includes(other) ? other : undefined);
}

/** The header with its misspelt columns under the names that were meant, where those aren't there. */
function asMeant(header: CsvRow, columns: readonly TableColumn[]): CsvRow {
  const known = columns.map(({ name }) => name);
  const there = new Set(header.cells.map(({ text }) => text));
  const cells = header.cells.map((cell) => {
    const meant = known.includes(cell.text) ? undefined : meantColumn(cell.text, known);
    if (meant === undefined || there.has(meant)) return cell;
    there.add(meant);
    return { ...cell, text: meant };
  });
  return { ...header, cells };
}

function checkHeader(file: SourceFile, header: CsvRow, columns: readonly TableColumn[]): readonly Diagnostic[] {
  const known = columns.map(({ name }) => name);
  const found = new Map<string, Cell>();
  const diagnostics: Diagnostic[] = [];
  const misspelt = new Set<string>();
  for (const [index, cell] of header.cells.entries()) {
    const span = cellSpan(file, cell);
    const first = found.get(cell.text);
    if (cell.text === '') {
      diagnostics.push(problem('csv/unnamed-column', { params: { position: index + 1 }, span }));
    } else if (first !== undefined) {
      const related = [{ span: cellSpan(file, first), message: 'the first one is here' }];
      diagnostics.push(problem('csv/duplicate-column', { params: { column: cell.text }, span, related }));
    } else if (!known.includes(cell.text)) {
      const near = meantColumn(cell.text, known);
      if (near !== undefined) misspelt.add(near);
      diagnostics.push(unknownColumn(cell.text, known, near, span));
    }
    found.set(cell.text, cell);
  }
  for (const { name, needs } of columns) {
    // A misspelt column is there, under another name: one report is enough.
    if (needs === 'nothing' || found.has(name) || misspelt.has(name)) continue;
    const params = { column: name, columns: header.cells.map(({ text }) => text).join(', ') };
    diagnostics.push(problem('csv/missing-column', { params, span: cellSpan(file, header) }));
  }
  return diagnostics;
}

function unknownColumn(column: string, known: readonly string[], near: string | undefined, span: Span): Diagnostic {
  const help = near === undefined ? 'delete the column, or put what it says into note' : `did you mean "${near}"?`;
  return problem('csv/unknown-column', { params: { column, columns: known.join(', ') }, span, help });
}

function missingCells(
  file: SourceFile,
  header: CsvRow,
  columns: readonly TableColumn[],
): (row: CsvRow) => readonly Diagnostic[] {
  const needed = columns.filter(({ needs }) => needs === 'filled').map(({ name }) => name);
  const positions = needed.map((name) => [name, header.cells.findIndex(({ text }) => text === name)] as const);
  return (row) =>
    positions.flatMap(([column, index]) => {
      const cell = row.cells[index];
      if (cell?.text !== '') return [];
      return [problem('csv/missing-cell', { params: { column }, span: cellSpan(file, cell) })];
    });
}

function nodesOf(file: SourceFile, { header, rows }: CsvTable): readonly MapNode[] {
  const keys = header.cells.map((cell) => ({ key: cell.text, keySpan: cellSpan(file, cell) }));
  return rows.map((row) => {
    const entries: MapEntry[] = [];
    for (const [index, cell] of row.cells.entries()) {
      const key = keys[index];
      if (key !== undefined && cell.text !== '') entries.push({ ...key, value: cellNode(file, cell) });
    }
    return { kind: 'map', span: cellSpan(file, row), entries };
  });
}
