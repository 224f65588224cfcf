// A table that belongs to no format: typed columns and rows that are made as they are asked for, so that a squad of
// thousands is never held whole. Made by the tables beside this file, written out by the renderers.

/**
 * What a column holds. `word`: one of footfall's own words, safe in every format; `text`: anything a plan may say;
 * `date`: YYYY-MM-DD; `integer` and `decimal`: numbers, a decimal with at most two places.
 */
export type ColumnKind = 'word' | 'text' | 'date' | 'integer' | 'decimal';

export interface Column {
  readonly name: string;
  readonly kind: ColumnKind;
}

/** Undefined where nothing applies. */
export type Cell = string | number | undefined;

/** A cell for each column, in their order. */
export type Row = readonly Cell[];

export interface Table {
  readonly name: string;
  readonly columns: readonly Column[];
  readonly rows: Iterable<Row>;
}

/** The columns of one kind in a row, to write lists of columns shortly: `columns('integer', 'sets', 'reps')`. */
export function columns(kind: ColumnKind, ...names: readonly string[]): readonly Column[] {
  return names.map((name) => ({ name, kind }));
}

/** Cells by the names of their columns; what isn't named is empty. */
export type Cells = Readonly<Record<string, Cell>>;

/** A row of cells by name, for tables small enough to afford it. */
export function rowOf(of: readonly Column[], cells: Cells): Row {
  return of.map(({ name }) => cells[name]);
}
