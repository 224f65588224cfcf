// A jump session to come of a week under way that stands nearer to one that was done on a day without a sheet than two may
// stand. The days were chosen without knowing of it, and where else the session could go only the coach knows, so it is
// told and stays. Called by running-week.ts.

import { problem } from '../diagnostics/problem.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import { weekFrom } from '../plan/applies.ts';
import { getRuleValue } from '../plan/rule-book.ts';
import type { RuleBook } from '../plan/rule-book.ts';
import type { Athlete, DoneRow } from '../plan/types.ts';
import { isoDate } from '../util/days.ts';
import type { Day } from '../util/days.ts';
import type { DaysWeek } from './types.ts';

/** What is known of the week under way. */
export interface UnderWayWeek {
  readonly starts: Day;
  /** Sessions of an athlete that are on record for its days so far. */
  readonly rows: readonly DoneRow[];
  /** The sessions to come stand behind so many days. */
  readonly asOf: Day;
  readonly days: DaysWeek;
}

/** One for the first session to come that stands too near to the last that was done, unless `session-spacing` is waived. */
export function nearDone(
  athlete: Athlete,
  book: RuleBook,
  { starts, rows, asOf, days: { sessions } }: UnderWayWeek,
): readonly Diagnostic[] {
  const range = weekFrom(starts);
  const jumps = sessions.filter(({ contacts }) => contacts > 0);
  const last = rows.findLast(({ contacts }) => contacts !== 0);
  const next = jumps.find(({ day }) => day >= asOf);
  if (last === undefined || next === undefined || book.waiver('session-spacing', range) !== undefined) return [];
  const apart = getRuleValue(book, 'session-spacing', 'apart', range);
  const days = next.day - last.day;
  if (days >= apart || jumps.some(({ day }) => day === last.day)) return [];
  const params = { athlete: athlete.name, next: isoDate(next.day), done: isoDate(last.day), days, apart };
  return [problem('schedule/near-done', { params, span: last.span, athlete: athlete.id, week: starts })];
}
