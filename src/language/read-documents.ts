// A path → everything a plan reads: its documents and the rows of the record files they name. Called by the commands, and
// the only way from files to a plan. Which columns a record file has is known here, how a table is read isn't.

import type { Diagnostic, Staged } from '../diagnostics/types.ts';
import type { FileHost } from '../read/file-host.ts';
import type { Parse } from '../read/known-texts.ts';
import { readPlan } from '../read/read-plan.ts';
import { readTable } from '../read/read-table.ts';
import type { Table, TableColumn } from '../read/read-table.ts';
import type { Documents, ScalarNode } from '../read/types.ts';
import { findEntry } from './nodes.ts';
import { DONE_COLUMNS, TEST_COLUMNS } from './shapes/record.ts';

/** All files of the plan at a path, a file or a folder that has a season.yaml, as the host knows it; `parse` as in `readPlan`. */
export function readDocuments(entryPath: string, host: FileHost, parse?: Parse): Staged<Documents> {
  const read = readPlan(entryPath, host, parse);
  const diagnostics: Diagnostic[] = [...read.diagnostics];
  const rowsOf = (key: 'done' | 'tests', columns: readonly TableColumn[]): Table => {
    const path = recordPath(read.value, key);
    if (path === undefined) return { rows: [] };
    const table = readTable(entryPath, path, columns, host);
    for (const found of table.diagnostics) {
      diagnostics.push(found.code === 'files/missing' ? { help: howToBegin(key, columns), ...found } : found);
    }
    return table.value;
  };
  const done = rowsOf('done', DONE_COLUMNS);
  const tests = rowsOf('tests', TEST_COLUMNS);
  const files = [done.file, tests.file].filter((file) => file !== undefined);
  const value: Documents = {
    ...read.value,
    files: [...read.value.files, ...files],
    record: { done: done.rows, tests: tests.rows },
  };
  return { value, diagnostics };
}

/** How a record file comes to be. */
function howToBegin(key: 'done' | 'tests', columns: readonly TableColumn[]): string {
  const header = columns.map(({ name }) => name).join(',');
  const byHand = `begin it with the line ${header}`;
  return key === 'done' ? `\`footfall done\` makes it when a day is recorded; by hand, ${byHand}` : byHand;
}

/** The path written under `record:`; what isn't a path is left to the decoding. */
export function recordPath({ documents }: Documents, key: 'done' | 'tests'): ScalarNode | undefined {
  for (const { root } of documents) {
    const record = findEntry(root, 'record')?.value;
    const path = record === undefined ? undefined : findEntry(record, key)?.value;
    if (path?.kind === 'scalar' && path.value !== null) return path;
  }
  return undefined;
}
