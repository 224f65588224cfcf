// Stretches in which match days crowd together: there only a short lift stands. The grid keeps jumps off their days;
// here the lift sessions of the weeks they touch are counted down. Called by week-days.ts.

import type { DayRange } from '../../plan/types.ts';
import type { Day } from '../../util/days.ts';
import type { WeekCells } from '../types.ts';
import type { DayRules } from './day-rules.ts';

/** From the first to the last of so many match days within so many days; in order, they may overlap. */
export function crowdedStretches(weeks: readonly WeekCells[], rules: readonly DayRules[]): readonly DayRange[] {
  const played: { readonly day: Day; readonly week: number }[] = [];
  for (const week of weeks) {
    for (const cell of week.cells) if (cell.competition !== undefined) played.push({ day: cell.day, week: week.index });
  }
  return played.flatMap(({ day, week }, place) => {
    const rule = rules[week];
    const last = rule === undefined ? undefined : played[place + rule.matchDays - 1];
    return rule === undefined || last === undefined || last.day - day >= rule.matchesWithin
      ? []
      : [{ from: day, until: last.day }];
  });
}

/** Whether a day lies in a stretch that began before `weekStarts`. */
export function carriedOver(stretches: readonly DayRange[], weekStarts: Day, day: Day): boolean {
  return stretches.some((stretch) => stretch.from < weekStarts && stretch.from <= day && day <= stretch.until);
}
