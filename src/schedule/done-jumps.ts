// Practice, matches and tests that are on the record with their jumps, in the place of those that the plan has for the day:
// they are the other jumps of the week, and what counts as a hard day. Called by season-terms.ts.

import { doneBy } from '../plan/done-by.ts';
import type { DoneRow, Plan } from '../plan/types.ts';
import type { Day } from '../util/days.ts';
import { DAYS_A_WEEK } from '../util/days.ts';
import { otherJumpsOn } from './grid.ts';
import type { AthleteGrid, DayCell, WeekCells } from './types.ts';

type OtherJumps = Pick<DayCell, 'practiceJumps' | 'matchJumps' | 'testContacts'>;

const FIELDS: readonly (readonly [DoneRow['kind'], keyof OtherJumps])[] = [
  ['practice', 'practiceJumps'],
  ['match', 'matchJumps'],
  ['test', 'testContacts'],
];

/**
 * The grid with what was done before `asOf`. In the week under way what was done less frees nothing yet. A row without a
 * number was done as planned.
 */
export function withDoneJumps(plan: Plan, grid: AthleteGrid, asOf: Day | undefined): AthleteGrid {
  if (asOf === undefined) return grid;
  const rows = doneBy(plan.record, grid.athlete.id).filter(
    ({ kind, day, contacts }) => kind !== 'session' && contacts !== undefined && day < asOf,
  );
  if (rows.length === 0) return grid;
  return { ...grid, weeks: grid.weeks.map((week) => withDone(week, rows, asOf)) };
}

function withDone(week: WeekCells, rows: readonly DoneRow[], asOf: Day): WeekCells {
  const ends = week.starts + DAYS_A_WEEK;
  const mine = rows.filter(({ day }) => week.starts <= day && day < ends);
  if (mine.length === 0) return week;
  const cells = week.cells.map((cell) => cellWith(cell, mine, ends <= asOf));
  const otherJumps = cells.reduce((sum, cell) => sum + otherJumpsOn(cell), 0);
  return { ...week, cells, otherJumps, plannedJumps: week.otherJumps };
}

function cellWith(cell: DayCell, rows: readonly DoneRow[], over: boolean): DayCell {
  const mine = rows.filter(({ day }) => day === cell.day);
  if (mine.length === 0) return cell;
  const done = FIELDS.flatMap(([kind, field]) => {
    const ofKind = mine.filter((row) => row.kind === kind);
    const jumps = ofKind.reduce((sum, { contacts = 0 }) => sum + contacts, 0);
    return ofKind.length === 0 ? [] : [[field, over ? jumps : Math.max(jumps, cell[field])]];
  });
  return { ...cell, ...(Object.fromEntries(done) as Partial<OtherJumps>), plannedJumps: otherJumpsOn(cell) };
}

/**
 * The other jumps of a week that later ones are measured against: what was done, but no more than was planned, as nobody is
 * used to a leap for having made it once. Common practice, no source.
 */
export const usualOtherJumps = ({ otherJumps, plannedJumps = otherJumps }: WeekCells): number =>
  Math.min(otherJumps, plannedJumps);
