// What the record says of the weeks that are over, for one athlete. A week without a session in it is not taken for done;
// a session of 0 contacts says that there was none. Called by season-terms.ts, before kinds and contacts are chosen.

import { SEASON_SHAPE } from '../library/phases.ts';
import { holds, weekFrom } from '../plan/applies.ts';
import { doneBy, lastPainBefore, painPlace } from '../plan/done-by.ts';
import { getRuleValue } from '../plan/rule-book.ts';
import type { RuleBook } from '../plan/rule-book.ts';
import type { DoneRow, Plan } from '../plan/types.ts';
import type { Span } from '../source/types.ts';
import type { Day } from '../util/days.ts';
import type { WeekTerms } from './contacts/terms.ts';
import type { AthleteGrid, AthletePhases, RecordedWeek, WeekCells } from './types.ts';
import { DAYS_A_WEEK } from '../util/days.ts';

/** One for each week that is wholly before a day; the weeks behind have none. */
export function recordedWeeks(plan: Plan, grid: AthleteGrid, asOf: Day | undefined): readonly RecordedWeek[] {
  if (asOf === undefined) return [];
  const rows = doneBy(plan.record, grid.athlete.id).filter(({ kind }) => kind === 'session');
  return grid.weeks
    .filter(({ starts }) => starts + DAYS_A_WEEK <= asOf)
    .map(({ starts }) => {
      const range = weekFrom(starts);
      return recordedWeek(rows.filter((row) => holds(range, row.day)));
    });
}

function recordedWeek(rows: readonly DoneRow[]): RecordedWeek {
  return {
    sessions: rows.length,
    contacts: rows.reduce((sum, { contacts = 0 }) => sum + contacts, 0),
    asWritten: rows.filter(({ contacts }) => contacts === undefined).length,
    rows,
  };
}

/**
 * The grid with weeks that are over and had no jumps as empty ones: they are time away. The terms hold what counts of
 * each week. Undefined where there are no more of them than are empty already.
 */
export function withTimeOff(
  grid: AthleteGrid,
  recorded: readonly RecordedWeek[],
  terms: readonly WeekTerms[],
): AthleteGrid | undefined {
  const isOff = ({ index, empty }: WeekCells): boolean =>
    index < recorded.length && !empty && terms[index]?.fixed?.contacts === 0;
  if (!grid.weeks.some(isOff)) return undefined;
  return { ...grid, weeks: grid.weeks.map((week) => (isOff(week) ? { ...week, empty: true } : week)) };
}

export interface PainfulWeek {
  /** Jumps are stopped, or nothing may rise. */
  readonly stops: boolean;
  /** The morning that says so. */
  readonly day: Day;
  readonly pain: number;
  readonly span: Span;
  /** Of a week that is stopped: a later morning on the record that is better. The week stays without jumps to its end. */
  readonly better?: Day;
}

/**
 * What the pain an athlete recorded says about each week: strong pain stops the jumping until a later morning is better,
 * less of it holds for the seven days behind it. G12 (S), as a rule C. Empty where nothing hurts.
 */
export function painfulWeeks(plan: Plan, grid: AthleteGrid, book: RuleBook): ReadonlyMap<number, PainfulWeek> {
  const painful = new Map<number, PainfulWeek>();
  const rows = doneBy(plan.record, grid.athlete.id).filter(({ pain }) => pain !== undefined);
  if (rows.length === 0) return painful;
  for (const { index, starts } of grid.weeks) {
    const range = weekFrom(starts);
    if (book.waiver('pain-hold', range) !== undefined) continue;
    const found = painIn(rows, starts, {
      hold: getRuleValue(book, 'pain-hold', 'hold', range),
      stop: getRuleValue(book, 'pain-hold', 'stop', range),
    });
    if (found !== undefined) painful.set(index, found);
  }
  return painful;
}

/** The worst that holds on any day of the week. */
function painIn(
  rows: readonly DoneRow[],
  starts: Day,
  { hold, stop }: { readonly hold: number; readonly stop: number },
): PainfulWeek | undefined {
  let found: PainfulWeek | undefined;
  for (let day = starts; day < starts + DAYS_A_WEEK; day += 1) {
    const row = lastPainBefore(rows, day);
    if (row?.pain === undefined) continue;
    const { pain } = row;
    const span = painPlace(row);
    if (pain >= stop) return { stops: true, day: row.day, pain, span, ...betterAfter(rows, row.day, stop) };
    if (pain >= hold && day - row.day <= DAYS_A_WEEK) found = { stops: false, day: row.day, pain, span };
  }
  return found;
}

function betterAfter(rows: readonly DoneRow[], day: Day, stop: number): Pick<PainfulWeek, 'better'> {
  const last = lastPainBefore(rows, Number.POSITIVE_INFINITY);
  if (last?.pain === undefined || last.day <= day || last.pain >= stop) return {};
  return { better: last.day };
}

/** Of the weeks that are over and had days for jumps the last two, where nothing is recorded of either; else none. */
export function overdueWeeks(
  recorded: readonly RecordedWeek[],
  grid: AthleteGrid,
  phases: AthletePhases,
): readonly Day[] {
  const isOpen = ({ index, empty }: WeekCells): boolean => !empty && phases.weeks[index]?.phase !== 'transition';
  const open = grid.weeks
    .filter((week) => recorded[week.index] !== undefined && isOpen(week))
    .slice(-SEASON_SHAPE.askedAfterWeeks);
  const isMissing =
    open.length === SEASON_SHAPE.askedAfterWeeks && open.every((week) => recorded[week.index]?.sessions === 0);
  return isMissing ? open.map(({ starts }) => starts) : [];
}
