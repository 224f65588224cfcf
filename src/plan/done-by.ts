// The rows of the record that are about one athlete. Sorted out once and kept with the record, so that a big squad's is
// not walked for everybody.

import type { DoneRow, Record } from './types.ts';

const indexes = new WeakMap<Record, ReadonlyMap<string, readonly DoneRow[]>>();
const NO_ROWS: readonly DoneRow[] = [];

/** In order of day. */
export function doneBy(record: Record, athlete: string): readonly DoneRow[] {
  if (record.done.length === 0) return NO_ROWS;
  return (indexes.get(record) ?? indexOf(record)).get(athlete) ?? NO_ROWS;
}

function indexOf(record: Record): ReadonlyMap<string, readonly DoneRow[]> {
  const rows = new Map<string, DoneRow[]>();
  for (const row of record.done) {
    const mine = rows.get(row.athlete);
    if (mine === undefined) rows.set(row.athlete, [row]);
    else mine.push(row);
  }
  indexes.set(record, rows);
  return rows;
}
