// test-stale: the maximum behind kilos is some weeks old at most, and counts for less after weeks away. C.
// A test of the lift in the plan renews it, as its result will be there by then. Said once for each lift.

import type { LiftMax } from '../../plan/types.ts';
import type { Lift } from '../../library/types.ts';
import { DAYS_A_WEEK, isoDate } from '../../util/days.ts';
import type { Day } from '../../util/days.ts';
import { writtenPlace } from '../places.ts';
import { auditRule } from '../rule.ts';
import type { Find } from '../rule.ts';
import { maxBehind, maxGrams } from '../line-reading.ts';
import type { LineReading } from '../line-reading.ts';
import type { SessionReading } from '../session-reading.ts';
import type { SeasonReading } from '../season-reading.ts';
import { addTo } from '../../util/grouped.ts';
import { PERCENT } from '../../util/units.ts';

export const testStale = auditRule(
  'test-stale',
  (season, find) => {
    const saidOld = new Set<string>();
    const saidAway = new Set<string>();
    const tested = testDays(season);
    const returns = lastReturns(season);
    for (const session of season.sessions) {
      if (!session.lifts) continue;
      for (const line of session.lines) {
        const { lift } = line;
        const max = lift === undefined ? undefined : maxBehind(season.athlete, lift);
        if (lift === undefined || max === undefined || !restsOnMax(line)) continue;
        const lastTest = tested.get(max.lift)?.findLast((day) => day <= session.day);
        if (!saidOld.has(max.lift) && checkAge(season, session, max, lastTest, find)) saidOld.add(max.lift);
        const back = returns[session.week];
        const renewed = lastTest !== undefined && back !== undefined && lastTest >= back;
        // A date to come is no test by that day.
        const testedOn = max.on !== undefined && max.on <= session.day ? max.on : -Infinity;
        if (back === undefined || renewed || testedOn >= back || saidAway.has(max.lift)) continue;
        if (checkShare(season, session, line, { lift, max }, find)) saidAway.add(max.lift);
      }
    }
  },
  { separate: true, asksLoads: true },
);

function restsOnMax({ line }: LineReading): boolean {
  return line.percent !== undefined && line.loadGrams !== undefined;
}

/** Days on which the plan tests a lift. */
function testDays(season: SeasonReading): ReadonlyMap<string, readonly Day[]> {
  const tested = new Map<string, Day[]>();
  for (const { day, test } of season.days) {
    for (const what of test?.what ?? []) addTo(tested, what, day);
  }
  return tested;
}

function checkAge(
  season: SeasonReading,
  session: SessionReading,
  max: LiftMax,
  lastTest: Day | undefined,
  find: Find<'test-stale'>,
): boolean {
  const week = season.weekOf(session);
  const wanted = season.parameter('test-stale', 'weeks')(week);
  const from = lastTest === undefined ? max.on : Math.max(lastTest, max.on ?? lastTest);
  const found = from === undefined ? 0 : Math.floor((session.day - from) / DAYS_A_WEEK);
  if (from !== undefined && found < wanted) return false;
  find(week, {
    params: { date: isoDate(session.day), lift: max.lift, away: false, found, wanted },
    span: max.span,
  });
  return true;
}

function checkShare(
  season: SeasonReading,
  session: SessionReading,
  { line, ...rest }: LineReading,
  { lift, max }: { readonly lift: Lift; readonly max: LiftMax },
  find: Find<'test-stale'>,
): boolean {
  const week = season.weekOf(session);
  const wanted = season.parameter('test-stale', 'share')(week);
  const grams = maxGrams(season.athlete, lift);
  if (grams === undefined || line.percent === undefined || line.loadGrams === undefined) return false;
  const found = (line.loadGrams * PERCENT * PERCENT) / (grams * line.percent);
  if (found <= wanted) return false;
  find(week, {
    params: { date: isoDate(session.day), lift: max.lift, away: true, found: Math.ceil(found), wanted },
    span: writtenPlace({ line, ...rest }),
  });
  return true;
}

/** For each week the first day back from the last long time away before it, if there was one. */
function lastReturns(season: SeasonReading): readonly (Day | undefined)[] {
  const away = season.parameter('test-stale', 'away');
  let run = 0;
  let back: Day | undefined;
  return season.weeks.map((week) => {
    if (season.runsAway[week.index]?.trained === 'none') run += 1;
    else {
      if (run > 0 && run >= away(week)) back = week.range.from;
      run = 0;
    }
    return back;
  });
}
