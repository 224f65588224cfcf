// The rows of the record that are about one athlete. Sorted out once and kept with the record, so that a big squad's is
// not walked for everybody.

import type { Span } from '../source/types.ts';
import type { Day } from '../util/days.ts';
import type { DoneRow, SeasonRecord } from './types.ts';
import { groupsByKey } from '../util/grouped.ts';

const indexes = new WeakMap<SeasonRecord, ReadonlyMap<string, readonly DoneRow[]>>();
const NO_ROWS: readonly DoneRow[] = [];

/** In order of day. */
export function doneBy(record: SeasonRecord, athlete: string): readonly DoneRow[] {
  if (record.done.length === 0) return NO_ROWS;
  return (indexes.get(record) ?? indexOf(record)).get(athlete) ?? NO_ROWS;
}

function indexOf(record: SeasonRecord): ReadonlyMap<string, readonly DoneRow[]> {
  const rows = groupsByKey(record.done, ({ athlete }) => athlete);
  indexes.set(record, rows);
  return rows;
}

/** Where a row's pain stands: in itself, or in one beside it that doesn't count. */
export const painPlace = ({ painSpan, span }: DoneRow): Span => painSpan ?? span;

/**
 * The row that says how the last morning on record before a day was: of several rows for it, as of two sessions on one
 * day, the one with the most pain.
 *
 * @param rows in order of their days
 */
export function lastPainBefore(rows: readonly DoneRow[], day: Day): DoneRow | undefined {
  const last = rows.findLast((row) => row.pain !== undefined && row.day < day);
  if (last === undefined) return undefined;
  const same = rows.filter((row) => row.pain !== undefined && row.day === last.day);
  return same.reduce((worst, row) => ((row.pain ?? 0) > (worst.pain ?? 0) ? row : worst), last);
}
