// The kinds of the weeks of a season as they are described, from its phases, by code of its own; easy weeks are those of
// every-placing.ts.

import { getPhase, SEASON_SHAPE } from '../../../src/library/phases.ts';
import type { PhaseId, WeekKind } from '../../../src/library/types.ts';
import { appliesTo, overlap } from '../../../src/plan/applies.ts';
import { returnStageOn } from '../../../src/plan/athlete-facts.ts';
import { getRuleValue, ruleBook } from '../../../src/plan/rule-book.ts';
import type { DayRange, Plan } from '../../../src/plan/types.ts';
import type { AthleteGrid, WeekCells } from '../../../src/schedule/types.ts';
import { inFoundation } from '../phases/plain-phases.ts';
import { bestOfAllPlacings } from './every-placing.ts';
import type { RunWeek } from './every-placing.ts';

export interface PlainKind {
  readonly kind: WeekKind;
  /** Which rung of the way back, or week of the taper. */
  readonly step?: number;
}

const rangeOf = ({ starts }: WeekCells): DayRange => ({ from: starts, until: starts + 6 });

/** A kind for every week. */
export function plainKinds(plan: Plan, grid: AthleteGrid, phases: readonly PhaseId[]): readonly PlainKind[] {
  const book = ruleBook(plan, grid.athlete);
  const rungs = plainRungs(plan, grid, phases);
  const tapers = plainTapers(plan, grid);
  const pins = plan.pins.filter(({ who }) => appliesTo(who, grid.athlete));
  const kinds = grid.weeks.map((week, at): PlainKind | undefined => {
    if (phases[at] === 'transition') return { kind: 'transition' };
    if (week.empty) return { kind: 'empty' };
    const rung = rungs.get(at);
    if (rung !== undefined) return { kind: 'return', step: rung };
    if (returnStageOn(grid.athlete, week.starts) !== undefined) return { kind: 'return' };
    const pinned = pins
      .filter(({ range }) => overlap(range, rangeOf(week)))
      .flatMap(({ effects }) => effects.flatMap((one) => (one.kind === 'week-kind' ? [one.weekKind] : [])))
      .at(-1);
    if (pinned !== undefined) return { kind: pinned };
    const taper = tapers.get(at);
    if (taper !== undefined) return { kind: 'taper', step: taper };
    return phases[at] === 'hold' ? { kind: 'hold' } : undefined;
  });
  const run = grid.weeks.map((week, at): RunWeek | undefined => {
    const kind = kinds[at]?.kind;
    const phase = phases[at] ?? 'closed';
    if ((kind !== undefined && kind !== 'load' && kind !== 'deload') || !getPhase(phase).deloads) return undefined;
    const next = grid.weeks.findIndex(({ empty }, later) => later > at && !empty);
    const free = book.waiver('deload-rhythm', rangeOf(week)) !== undefined;
    return {
      test: week.cells.some(({ test }) => test !== undefined),
      last: next < 0 || phases[next] !== phase,
      ...(kind === undefined ? {} : { pinned: kind === 'load' ? 'load' : 'easy' }),
      most: free ? Infinity : getRuleValue(book, 'deload-rhythm', 'loading-weeks', rangeOf(week)),
      least: free ? 0 : getRuleValue(book, 'deload-rhythm', 'between', rangeOf(week)),
    };
  });
  const easy = easyWeeks(run);
  return kinds.map((kind, at) => kind ?? { kind: easy.has(at) ? 'deload' : 'load' });
}

/** In each run by itself. */
function easyWeeks(weeks: readonly (RunWeek | undefined)[]): ReadonlySet<number> {
  const easy = new Set<number>();
  let run: RunWeek[] = [];
  for (const [at, week] of [...weeks, undefined].entries()) {
    if (week !== undefined) {
      run.push(week);
      continue;
    }
    for (const place of bestOfAllPlacings(run)) easy.add(at - run.length + place);
    run = [];
  }
  return easy;
}

/** Rungs of the ladders back, by week. Transition neither counts as time away nor uses up a rung. */
function plainRungs(plan: Plan, grid: AthleteGrid, phases: readonly PhaseId[]): ReadonlyMap<number, number> {
  const book = ruleBook(plan, grid.athlete);
  const rungs = new Map<number, number>();
  let idle: WeekCells[] = [];
  let left = 0;
  let next = 1;
  for (const [at, week] of grid.weeks.entries()) {
    const rests = phases[at] === 'transition';
    if (week.empty && !rests) {
      idle.push(week);
      continue;
    }
    const [first, last] = [idle[0], idle.at(-1)];
    if (first !== undefined && last !== undefined) {
      const range = { from: first.starts, until: last.starts + 6 };
      const away = idle.filter(({ trained }) => trained === 'none').length;
      const long = away >= getRuleValue(book, 'return-ramp', 'long-from', range);
      if (long || away >= getRuleValue(book, 'return-ramp', 'short-from', range)) [left, next] = [long ? 4 : 2, 1];
      idle = [];
    }
    if (left === 0 || rests) continue;
    if (book.waiver('return-ramp', rangeOf(week)) === undefined) rungs.set(at, next);
    left -= 1;
    next += 1;
  }
  return rungs;
}

/** Weeks of the tapers, by week: the last open ones up to each peak that is built for. */
function plainTapers(plan: Plan, grid: AthleteGrid): ReadonlyMap<number, number> {
  const tapers = new Map<number, number>();
  if (inFoundation(plan, grid.athlete)) return tapers;
  const peaks = plan.competitions.filter(({ prepare, who }) => prepare === 'peak' && appliesTo(who, grid.athlete));
  let from = 0;
  for (const [at, week] of grid.weeks.entries()) {
    const range = rangeOf(week);
    if (!peaks.some((peak) => range.from <= peak.range.from && peak.range.from <= range.until)) continue;
    const weeks = grid.weeks.slice(from, at + 1);
    const held = from > 0 && weeks.length <= SEASON_SHAPE.holdMostWeeks;
    const rests = from > 0 && weeks.length >= SEASON_SHAPE.transitionFromWeeks;
    const open = weeks.slice(rests ? 1 : 0).filter(({ empty }) => !empty);
    const count = open.length >= SEASON_SHAPE.longTaperFromWeeks ? 2 : 1;
    if (!held) open.slice(-count).forEach(({ index }, step) => tapers.set(index, step + 1));
    from = at + 1;
  }
  return tapers;
}
