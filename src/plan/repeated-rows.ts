// Rows of a record that say the same as another: a file pasted or merged twice. They would raise what somebody is used to,
// so they count once, and it is told. Called by resolve-record.ts.

import { problem } from '../diagnostics/problem.ts';
import { isoDate, weekdayOf } from '../util/days.ts';
import type { Day } from '../util/days.ts';
import type { Scope } from './scope.ts';
import type { DoneRow, TestRow } from './types.ts';
import { addTo } from '../util/grouped.ts';

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

/**
 * Without sessions beyond the slots of their day, where no note tells them apart: one that was typed in anew with another
 * number stands beside the first, and which of them is the slip nobody knows. Those with the fewest contacts count, as the
 * weeks behind are built on them, and the worst pain of all; what may have been done instead stays with them, for the week
 * under way. Rows that bring no contacts stay.
 */
export function withoutSurplus(scope: Scope, rows: readonly DoneRow[]): readonly DoneRow[] {
  const sameDay = new Map<string, DoneRow[]>();
  for (const row of rows) {
    if (row.kind !== 'session' || row.contacts === undefined || row.contacts === 0) continue;
    addTo(sameDay, JSON.stringify([row.athlete, row.day, row.note]), row);
  }
  const changed = new Map<DoneRow, DoneRow | undefined>();
  for (const group of sameDay.values()) keepFewest(scope, group, changed);
  return changed.size === 0 ? rows : rows.flatMap((row) => (changed.has(row) ? (changed.get(row) ?? []) : row));
}

/** Of the sessions of one day; says what becomes of each row where there are too many. */
function keepFewest(scope: Scope, group: readonly DoneRow[], changed: Map<DoneRow, DoneRow | undefined>): void {
  const [first] = group;
  if (first === undefined || group.length === 1) return;
  const room = Math.max(1, roomOn(scope, first));
  const rising = group.toSorted((a, b) => (a.contacts ?? 0) - (b.contacts ?? 0));
  const [fewest] = rising;
  if (group.length <= room || fewest === undefined) return;
  const worst = worstPain(rising);
  const largest = rising.slice(-room);
  rising.slice(0, room).forEach((row, index) => {
    const { contacts = 0, span } = largest[index] ?? row;
    changed.set(row, { ...row, ...(row === fewest ? worst : {}), mayBe: { contacts, span } });
  });
  for (const row of rising.slice(room)) {
    changed.set(row, undefined);
    const params = { athlete: row.athlete, date: isoDate(row.day), sessions: group.length, room };
    const related = [{ span: fewest.span, message: 'this one counts' }];
    scope.report(problem('plan/sessions-over-slots', { params, span: row.span, athlete: row.athlete, related }));
  }
}

/** Of equal ones that of the fewest contacts, which counts. */
function worstPain(rising: readonly DoneRow[]): Pick<DoneRow, 'pain' | 'painSpan'> {
  const [first] = rising.toSorted((a, b) => (b.pain ?? -1) - (a.pain ?? -1));
  if (first?.pain === undefined) return {};
  return first === rising[0] ? { pain: first.pain } : { pain: first.pain, painSpan: first.span };
}

/** Whomever a slot or a practice is for: who has less is held by the other rules of the record. */
function roomOn({ authored }: Scope, row: DoneRow | TestRow): number {
  if (!('kind' in row)) return 1;
  if (row.kind === 'session') return held(authored.slots, row.day);
  return row.kind === 'practice' ? held(authored.practice, row.day) : 1;
}

const held = (items: Scope['authored']['slots'] | Scope['authored']['practice'], day: Day): number =>
  items.filter(({ value }) => value.day === weekdayOf(day)).length;
