// A roster in CSV to the shape a YAML file of the same athletes has: `athletes`, then one entry for each row under its
// `id`. Column names are the athlete's fields; a dot goes one level down, as in `lifts.back-squat.max`. Empty cells are
// left out, so that a squad's defaults hold.

import { hasErrors } from '../diagnostics/collector.ts';
import { problem } from '../diagnostics/problem.ts';
import type { Diagnostic, Staged } from '../diagnostics/types.ts';
import type { SourceFile, Span } from '../source/types.ts';
import { coreValue } from './core-schema.ts';
import { cellNode, cellSpan, csvRows } from './csv-rows.ts';
import type { CsvTable } from './csv-rows.ts';
import type { Cell, CsvRow } from './scan-csv.ts';
import type { MapEntry, MapNode, Node } from './types.ts';

/** The column each athlete is found by. */
const ID_COLUMN = 'id';
/** Columns whose cells hold several words, separated by spaces or semicolons. */
const LIST_COLUMNS: ReadonlySet<string> = new Set(['cleared']);
/** Columns of free text, where a comma between digits is no mistake. */
const FREE_TEXT_COLUMNS: ReadonlySet<string> = new Set(['name', 'note']);

interface Leaf {
  readonly kind: 'cell';
  readonly key: string;
  readonly keySpan: Span;
  readonly index: number;
  readonly isList: boolean;
}

interface Group {
  readonly kind: 'group';
  readonly key: string;
  readonly keySpan: Span;
  readonly children: Map<string, Column>;
}

type Column = Leaf | Group;

/** The root of the document a roster stands for; undefined if the file has mistakes. */
export function rosterRoot(file: SourceFile): Staged<MapNode | undefined> {
  const { value: table, diagnostics } = csvRows(file, (column) => FREE_TEXT_COLUMNS.has(column));
  if (table === undefined) return { value: undefined, diagnostics };
  const columns = readHeader(file, table.header);
  if (hasErrors(columns.diagnostics))
    return { value: undefined, diagnostics: [...diagnostics, ...columns.diagnostics] };
  const athletes = readAthletes(file, table, columns.value);
  const all = [...diagnostics, ...columns.diagnostics, ...athletes.diagnostics];
  return { value: hasErrors(all) ? undefined : wrapped(file, table.header, athletes.value), diagnostics: all };
}

function wrapped(file: SourceFile, header: CsvRow, entries: readonly MapEntry[]): MapNode {
  const span = { file: file.path, start: 0, end: file.text.length };
  const keySpan = cellSpan(file, header.cells[0] ?? header);
  return { kind: 'map', span, entries: [{ key: 'athletes', keySpan, value: { kind: 'map', span, entries } }] };
}

interface Columns {
  readonly id: number;
  readonly children: ReadonlyMap<string, Column>;
}

function readHeader(file: SourceFile, header: CsvRow): Staged<Columns> {
  const diagnostics: Diagnostic[] = [];
  const children = new Map<string, Column>();
  const id = header.cells.findIndex(({ text }) => text === ID_COLUMN);
  if (id === -1) {
    const params = { column: ID_COLUMN, columns: header.cells.map(({ text }) => text).join(', ') };
    diagnostics.push(problem('csv/missing-column', { params, span: cellSpan(file, header) }));
  }
  for (const [index, cell] of header.cells.entries()) {
    if (index === id) continue;
    const found = placeColumn(file, cell, index, children);
    if (found !== undefined) diagnostics.push(found);
  }
  return { value: { id, children }, diagnostics };
}

/** Puts a column into its group, making the groups its dots ask for. */
function placeColumn(file: SourceFile, cell: Cell, index: number, root: Map<string, Column>): Diagnostic | undefined {
  const parts = cell.text.split('.');
  const span = cellSpan(file, cell);
  if (parts.includes('')) return problem('csv/unnamed-column', { params: { position: index + 1 }, span });
  let level = root;
  let start = cell.textStart;
  for (const [depth, key] of parts.entries()) {
    const keySpan = { file: file.path, start, end: Math.min(start + key.length, cell.end) };
    start += key.length + 1;
    const there = level.get(key);
    if (depth === parts.length - 1) {
      if (there !== undefined || (level === root && key === ID_COLUMN)) return clash(file, cell, there, keySpan);
      level.set(key, { kind: 'cell', key, keySpan, index, isList: LIST_COLUMNS.has(cell.text) });
    } else if (there === undefined) {
      const group: Group = { kind: 'group', key, keySpan, children: new Map() };
      level.set(key, group);
      level = group.children;
    } else if (there.kind === 'group') {
      level = there.children;
    } else {
      return clash(file, cell, there, keySpan);
    }
  }
  return undefined;
}

function clash(file: SourceFile, cell: Cell, there: Column | undefined, keySpan: Span): Diagnostic {
  const span = cellSpan(file, cell);
  const related = there === undefined ? [] : [{ span: there.keySpan, message: 'the first one is here' }];
  const isSame = there === undefined || (there.kind === 'cell' && keySpan.end === span.end);
  if (isSame) return problem('csv/duplicate-column', { params: { column: cell.text }, span, related });
  return problem('csv/column-clash', { params: { column: cell.text, other: there.key }, span, related });
}

function readAthletes(file: SourceFile, { rows }: CsvTable, columns: Columns): Staged<readonly MapEntry[]> {
  const diagnostics: Diagnostic[] = [];
  const seen = new Map<string, Span>();
  const entries: MapEntry[] = [];
  for (const row of rows) {
    const id = row.cells[columns.id];
    if (id === undefined) continue;
    const keySpan = cellSpan(file, id);
    const first = seen.get(id.text);
    if (id.text === '') {
      diagnostics.push(problem('csv/missing-cell', { params: { column: ID_COLUMN }, span: keySpan }));
    } else if (first !== undefined) {
      const related = [{ span: first, message: 'the first one is here' }];
      diagnostics.push(problem('csv/duplicate-id', { params: { id: id.text }, span: keySpan, related }));
    } else {
      seen.set(id.text, keySpan);
      const value: MapNode = { kind: 'map', span: cellSpan(file, row), entries: fieldsOf(file, row, columns.children) };
      entries.push({ key: id.text, keySpan, value });
    }
  }
  return { value: entries, diagnostics };
}

/** The fields of one row, in the order of the columns; a group without any filled cell is left out. */
function fieldsOf(file: SourceFile, row: CsvRow, columns: ReadonlyMap<string, Column>): readonly MapEntry[] {
  const entries: MapEntry[] = [];
  for (const column of columns.values()) {
    const value = column.kind === 'cell' ? cellValue(file, row, column) : groupValue(file, row, column);
    if (value !== undefined) entries.push({ key: column.key, keySpan: column.keySpan, value });
  }
  return entries;
}

function groupValue(file: SourceFile, row: CsvRow, group: Group): Node | undefined {
  const entries = fieldsOf(file, row, group.children);
  const first = entries[0]?.value.span;
  if (first === undefined) return undefined;
  const spans = entries.map(({ value }) => value.span);
  const start = Math.min(...spans.map((span) => span.start));
  const end = Math.max(...spans.map((span) => span.end));
  return { kind: 'map', span: { file: file.path, start, end }, entries };
}

function cellValue(file: SourceFile, row: CsvRow, column: Leaf): Node | undefined {
  const cell = row.cells[column.index];
  if (cell === undefined || cell.text === '') return undefined;
  return column.isList ? wordsOf(file, cell) : cellNode(file, cell);
}

function wordsOf(file: SourceFile, cell: Cell): Node {
  const items = Array.from(cell.text.matchAll(/[^;\s]+/gu), ({ 0: text, index }): Node => {
    const start = cell.textStart + index;
    const span = { file: file.path, start, end: Math.min(start + text.length, cell.end) };
    return { kind: 'scalar', span, text, value: coreValue(text), quoted: false };
  });
  return { kind: 'sequence', span: cellSpan(file, cell), items };
}
