// The tables of a build as CSV into one folder, all in one walk: for who wants the numbers of a big squad and no pages.
// An athlete is compiled, written and forgotten. Called by build-once.ts; write-build.ts writes its tables the same way.

import type { Build, BuiltAthlete } from '../build/types.ts';
import type { OutputFolder } from '../host/output-folder.ts';
import type { Progress } from '../host/progress.ts';
import { renderCsv } from '../render/csv/csv.ts';
import type { AthleteTable } from '../report/athlete-table.ts';
import type { Selection } from '../report/selection.ts';
import { TABLE_NAMES } from '../report/table-names.ts';
import type { Row } from '../report/table.ts';
import { TABLES } from '../report/tables.ts';

export interface TablesToWrite {
  /** Only those who are asked for, to be walked once. */
  readonly build: Build;
  readonly selection: Selection;
  /** Whether the files begin with the names of their columns; not so where they go on from others. */
  readonly headed: boolean;
  readonly progress: Progress;
  /** Waited for after every athlete. */
  readonly breathe?: () => Promise<void>;
}

/** Writes every table. */
export async function writeTables(folder: OutputFolder, job: TablesToWrite): Promise<void> {
  const { build, progress, breathe } = job;
  const adds = TABLE_NAMES.map((name) => tableWriter(folder, job, TABLES[name]));
  let done = 0;
  for (const built of build.athletes) {
    for (const add of adds) add(built);
    done += 1;
    progress.tell(done, build.plan.athletes.length);
    await breathe?.();
  }
}

/** Begins one table's file, and gives what adds an athlete's rows to it. */
export function tableWriter(
  folder: OutputFolder,
  { build, selection, headed = true }: Pick<TablesToWrite, 'build' | 'selection'> & { readonly headed?: boolean },
  table: AthleteTable,
): (built: BuiltAthlete) => void {
  const context = { plan: build.plan, selection };
  const path = `${table.name}.csv`;
  const append = (rows: Iterable<Row>, withNames: boolean): void => {
    const { name, columns } = table;
    for (const line of renderCsv({ name, columns, rows }, withNames)) folder.append(path, line);
  };
  append([], headed);
  return (built) => {
    append(table.rowsOf(built, context), false);
  };
}
