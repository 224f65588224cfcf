// A table that takes its rows from one compiled athlete after the other, and how such a table is drawn from a build.
// Every table of `footfall build` is one of these, so that all of them can be written in a single walk.

import type { Build, BuiltAthlete } from '../build/types.ts';
import type { Plan } from '../plan/types.ts';
import type { Selection } from './selection.ts';
import { selectsAthlete } from './selection.ts';
import type { Column, Row, Table } from './table.ts';

export interface TableContext {
  readonly plan: Plan;
  readonly selection: Selection;
}

export interface AthleteTable {
  readonly name: string;
  readonly columns: readonly Column[];
  /** Rows begin with the athlete's id, and all behind it is read from the weeks: who has the same weeks has the same rows. */
  readonly isOfWeeks?: true;
  readonly rowsOf: (built: BuiltAthlete, context: TableContext) => Iterable<Row>;
  /**
   * The same rows without the id, for who makes text of them: cells that stand in many rows are made text once. Only of
   * rows that are read from the weeks.
   */
  readonly encodedRows?: (encode: EncodeCells) => (built: BuiltAthlete, context: TableContext) => Iterable<EncodedRow>;
}

/** Makes text of the cells of a row that begin with the column of that number, from 0. */
export type EncodeCells = (cells: Row, from: number) => string;

/** A row behind its id: cells of its own, then text of the others. */
export interface EncodedRow {
  readonly own: string;
  readonly others: string;
}

/** What a table is drawn from. */
type Drawn = Pick<Build, 'plan' | 'athletes'>;

/** The rows of everybody who is selected, athlete by athlete in the order of the build. */
export function drawTable(table: AthleteTable, build: Drawn, selection: Selection): Table {
  return { name: table.name, columns: table.columns, rows: rowsOf(table, build, selection) };
}

function* rowsOf(table: AthleteTable, build: Drawn, selection: Selection): Iterable<Row> {
  const context = { plan: build.plan, selection };
  for (const built of build.athletes) {
    if (selectsAthlete(selection, built.athlete)) yield* table.rowsOf(built, context);
  }
}
