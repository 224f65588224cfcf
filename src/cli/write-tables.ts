// The tables of a build as CSV into one folder, all in one walk: for who wants the numbers of a big squad and no pages.
// An athlete is compiled, written and forgotten; what a watch has kept is written as it was. Called by build-once.ts and
// build-kept.ts; write-build.ts writes its tables the same way.

import type { BuiltAthlete } from '../build/types.ts';
import { lastingBytes } from '../host/growing-files.ts';
import type { Piece } from '../host/growing-files.ts';
import type { OutputFolder } from '../host/output-folder.ts';
import type { Progress } from '../host/progress.ts';
import { renderCsv } from '../render/csv/csv.ts';
import type { AthleteTable, TableContext } from '../report/athlete-table.ts';
import { TABLE_NAMES } from '../report/table-names.ts';
import type { TableName } from '../report/table-names.ts';
import { TABLES } from '../report/tables.ts';
import { tablePieces } from './table-rows.ts';

/** An athlete's rows of each table, as they stand in its file. */
export type AthleteRows = Readonly<Record<TableName, Piece>>;

/** The same as bytes that stay, for who writes them more than once. */
export type KeptRows = Readonly<Record<TableName, Uint8Array>>;

export interface TablesToWrite {
  /** Of those who are asked for, to be walked once. */
  readonly rows: Iterable<AthleteRows>;
  /** How many athletes the plan has. */
  readonly athletes: number;
  /** Whether the files begin with the names of their columns; not so where they go on from others. */
  readonly headed: boolean;
  readonly progress: Progress;
  /** Waited for after every athlete. */
  readonly breathe?: () => Promise<void>;
}

/** Writes every table. */
export async function writeTables(folder: OutputFolder, job: TablesToWrite): Promise<void> {
  const { rows, athletes, headed, progress, breathe } = job;
  for (const name of TABLE_NAMES) beginTable(folder, TABLES[name], headed);
  let done = 0;
  for (const one of rows) {
    for (const name of TABLE_NAMES) folder.append(pathOf(name), one[name]);
    done += 1;
    progress.tell(done, athletes);
    await breathe?.();
  }
}

/** What makes an athlete's rows of every table. */
export function createRows(context: TableContext): (built: BuiltAthlete) => AthleteRows {
  const season = tablePieces(TABLES.season, context);
  const weeks = tablePieces(TABLES.weeks, context);
  const sessions = tablePieces(TABLES.sessions, context);
  const lines = tablePieces(TABLES.lines, context);
  return (built) => ({ season: season(built), weeks: weeks(built), sessions: sessions(built), lines: lines(built) });
}

/** What makes an athlete's rows of every table for who keeps them. */
export function createKeptRows(context: TableContext): (built: BuiltAthlete) => KeptRows {
  const rowsOf = createRows(context);
  return (built) => {
    const { season, weeks, sessions, lines } = rowsOf(built);
    return {
      season: lastingBytes(season),
      weeks: lastingBytes(weeks),
      sessions: lastingBytes(sessions),
      lines: lastingBytes(lines),
    };
  };
}

/** Begins one table's file, and gives what adds an athlete's rows to it. */
export function tableWriter(
  folder: OutputFolder,
  context: TableContext,
  table: AthleteTable,
): (built: BuiltAthlete) => void {
  const rowsOf = tablePieces(table, context);
  beginTable(folder, table, true);
  return (built) => {
    folder.append(pathOf(table.name), rowsOf(built));
  };
}

const pathOf = (table: string): string => `${table}.csv`;

function beginTable(folder: OutputFolder, { name, columns }: AthleteTable, headed: boolean): void {
  for (const line of renderCsv({ name, columns, rows: [] }, headed)) folder.append(pathOf(name), line);
}
