// Time away from jumping: which empty weeks cost adapted volume, and which weeks behind them are the rungs of the ladder
// back. Weeks of transition neither count nor use up a rung. Called by ../week-kinds.ts.

import { weekFrom } from '../../plan/applies.ts';
import { LADDER, VOLUME } from '../../library/volume.ts';
import { getRuleValue } from '../../plan/rule-book.ts';
import type { RuleBook } from '../../plan/rule-book.ts';
import type { AthleteGrid, AthletePhases, WeekCells } from '../types.ts';
import { DAYS_A_WEEK } from '../../util/days.ts';
import type { Day } from '../../util/days.ts';
import { PERCENT } from '../../util/units.ts';

export interface AwayWeek {
  /** Whole per cent of A that an empty week takes. */
  readonly decayPercent?: number;
  /** Rung of the ladder, from 1, for a week after time away. */
  readonly step?: number;
  readonly steps?: number;
  /** First day of the week of the rung before; absent on the first rung that no waiver leaves out. */
  readonly rungBefore?: Day;
}

interface Ladder {
  readonly steps: number;
  done: number;
  /** First day of the last rung's week, once a rung has held. */
  last?: Day;
}

/** By week; a week with neither is not touched by time away. Ladder R3 (M), loss of an empty week C. */
export function timeAway(grid: AthleteGrid, phases: AthletePhases, book: RuleBook): readonly AwayWeek[] {
  const away: AwayWeek[] = grid.weeks.map(() => ({}));
  let ladder: Ladder | undefined;
  for (let at = 0; at < grid.weeks.length; at += 1) {
    const run = emptyRun(grid, phases, at);
    if (run.length > 0) {
      const steps = ladderLength(run, book);
      if (steps > 0) ladder = { steps, done: 0 };
      for (const week of run) away[week.index] = { decayPercent: steps > 0 ? 0 : loss(week) };
      at += run.length - 1;
      continue;
    }
    if (ladder === undefined || phases.weeks[at]?.phase === 'transition') continue;
    ladder.done += 1;
    const starts = grid.weeks[at]?.starts ?? 0;
    const { done: step, steps, last } = ladder;
    const holds = isBound(starts, book);
    if (holds) away[at] = { step, steps, ...(last === undefined ? {} : { rungBefore: last }) };
    if (holds || last !== undefined) ladder.last = starts;
    if (ladder.done === ladder.steps) ladder = undefined;
  }
  return away;
}

function isBound(starts: Day, book: RuleBook): boolean {
  return book.waiver('return-ramp', weekFrom(starts)) === undefined;
}

/** The empty weeks in a row from a week on. */
function emptyRun(grid: AthleteGrid, phases: AthletePhases, from: number): readonly WeekCells[] {
  const run: WeekCells[] = [];
  for (let at = from; at < grid.weeks.length; at += 1) {
    const week = grid.weeks[at];
    if (week === undefined || !week.empty || phases.weeks[at]?.phase === 'transition') break;
    run.push(week);
  }
  return run;
}

function ladderLength(run: readonly WeekCells[], book: RuleBook): number {
  const first = run[0];
  if (first === undefined) return 0;
  const range = { from: first.starts, until: first.starts + run.length * DAYS_A_WEEK - 1 };
  const idle = run.filter((week) => week.trained === 'none').length;
  if (idle >= getRuleValue(book, 'return-ramp', 'long-from', range)) return LADDER.rungs.length;
  return idle >= getRuleValue(book, 'return-ramp', 'short-from', range) ? LADDER.short : 0;
}

function loss(week: WeekCells): number {
  return week.trained === 'full' ? 0 : PERCENT - VOLUME.leftAfterEmpty;
}
