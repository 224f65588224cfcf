// What a command prints in three formats: lines for people, the same as a table in CSV or JSON for scripts. Called by the
// commands `library`, `rules`, `jump` and `done`.

import { renderCsv } from '../render/csv/csv.ts';
import { renderJsonTable } from '../render/json/json-table.ts';
import type { Table } from '../report/table.ts';
import { lined } from './session.ts';

/** The table for scripts, or the lines that a person reads in its place; only what is asked for is made. */
export function tableOrLines(
  format: 'text' | 'csv' | 'json',
  table: () => Table,
  lines: () => Iterable<string>,
): Iterable<string> {
  switch (format) {
    case 'csv':
      return renderCsv(table());
    case 'json':
      return renderJsonTable(table());
    case 'text':
      return lined(lines());
  }
}
