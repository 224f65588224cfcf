// A table of a build as CSV, athlete by athlete. Where all that a table says of an athlete behind the id are the weeks,
// the lines of who has the very same weeks are written anew with another id. Called where tables are written or printed.

import type { BuiltAthlete, BuiltWeek } from '../build/types.ts';
import { csvLines, LINE_END } from '../render/csv/csv.ts';
import type { AthleteTable, TableContext } from '../report/athlete-table.ts';
import type { Row } from '../report/table.ts';
import { mapped } from '../util/lazily.ts';

/**
 * What makes all of an athlete's rows of a table, each with its end. Joined they are one text: put together piece by piece
 * it would keep every piece for as long as it is kept.
 */
export function tableRows(table: AthleteTable, context: TableContext): (built: BuiltAthlete) => string {
  const { columns } = table;
  const whole = (built: BuiltAthlete): string => laidOut([...csvLines(columns, table.rowsOf(built, context))]);
  if (table.isOfWeeks !== true) return whole;

  const known = new WeakMap<readonly BuiltWeek[], readonly string[]>();
  const linesBehindId = (built: BuiltAthlete): readonly string[] => {
    const lines = known.get(built.weeks) ?? [...csvLines(columns.slice(1), behindFirst(table.rowsOf(built, context)))];
    known.set(built.weeks, lines);
    return lines;
  };
  return (built) => {
    // Which weeks are blocked goes by findings, and they are an athlete's own.
    if (built.blocked.size > 0) return whole(built);
    const [id = ''] = csvLines(columns.slice(0, 1), [[built.athlete.id]]);
    return laidOut(linesBehindId(built), `${id},`);
  };
}

const behindFirst = (rows: Iterable<Row>): Iterable<Row> => mapped(rows, (row) => row.slice(1));

/** Lines as one text, each with the same start. */
function laidOut(lines: readonly string[], start = ''): string {
  return lines.length === 0 ? '' : `${start}${lines.join(`${LINE_END}${start}`)}${LINE_END}`;
}
