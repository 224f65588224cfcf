// A file of trials on its own, without a plan → its rows, decoded as those of a plan's record of tests. Called by the
// command `jump`. Athletes and tests aren't bound, as there is no plan to bind them to.

import type { Diagnostic, Staged } from '../diagnostics/types.ts';
import type { FileHost } from '../read/file-host.ts';
import { loadFile, MOST_CSV_BYTES } from '../read/load-file.ts';
import { tableOf } from '../read/read-table.ts';
import type { SourceFile } from '../source/types.ts';
import { decodeItem } from './decode-item.ts';
import { TEST_COLUMNS, testRowShape } from './shapes/record.ts';
import type { TestRowFields } from './shapes/record.ts';

export interface Trials {
  readonly files: readonly SourceFile[];
  readonly rows: readonly TestRowFields[];
}

/** The sound rows of a CSV file with the columns of a record of tests. */
export function readTrials(path: string, host: FileHost): Staged<Trials> {
  const loaded = loadFile({ location: path, path, wanted: path, mostBytes: MOST_CSV_BYTES }, host);
  if (!('file' in loaded)) return { value: { files: [], rows: [] }, diagnostics: [loaded] };
  const { file } = loaded;
  if (!loaded.sound) return { value: { files: [file], rows: [] }, diagnostics: loaded.diagnostics };
  const table = tableOf(file, TEST_COLUMNS);
  const diagnostics: Diagnostic[] = [...loaded.diagnostics, ...table.diagnostics];
  const rows = table.value.rows.flatMap((node, index) => {
    const span = node.entries[0]?.value.span ?? node.span;
    const item = decodeItem(testRowShape, { node, path: `tests[${String(index)}]`, span }, diagnostics);
    return item.kind === 'whole' ? [item.value] : [];
  });
  return { value: { files: [file], rows }, diagnostics };
}
