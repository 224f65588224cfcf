// A table of a build as CSV, athlete by athlete. Where all that a table says of an athlete behind the id are the weeks,
// the lines of who has the very same weeks are written anew with another id. Called where tables are written or printed.

import type { BuiltAthlete, BuiltWeek } from '../build/types.ts';
import type { LateBytes } from '../host/growing-files.ts';
import { cellsEncoder, csvCell, csvLine, renderCsv } from '../render/csv/csv.ts';
import type { AthleteTable, TableContext } from '../report/athlete-table.ts';
import { mapped } from '../util/lazily.ts';
import { linesBehind, repeatedLines } from './repeated-lines.ts';

/** What makes all of an athlete's rows of a table, each with its end. */
export function tableRows(table: AthleteTable, context: TableContext): (built: BuiltAthlete) => string {
  return rowsBehindId(table, context, (lines) => (first) => linesBehind(first, lines));
}

/** The same for a file: what several athletes have is written over what the last of them had. */
export function tablePieces(table: AthleteTable, context: TableContext): (built: BuiltAthlete) => string | LateBytes {
  return rowsBehindId(table, context, repeatedLines);
}

/** `behind` gives the lines, whose first cell is left out, with the one it is given: once for all who have the very same. */
function rowsBehindId<T>(
  table: AthleteTable,
  context: TableContext,
  behind: (lines: readonly string[]) => (first: string) => T,
): (built: BuiltAthlete) => T | string {
  const { name, columns } = table;
  const [id] = columns;
  if (table.isOfWeeks !== true || id === undefined)
    return (built) => [...renderCsv({ name, columns, rows: table.rowsOf(built, context) }, false)].join('');

  const known = new WeakMap<readonly BuiltWeek[], (first: string) => T>();
  const make = withoutId(table, context);
  return (built) => {
    const first = `${csvCell(built.athlete.id, id)},`;
    // Which weeks are blocked goes by findings, and they are an athlete's own.
    if (built.blocked.size > 0) return behind(make(built))(first);
    const rowsOf = known.get(built.weeks) ?? behind(make(built));
    known.set(built.weeks, rowsOf);
    return rowsOf(first);
  };
}

/** What makes the rows without their first cell. */
function withoutId(table: AthleteTable, context: TableContext): (built: BuiltAthlete) => readonly string[] {
  const { name, columns, rowsOf } = table;
  const encodedRows = table.encodedRows?.(cellsEncoder(columns));
  if (encodedRows !== undefined)
    return (built) => Array.from(encodedRows(built, context), ({ own, others }) => csvLine(own, others));
  return (built) => {
    const rows = mapped(rowsOf(built, context), (row) => row.slice(1));
    return [...renderCsv({ name, columns: columns.slice(1), rows }, false)];
  };
}
