// The days of a week that was written by hand: which hold jumps, which hold lifts, and how many contacts. Their days
// are fixed. Called by week-days.ts. Of several programmes in one week the first in the plan is the one followed.

import { writtenContacts } from '../../plan/line-contacts.ts';
import type { ProgrammeDay, ProgrammeUse, WrittenLine } from '../../plan/types.ts';
import { weekdayOf } from '../../util/days.ts';
import { daysWritten } from '../contacts/week-programme.ts';
import type { DayCell, WeekCells } from '../types.ts';
import { isRestDay } from './season-days.ts';
import type { SeasonDays } from './season-days.ts';

export interface WrittenDay {
  readonly use: ProgrammeUse;
  readonly written: ProgrammeDay;
  readonly cell: DayCell;
  readonly contacts: number;
  readonly lifts: boolean;
  /** Whether it can be held: something is open that day, and the athlete isn't told to rest. */
  readonly open: boolean;
}

/** The days written for this week, in order; undefined when none of the programmes reaches it. */
export function writtenDays(season: SeasonDays, week: WeekCells): readonly WrittenDay[] | undefined {
  for (const use of season.uses) {
    const written = daysWritten(season.plan, use, week.starts);
    if (written === undefined) continue;
    return week.cells.flatMap((cell) => {
      const day = written.find((one) => one.day === weekdayOf(cell.day));
      return day === undefined ? [] : [writtenDay(season, use, day, cell)];
    });
  }
  return undefined;
}

function writtenDay(season: SeasonDays, use: ProgrammeUse, written: ProgrammeDay, cell: DayCell): WrittenDay {
  return {
    use,
    written,
    cell,
    contacts: written.lines.reduce((sum, line) => sum + writtenContacts(line, season.plan.library), 0),
    lifts: written.lines.some(holdsLift),
    open: cell.slots.length > 0 && !isRestDay(season, cell.day),
  };
}

function holdsLift(line: WrittenLine): boolean {
  return line.exercise.kind === 'lift' || (line.pair !== undefined && holdsLift(line.pair));
}
