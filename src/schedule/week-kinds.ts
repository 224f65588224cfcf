// Stage 3: one kind for every week. Where several fit, the first of transition, empty, return, taper, hold, deload and
// load stands. A pinned kind stands before the rest, but not in a week without training, nor before a way back.

import { problem } from '../diagnostics/problem.ts';
import type { Diagnostic, Staged } from '../diagnostics/types.ts';
import { getPhase, SEASON_SHAPE } from '../library/phases.ts';
import type { WeekKind } from '../library/types.ts';
import { weekFrom } from '../plan/applies.ts';
import { returnStageOn } from '../plan/athlete-facts.ts';
import { getRuleValue } from '../plan/rule-book.ts';
import type { RuleBook } from '../plan/rule-book.ts';
import type { Competition, Plan } from '../plan/types.ts';
import type { Span } from '../source/types.ts';
import { isoDate } from '../util/days.ts';
import { barredPhases } from './phases.ts';
import { pinnedWeeks } from './pinned-weeks.ts';
import type { PinnedWeek } from './pinned-weeks.ts';
import type { AthleteGrid, AthletePhases, KindWeek, WeekCells } from './types.ts';
import { placeDeloads } from './week-kinds/deloads.ts';
import type { LoadableWeek } from './week-kinds/deloads.ts';
import { timeAway } from './week-kinds/time-away.ts';
import type { AwayWeek } from './week-kinds/time-away.ts';

/** The kinds of one athlete's weeks. */
export function chooseWeekKinds(
  plan: Plan,
  book: RuleBook,
  grid: AthleteGrid,
  phases: AthletePhases,
): Staged<readonly KindWeek[]> {
  const pins = pinnedWeeks(plan, grid, (effect) => (effect.kind === 'week-kind' ? effect.weekKind : undefined));
  const tapers = taperSteps(grid, phases);
  const away = timeAway(grid, phases, book);
  const kindBefore = (week: WeekCells): KindWeek | undefined =>
    beforeLoading(grid, phases, week, away[week.index], tapers.get(week.index));
  const diagnostics = [...pinsOverFoundation(plan, grid), ...returnsInTapers(grid, phases, tapers, kindBefore)];
  const kinds = grid.weeks.map((week): KindWeek | undefined => {
    const before = kindBefore(week);
    const pin = pins.get(week.index);
    if (pin === undefined || before?.kind === 'transition' || before?.kind === 'empty') return before;
    if (before?.kind !== 'return' || pin.value === 'return') return withPin(pin, before);
    diagnostics.push(pinOverReturn(grid, week, pin));
    return before;
  });
  return { value: withDeloads(book, grid, phases, kinds), diagnostics };
}

type PinnedKind = PinnedWeek<WeekKind>;

function withPin(pin: PinnedKind, before: KindWeek | undefined): KindWeek {
  if (before?.kind === pin.value) return { ...before, pinnedBy: pin.span };
  return { kind: pin.value, pinnedBy: pin.span, ...(pin.value === 'taper' ? { step: 1, steps: 1 } : {}) };
}

/** The kind of a week that isn't left to loading and deloads; undefined for one that is. */
function beforeLoading(
  grid: AthleteGrid,
  phases: AthletePhases,
  week: WeekCells,
  away: AwayWeek | undefined,
  taper: TaperStep | undefined,
): KindWeek | undefined {
  const phase = phases.weeks[week.index]?.phase;
  if (phase === 'transition') return { kind: 'transition' };
  if (week.empty) return { kind: 'empty', decayPercent: away?.decayPercent ?? 0 };
  if (away?.step !== undefined) {
    const { step, steps = step, rungBefore } = away;
    return { kind: 'return', step, steps, ...(rungBefore === undefined ? {} : { rungBefore }) };
  }
  if (returnStageOn(grid.athlete, week.starts) !== undefined) return { kind: 'return' };
  if (taper !== undefined) return { kind: 'taper', ...taper };
  return phase === 'hold' ? { kind: 'hold' } : undefined;
}

interface TaperStep {
  readonly step: number;
  readonly steps: number;
}

/** The last weeks that aren't empty of each segment that ends in a peak; a held one and a foundation have none. */
function taperSteps(grid: AthleteGrid, phases: AthletePhases): ReadonlyMap<number, TaperStep> {
  const tapers = new Map<number, TaperStep>();
  for (const [at, segment] of phases.segments.entries()) {
    if (segment.peak === undefined || segment.form === 'hold' || segment.form === 'foundation') continue;
    const before = phases.segments[at - 1];
    // The part before the season opens is of one segment with it, but not where it ended in a peak of its own.
    const joined = segment.form === 'in-season' && before?.form === 'path' && before.peak === undefined;
    const from = joined && before.until + 1 === segment.from ? before.from : segment.from;
    const open = grid.weeks.slice(from, segment.until + 1).filter((week) => !week.empty);
    const long = open.length >= SEASON_SHAPE.longTaperFromWeeks;
    const steps = Math.min(long ? SEASON_SHAPE.longTaperWeeks : SEASON_SHAPE.shortTaperWeeks, open.length);
    open.slice(-steps).forEach((week, index) => tapers.set(week.index, { step: index + 1, steps }));
  }
  return tapers;
}

function withDeloads(
  book: RuleBook,
  grid: AthleteGrid,
  phases: AthletePhases,
  kinds: readonly (KindWeek | undefined)[],
): readonly KindWeek[] {
  const found = [...kinds];
  const loadable = grid.weeks.map((week): LoadableWeek | undefined => {
    const phase = phases.weeks[week.index]?.phase;
    const kind = kinds[week.index];
    if (kind !== undefined && kind.kind !== 'load' && kind.kind !== 'deload') return undefined;
    if (phase === undefined || !getPhase(phase).deloads) return undefined;
    const next = grid.weeks.slice(week.index + 1).find((one) => !one.empty);
    return {
      tests: week.cells.filter((cell) => cell.test !== undefined).length,
      endsPhase: next === undefined || phases.weeks[next.index]?.phase !== phase,
      ...(kind === undefined ? {} : { pinned: kind.kind === 'deload' }),
      ...rhythm(book, week),
    };
  });
  const deloads = placeDeloads(loadable);
  return found.map((kind, index) => kind ?? { kind: deloads.has(index) ? 'deload' : 'load' });
}

function rhythm(book: RuleBook, week: WeekCells): Pick<LoadableWeek, 'mostInRow' | 'leastBetween'> {
  const range = weekFrom(week.starts);
  if (book.waiver('deload-rhythm', range) !== undefined) return { mostInRow: Infinity, leastBetween: 0 };
  return {
    mostInRow: getRuleValue(book, 'deload-rhythm', 'loading-weeks', range),
    leastBetween: getRuleValue(book, 'deload-rhythm', 'between', range),
  };
}

/** Once for each peak, at its first week. */
function returnsInTapers(
  grid: AthleteGrid,
  phases: AthletePhases,
  tapers: ReadonlyMap<number, TaperStep>,
  kindOf: (week: WeekCells) => KindWeek | undefined,
): Diagnostic[] {
  const told = new Set<Competition | undefined>();
  return grid.weeks.flatMap((week) => {
    const peak = phases.weeks[week.index]?.peak;
    if (!tapers.has(week.index) || told.has(peak) || kindOf(week)?.kind !== 'return') return [];
    told.add(peak);
    return [returnInTaper(grid, phases, week)];
  });
}

function returnInTaper(grid: AthleteGrid, phases: AthletePhases, week: WeekCells): Diagnostic {
  const peak = phases.weeks[week.index]?.peak;
  return problem('schedule/return-in-taper', {
    params: { athlete: grid.athlete.name, week: isoDate(week.starts), peak: peak?.name ?? '' },
    span: grid.athlete.span,
    related: peak === undefined ? [] : [{ span: peak.span, message: 'the peak it would have tapered for' }],
    rule: 'return-ramp',
    athlete: grid.athlete.id,
    week: week.starts,
  });
}

/** Once for each pin, at its first week. */
function pinsOverFoundation(plan: Plan, grid: AthleteGrid): Diagnostic[] {
  const told = new Set<Span>();
  return [...barredPhases(plan, grid)].flatMap(([index, { value, span }]) => {
    const week = grid.weeks[index];
    if (week === undefined || told.has(span)) return [];
    told.add(span);
    return problem('schedule/pin-over-foundation', {
      params: { athlete: grid.athlete.name, week: isoDate(week.starts), phase: value },
      span,
      related: [{ span: grid.athlete.span, message: 'the athlete it is for' }],
      athlete: grid.athlete.id,
      week: week.starts,
    });
  });
}

/** A pin lifts no rule, and the way back is one. */
function pinOverReturn(grid: AthleteGrid, week: WeekCells, pin: PinnedKind): Diagnostic {
  return problem('schedule/pin-over-return', {
    params: { athlete: grid.athlete.name, week: isoDate(week.starts), kind: pin.value },
    span: pin.span,
    related: [{ span: grid.athlete.span, message: 'the athlete it is for' }],
    rule: 'return-ramp',
    athlete: grid.athlete.id,
    week: week.starts,
  });
}
