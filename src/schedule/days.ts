// Stage 5: the days of every session of one athlete, jumps and lifts of all weeks chosen together at least cost, and
// what each session may hold: how many contacts, heavy lifting or not, drops or not. The choice is exact over the whole
// season; the numbers it weighs stand in library/days.ts.

import type { Staged } from '../diagnostics/types.ts';
import type { Plan } from '../plan/types.ts';
import { dayProblems } from './days/day-problems.ts';
import type { ExplainDays } from './days/day-problems.ts';
import { sessionReasons, weekReasons, weekTold } from './days/day-reasons.ts';
import { daysOf, NO_DAYS } from './days/day-sets.ts';
import { placeDays } from './days/place-days.ts';
import type { PlacedWeek } from './days/place-days.ts';
import { seasonDays } from './days/season-days.ts';
import type { DaysInput, Published, SeasonDays } from './days/season-days.ts';
import { placeSessions, sessionOf } from './days/sessions.ts';
import { liftsWanted, weekDays } from './days/week-days.ts';
import type { WeekDays } from './days/week-days.ts';
import type { DaysWeek } from './types.ts';

export type { DaysInput, Published, PublishedDay } from './days/season-days.ts';

const NOTHING_PUBLISHED: Published = new Map();
const NOTHING_PLACED: PlacedWeek = { jumps: NO_DAYS, lifts: NO_DAYS };

/**
 * The sessions of each week. `published` holds the days of the sheets handed out last, where sessions should stay; a
 * week in which the athlete has none is free. Sessions that fit on no days are left out and reported; `explain` finds
 * the lines that stand against them.
 */
export function scheduleDays(
  plan: Plan,
  input: DaysInput,
  published: Published = NOTHING_PUBLISHED,
  explain?: ExplainDays,
): Staged<readonly DaysWeek[]> {
  const season = seasonDays(plan, input, published);
  const weeks = input.grid.weeks.map((week) => weekDays(season, week));
  const placed = placeDays(weeks.map((week) => week.toPlace));
  return { value: describeWeeks(season, weeks, placed), diagnostics: dayProblems(season, weeks, placed, explain) };
}

function describeWeeks(
  season: SeasonDays,
  weeks: readonly WeekDays[],
  placed: readonly PlacedWeek[],
): readonly DaysWeek[] {
  const jumpDates = new Set(
    weeks.flatMap((days, index) => daysOf(placed[index]?.jumps ?? NO_DAYS).map((place) => days.week.starts + place)),
  );
  let before: PlacedWeek = NOTHING_PLACED;
  return weeks.map((days, index) => {
    const chosen = placed[index] ?? NOTHING_PLACED;
    const told = weekTold(season, days, chosen, before);
    const sessions = placeSessions(season, days, chosen, jumpDates).map((session) =>
      sessionOf(session, days, sessionReasons(told, session)),
    );
    before = { jumps: chosen.jumps || before.jumps, lifts: chosen.lifts || before.lifts };
    return { sessions, liftSessionsWanted: liftsWanted(days), reasons: weekReasons(told, chosen) };
  });
}
