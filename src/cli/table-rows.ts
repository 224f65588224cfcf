// A table of a build as CSV, athlete by athlete. Where all that a table says of an athlete behind the id are the weeks,
// the lines of who has the very same weeks are written anew with another id. Called where tables are written or printed.

import type { BuiltAthlete, BuiltWeek } from '../build/types.ts';
import { csvCell, renderCsv } from '../render/csv/csv.ts';
import type { AthleteTable, TableContext } from '../report/athlete-table.ts';
import { mapped } from '../util/lazily.ts';

/** What makes all of an athlete's rows of a table, each with its end. */
export function tableRows(table: AthleteTable, context: TableContext): (built: BuiltAthlete) => string {
  const { name, columns } = table;
  const whole = (built: BuiltAthlete): string =>
    [...renderCsv({ name, columns, rows: table.rowsOf(built, context) }, false)].join('');
  const [id, ...others] = columns;
  if (table.isOfWeeks !== true || id === undefined) return whole;

  const known = new WeakMap<readonly BuiltWeek[], readonly string[]>();
  const make = (built: BuiltAthlete): readonly string[] => {
    const rows = mapped(table.rowsOf(built, context), (row) => row.slice(1));
    return [...renderCsv({ name, columns: others, rows }, false)];
  };
  return (built) => {
    // Which weeks are blocked goes by findings, and they are an athlete's own.
    if (built.blocked.size > 0) return whole(built);
    const lines = known.get(built.weeks) ?? make(built);
    known.set(built.weeks, lines);
    const first = `${csvCell(built.athlete.id, id)},`;
    return lines.map((line) => first + line).join('');
  };
}
