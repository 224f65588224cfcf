// The jump sessions of a week that was written by hand: their days and contacts are the programme's, and the week is
// planned round them. Days on which nothing is open, and days of pinned rest, are left out. Called by week-facts.ts.

import { itemsOf } from '../../plan/items-of.ts';
import { writtenContacts } from '../../plan/line-contacts.ts';
import { holds } from '../../plan/applies.ts';
import type { Athlete, Plan, ProgrammeDay, ProgrammeUse } from '../../plan/types.ts';
import type { Span } from '../../source/types.ts';
import { DAYS_A_WEEK, weekdayOf } from '../../util/days.ts';
import type { Day } from '../../util/days.ts';
import { weekStart } from '../grid.ts';
import type { DayCell, WeekCells } from '../types.ts';
import { pinsWith } from '../pins-with.ts';

export interface WeekProgramme {
  readonly span: Span;
  /** In order of day; only those with contacts. */
  readonly sessions: readonly { readonly day: Day; readonly contacts: number }[];
}

/** Undefined where no programme reaches the week; the first in the plan where several do. */
export function weekProgramme(plan: Plan, athlete: Athlete, week: WeekCells): WeekProgramme | undefined {
  if (week.empty) return undefined;
  const { uses, pins } = itemsOf(plan, athlete);
  const rests = pinsWith(pins, 'rest');
  for (const use of uses) {
    const days = daysWritten(plan, use, week.starts);
    if (days === undefined) continue;
    const open = week.cells.filter((cell) => cell.slots.length > 0 && !rests.some((pin) => holds(pin.range, cell.day)));
    return { span: use.span, sessions: open.flatMap((cell) => sessionOn(plan, days, cell)) };
  }
  return undefined;
}

/** The days that a programme has for the week that starts with a day; undefined where it doesn't reach it. */
export function daysWritten(plan: Plan, use: ProgrammeUse, starts: Day): readonly ProgrammeDay[] | undefined {
  const number = (starts - weekStart(plan, use.from)) / DAYS_A_WEEK + 1;
  return use.programme.weeks.find((one) => one.week === number)?.days;
}

function sessionOn(plan: Plan, days: readonly ProgrammeDay[], { day }: DayCell): WeekProgramme['sessions'] {
  const written = days.filter((one) => one.day === weekdayOf(day)).flatMap((one) => one.lines);
  const contacts = written.reduce((sum, line) => sum + writtenContacts(line, plan.library), 0);
  return contacts === 0 ? [] : [{ day, contacts }];
}
