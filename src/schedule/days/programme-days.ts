// The days of a week that was written by hand: which hold jumps, which hold lifts, and how many contacts. Their days
// are fixed. Called by week-days.ts. Of several programmes in one week the first in the plan is the one followed.

import { appliesTo } from '../../plan/applies.ts';
import { writtenContacts } from '../../plan/line-contacts.ts';
import type { Athlete, Plan, ProgrammeDay, ProgrammeUse, WrittenLine } from '../../plan/types.ts';
import { weekdayOf } from '../../util/days.ts';
import { weekStart } from '../grid.ts';
import type { DayCell, WeekCells } from '../types.ts';
import { DAYS_A_WEEK } from './day-sets.ts';

export interface WrittenDay {
  readonly use: ProgrammeUse;
  readonly written: ProgrammeDay;
  readonly cell: DayCell;
  readonly contacts: number;
  readonly lifts: boolean;
  /** Whether it can be held: something is open that day, and the athlete isn't told to rest. */
  readonly open: boolean;
}

/** The uses of programmes for one athlete. */
export function programmeUses(plan: Plan, athlete: Athlete): readonly ProgrammeUse[] {
  return plan.uses.filter((use) => appliesTo(use.who, athlete));
}

/** The days written for this week, in order; undefined when none of the programmes reaches it. */
export function writtenDays(
  plan: Plan,
  uses: readonly ProgrammeUse[],
  week: WeekCells,
): readonly WrittenDay[] | undefined {
  for (const use of uses) {
    const number = (week.starts - weekStart(plan, use.from)) / DAYS_A_WEEK + 1;
    const written = use.programme.weeks.find((one) => one.week === number);
    if (written === undefined) continue;
    return week.cells.flatMap((cell) => {
      const day = written.days.find((one) => one.day === weekdayOf(cell.day));
      return day === undefined ? [] : [writtenDay(plan, use, day, cell)];
    });
  }
  return undefined;
}

function writtenDay(plan: Plan, use: ProgrammeUse, written: ProgrammeDay, cell: DayCell): WrittenDay {
  return {
    use,
    written,
    cell,
    contacts: written.lines.reduce((sum, line) => sum + writtenContacts(line, plan.library), 0),
    lifts: written.lines.some(holdsLift),
    open: cell.slots.length > 0 && cell.barred !== 'rest-pin',
  };
}

function holdsLift(line: WrittenLine): boolean {
  return line.exercise.kind === 'lift' || (line.pair !== undefined && holdsLift(line.pair));
}
