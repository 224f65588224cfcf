// What was done and tested, row by row, with athletes and tests bound. Called by resolve.ts. A row dated in the future is
// a slip, but which day it is only the caller knows.

import { at } from '../language/authored.ts';
import type { Item } from '../language/authored.ts';
import { JUMP_TIME_NAMES, TEST_NAMES } from '../language/known-names.ts';
import { testRowOf } from '../language/shapes/record.ts';
import type { DoneFields, TestRowFields } from '../language/shapes/record.ts';
import { problem } from '../diagnostics/problem.ts';
import { isoDate, startOfWeek } from '../util/days.ts';
import type { Day } from '../util/days.ts';
import { isMeasureSound } from './test-measures.ts';
import { withoutRepeats, withoutSurplus } from './repeated-rows.ts';
import { isBound, namesOf } from './bind-names.ts';
import { inOrder } from './in-order.ts';
import type { Scope } from './scope.ts';
import type { DoneRow, SeasonRecord, TestRow } from './types.ts';

/** In order of day, athlete. Without `today` no date is in the future. */
export function resolveRecord(scope: Scope, today: Day | undefined): SeasonRecord {
  const rows = scope.authored.done.flatMap((item) => resolveDone(scope, today, item) ?? []);
  noteBeforeSeason(scope, rows);
  const done = withoutSurplus(scope, withoutRepeats(scope, rows));
  const tests = withoutRepeats(
    scope,
    scope.authored.testRows.flatMap((item) => resolveTestRow(scope, today, item) ?? []),
  );
  // The athlete comes next, as the first of what a row means otherwise.
  const dayOf = ({ day }: DoneRow | TestRow): Day => day;
  return { done: inOrder(done, dayOf), tests: inOrder(tests, dayOf) };
}

/** Rows of an older season may stay on record; a row of last year in a file of this one is a slip. Once for all of them. */
function noteBeforeSeason(scope: Scope, rows: readonly DoneRow[]): void {
  if (!scope.isFramed) return;
  const before = rows.filter(({ day }) => day < startOfWeek(scope.frame.from, scope.weekStarts));
  const [first] = before;
  if (first === undefined) return;
  const params = { date: isoDate(first.day), rows: before.length, starts: isoDate(scope.frame.from) };
  scope.report(problem('plan/rows-before-season', { params, span: first.span }));
}

function isRowSound(scope: Scope, today: Day | undefined, item: Item<DoneFields> | Item<TestRowFields>): boolean {
  const { athlete, date } = item.value;
  const isKnown =
    athlete === undefined || isBound(scope, namesOf('athlete', scope.authored.athletes), athlete, item, 'athlete');
  if (date === undefined || today === undefined || date <= today) return isKnown;
  scope.report(
    problem('plan/record-in-future', { ...at(item, 'date'), params: { date: isoDate(date), today: isoDate(today) } }),
  );
  return false;
}

function resolveDone(scope: Scope, today: Day | undefined, item: Item<DoneFields>): DoneRow | undefined {
  if (!isRowSound(scope, today, item) || item.kind === 'broken') return undefined;
  const { date, athlete, kind, contacts, minutes, effort, pain, note } = item.value;
  return {
    day: date,
    athlete,
    kind,
    ...(contacts !== undefined && { contacts }),
    ...(minutes !== undefined && { minutes }),
    ...(effort !== undefined && { effort }),
    ...(pain !== undefined && { pain }),
    ...(note !== undefined && { note }),
    span: item.span,
  };
}

function resolveTestRow(scope: Scope, today: Day | undefined, item: Item<TestRowFields>): TestRow | undefined {
  const known = namesOf(
    'drill, lift or test',
    scope.library.drills,
    scope.library.lifts,
    new Set([...TEST_NAMES, ...JUMP_TIME_NAMES]),
  );
  const isSound = isRowSound(scope, today, item);
  const isKnown = item.value.test === undefined || isBound(scope, known, item.value.test, item, 'test');
  const isMeasured = isMeasureSound(scope, item);
  if (!isSound || !isKnown || !isMeasured || item.kind === 'broken') return undefined;
  return { ...testRowOf(item.value), span: item.span };
}
