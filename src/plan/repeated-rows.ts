// Rows of a record that say the same as another: a file pasted or merged twice. They would raise what somebody is used to,
// so they count once, and it is told. Called by resolve-record.ts.

import { problem } from '../diagnostics/problem.ts';
import { isoDate, weekdayOf } from '../util/days.ts';
import type { Day } from '../util/days.ts';
import type { Scope } from './scope.ts';
import type { DoneRow, TestRow } from './types.ts';

/** Without those that there is no room for: one of each, and of sessions and practice as many as the day has. */
export function withoutRepeats<T extends DoneRow | TestRow>(scope: Scope, rows: readonly T[]): readonly T[] {
  const seen = new Map<string, { readonly first: T; count: number }>();
  return rows.filter((row) => {
    const { span, ...said } = row;
    const key = JSON.stringify(said);
    const same = seen.get(key);
    if (same === undefined) {
      seen.set(key, { first: row, count: 1 });
      return true;
    }
    same.count += 1;
    if (same.count <= roomOn(scope, row)) return true;
    const related = [{ span: same.first.span, message: 'the other is here' }];
    scope.report(
      problem('plan/row-twice', {
        params: { athlete: row.athlete, date: isoDate(row.day) },
        span,
        athlete: row.athlete,
        related,
      }),
    );
    return false;
  });
}

/** Whomever a slot or a practice is for: who has less is held by the other rules of the record. */
function roomOn({ authored }: Scope, row: DoneRow | TestRow): number {
  if (!('kind' in row)) return 1;
  if (row.kind === 'session') return held(authored.slots, row.day);
  return row.kind === 'practice' ? held(authored.practice, row.day) : 1;
}

const held = (items: Scope['authored']['slots'] | Scope['authored']['practice'], day: Day): number =>
  items.filter(({ value }) => value.day === weekdayOf(day)).length;
