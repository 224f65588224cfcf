// The days that an item names: put together from its keys, held against each other and against the season. Called by every
// file that resolves items with days.

import { at } from '../language/authored.ts';
import type { Located } from '../language/authored.ts';
import { problem } from '../diagnostics/problem.ts';
import { isoDate, startOfWeek } from '../util/days.ts';
import type { Day } from '../util/days.ts';
import { inWords } from '../util/in-words.ts';
import { overlap, weekFrom } from './applies.ts';
import type { Scope } from './scope.ts';
import type { DayRange } from './types.ts';

export interface RangeKeys {
  readonly from?: Day | undefined;
  readonly until?: Day | undefined;
  readonly week?: Day | undefined;
  readonly date?: Day | undefined;
}

/** The days an item names, up to the ends of the season (or of `frame`) where it leaves one out; undefined when they contradict. */
export function rangeOf(
  scope: Scope,
  item: Located,
  keys: RangeKeys,
  frame: DayRange = scope.frame,
): DayRange | undefined {
  const { week, date } = keys;
  const ways = [
    week !== undefined && 'week',
    date !== undefined && 'date',
    keys.from !== undefined && 'from',
    keys.until !== undefined && 'until',
  ];
  const written = ways.filter((way) => way !== false);
  if (written.length > 1 && (week !== undefined || date !== undefined)) {
    scope.report(
      problem('plan/two-times', { ...at(item, written[1] ?? ''), params: { ways: inWords(written, 'and') } }),
    );
    return undefined;
  }
  if (date !== undefined) return { from: date, until: date };
  if (week !== undefined) return weekOf(scope, week);
  return orderedRange(scope, item, { from: keys.from ?? frame.from, until: keys.until ?? frame.until }, keys);
}

/** First to last day of the plan's week that holds a day. */
export function weekOf(scope: Pick<Scope, 'weekStarts'>, day: Day): DayRange {
  const from = startOfWeek(day, scope.weekStarts);
  return weekFrom(from);
}

/** The range, or undefined with a report when both ends are written and the end is the earlier. */
export function orderedRange(scope: Scope, item: Located, range: DayRange, keys: RangeKeys): DayRange | undefined {
  if (range.from <= range.until) return range;
  if (keys.from === undefined || keys.until === undefined)
    return reportNever(scope, item, keys.from === undefined ? 'until' : 'from');
  reportEndBeforeStart(scope, item, { start: 'from', end: 'until' }, range);
  return undefined;
}

/** Reports an end that lies before its start, at the end, with the start beside it. `keys` are as the item has them. */
export function reportEndBeforeStart(
  scope: Pick<Scope, 'report'>,
  item: Located,
  keys: { readonly start: string; readonly end: string },
  { from, until }: DayRange,
): void {
  const params = { start: keys.start, from: isoDate(from), end: keys.end, until: isoDate(until) };
  const related = [{ span: at(item, keys.start).span, message: 'the start is here' }];
  scope.report(problem('plan/end-before-start', { ...at(item, keys.end), params, related }));
}

/** An open range that lies wholly before or after the season. */
function reportNever(scope: Scope, item: Located, key: string): undefined {
  scope.report(problem('plan/outside-season', { ...at(item, key), params: seasonWords(scope) }));
}

/** The season's first and last day in ISO form, for messages. */
export function seasonWords({ frame }: Pick<Scope, 'frame'>): { readonly starts: string; readonly ends: string } {
  return { starts: isoDate(frame.from), ends: isoDate(frame.until) };
}

/** Says so when an item lies outside of the season and so does nothing. */
export function warnOutside(scope: Scope, item: Located, range: DayRange, key: string): void {
  if (overlap(range, scope.frame)) return;
  scope.report(problem('plan/outside-season', { ...at(item, key), params: seasonWords(scope) }));
}
