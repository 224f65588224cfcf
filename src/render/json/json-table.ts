// A table as JSON: an array of objects with the column names as keys, one object a line, made as they are asked for.
// Cells that mean nothing for a row are null, so that every object has every key.

import type { Row, Table } from '../../report/table.ts';

/** The file line by line. */
export function* renderJsonTable(table: Table): Iterable<string> {
  const keys = table.columns.map(({ name }) => `${JSON.stringify(name)}:`);
  let before = '[\n';
  for (const row of table.rows) {
    yield before + objectOf(row, keys);
    before = ',\n';
  }
  yield before === '[\n' ? '[]\n' : '\n]\n';
}

function objectOf(row: Row, keys: readonly string[]): string {
  let members = '';
  for (let index = 0; index < keys.length; index += 1) {
    members += `${index === 0 ? '' : ','}${keys[index] ?? ''}${JSON.stringify(row[index] ?? null)}`;
  }
  return `{${members}}`;
}
