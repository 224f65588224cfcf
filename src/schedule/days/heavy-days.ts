// Whether lower-body lifting may be heavy on a day, and what keeps it light: a competition in the days after (S7, S12), a
// test beside it, or a peak that has passed in the same week, behind which nothing heavy serves anything. Called by
// week-days.ts for the choice and by sessions.ts for the reason and for what else stays away.

import type { LegSparing } from '../../library/leg-sparing.ts';
import { eveDays, legSparing } from '../../library/leg-sparing.ts';
import type { Competition, TestDay } from '../../plan/types.ts';
import type { DayCell, WeekCells } from '../types.ts';
import type { DayRules } from './day-rules.ts';
import { findCell } from './season-days.ts';
import type { SeasonDays } from './season-days.ts';

export type LightCause =
  | { readonly by: 'lift-event-gap' | 'after-peak'; readonly competition: Competition; readonly days: number }
  | { readonly by: 'test-fresh'; readonly test: TestDay; readonly days: number };

/**
 * What keeps lower-body lifting light on a day, or undefined where it may be heavy. `days` from the one to the other. Of
 * several competitions the one whose eve it is, else the first of the plan that is ahead, before a peak that has passed.
 */
export function findLightCause(
  season: SeasonDays,
  rules: DayRules,
  week: WeekCells,
  cell: DayCell,
): LightCause | undefined {
  const eve = findEve(season, rules, cell);
  if (eve !== undefined) return { by: 'lift-event-gap', competition: eve, days: eve.range.from - cell.day };
  for (const competition of season.competitions) {
    const days = competition.range.from - cell.day;
    if (days >= 0 && days <= gapBefore(competition, rules)) return { by: 'lift-event-gap', competition, days };
  }
  for (const competition of season.competitions) {
    if (!isPassed(competition, week, cell)) continue;
    return { by: 'after-peak', competition, days: cell.day - competition.range.from };
  }
  return findTestBeside(season, rules, cell);
}

const gapBefore = ({ prepare }: Competition, rules: DayRules): number =>
  prepare === 'peak' ? rules.liftGapPeak : rules.liftGapMatch;

/** The competition whose eve a day is, where the athlete goes into it fresh. */
export function findEve({ competitions }: SeasonDays, rules: DayRules, { day }: DayCell): Competition | undefined {
  return competitions.find((competition) => {
    const days = competition.range.from - day;
    return days >= 0 && days <= eveDays(competition.prepare) && days <= gapBefore(competition, rules);
  });
}

/** Whether a peak of the same week has passed on a day. */
export const isBehindPeak = ({ competitions }: SeasonDays, week: WeekCells, cell: DayCell): boolean =>
  competitions.some((competition) => isPassed(competition, week, cell));

const isPassed = ({ prepare, range }: Competition, week: WeekCells, { day }: DayCell): boolean =>
  prepare === 'peak' && week.starts <= range.from && range.from < day;

/** What else of the lifting stays away; undefined where nothing but the load is in question. */
export function findSparing(light: LightCause): LegSparing | undefined {
  return light.by === 'lift-event-gap' ? legSparing(light.days, light.competition.prepare) : undefined;
}

function findTestBeside(season: SeasonDays, rules: DayRules, cell: DayCell): LightCause | undefined {
  for (let days = 0; days < rules.testApart; days += 1) {
    const test = findCell(season, cell.day + days)?.test ?? findCell(season, cell.day - days)?.test;
    if (test !== undefined) return { by: 'test-fresh', test, days };
  }
  return undefined;
}
