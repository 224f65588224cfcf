// What is known of one week of one athlete before its contacts are worked out: phase, kind, level, usable days, pins.
// Made once a week by ../contacts/week-terms.ts and read by it and by session-ceilings.ts.

import { getPhase } from '../../library/phases.ts';
import type { Level, PhaseRow } from '../../library/types.ts';
import { VOLUME } from '../../library/volume.ts';
import { overlap, weekFrom } from '../../plan/applies.ts';
import { levelOn } from '../../plan/athlete-facts.ts';
import { itemsOf } from '../../plan/items-of.ts';
import { getRuleValue } from '../../plan/rule-book.ts';
import type { RuleBook } from '../../plan/rule-book.ts';
import type { Athlete, DayRange, Pin, Plan, Slot } from '../../plan/types.ts';
import { weekdayOf } from '../../util/days.ts';
import type { Day } from '../../util/days.ts';
import type { Span } from '../../source/types.ts';
import { closingLines } from '../closed-days.ts';
import { usualOtherJumps } from '../done-jumps.ts';
import { findPrimerDay } from '../grid.ts';
import { weekProgramme } from './week-programme.ts';
import type { WeekProgramme } from './week-programme.ts';
import type { AthleteGrid, AthletePhases, DayCell, KindWeek, WeekCells } from '../types.ts';
import { PERCENT } from '../../util/units.ts';

export interface WeekFacts {
  readonly plan: Plan;
  readonly athlete: Athlete;
  readonly book: RuleBook;
  readonly week: WeekCells;
  readonly range: DayRange;
  readonly kind: KindWeek;
  readonly phase: PhaseRow;
  readonly level: Level;
  readonly usable: readonly DayCell[];
  /** Where nothing is usable before an event: the day of a short primer, if one is open. */
  readonly primer: DayCell | undefined;
  /** The days whose level and limits count: those that may hold jumps, or the week's first where none may. */
  readonly jumpDays: readonly Day[];
  readonly programme: WeekProgramme | undefined;
  readonly frequency: number;
  /** Other jumping rises by more than the load should bear at once. */
  readonly otherJumpsRise: boolean;
  readonly decisive: boolean;
}

/** The facts of one week. */
export function weekFacts(
  plan: Plan,
  book: RuleBook,
  grid: AthleteGrid,
  phases: AthletePhases,
  kinds: readonly KindWeek[],
  week: WeekCells,
): WeekFacts {
  const range = weekFrom(week.starts);
  const phase = getPhase(phases.weeks[week.index]?.phase ?? 'closed');
  const kind = kinds[week.index] ?? { kind: 'load' };
  const usable = usableDays(plan, grid.athlete, week, range);
  const idle = kind.kind === 'empty' || kind.kind === 'transition';
  const primer = idle || usable.length > 0 ? undefined : findPrimerDay(week.cells);
  const jumpDays = usable.length > 0 ? usable.map((cell) => cell.day) : [primer?.day ?? week.starts];
  const level = levelOn(grid.athlete, jumpDays[0] ?? week.starts);
  const segment = phases.segments[phases.weeks[week.index]?.segment ?? -1];
  return {
    plan,
    athlete: grid.athlete,
    book,
    week,
    range,
    kind,
    phase,
    level,
    usable: idle ? [] : usable,
    primer,
    jumpDays,
    programme: weekProgramme(plan, grid.athlete, week),
    frequency: idle
      ? 0
      : Math.min(phase.jumpSessions?.[level] ?? 0, getRuleValue(book, 'session-frequency', `${level}-most`, range)),
    otherJumpsRise: risesTooFast(week.otherJumps, grid.weeks[week.index - 1]),
    decisive:
      kind.kind === 'load' && segment !== undefined && segment.form !== 'hold' && week.index >= segment.lastPhaseFrom,
  };
}

function risesTooFast(now: number, before: WeekCells | undefined): boolean {
  return before !== undefined && now * PERCENT > usualOtherJumps(before) * (PERCENT + VOLUME.otherJumpsRise);
}

/** Days usable for jumps, narrowed to those the coach names for the week. */
function usableDays(plan: Plan, athlete: Athlete, week: WeekCells, range: DayRange): readonly DayCell[] {
  const usable = week.cells.filter((cell) => cell.usable);
  const named = pinsIn(plan, athlete, range).flatMap((pin) =>
    pin.effects.flatMap((effect) => (effect.kind === 'on' ? effect.days : [])),
  );
  return named.length === 0 ? usable : usable.filter((cell) => named.includes(weekdayOf(cell.day)));
}

/** Lines of the plan that keep days of a week from jumps: what closes them, or a pin that names others. */
export function closedBy({ plan, athlete, week, range }: WeekFacts): readonly Span[] {
  const naming = pinsIn(plan, athlete, range).filter(({ effects }) => effects.some(({ kind }) => kind === 'on'));
  return [...closingLines(plan, athlete, week.cells, 'jumps'), ...naming.map(({ span }) => span)];
}

/** The pins in force on a day of a range. */
export function pinsIn(plan: Plan, athlete: Athlete, range: DayRange): readonly Pin[] {
  return itemsOf(plan, athlete).pins.filter((pin) => overlap(pin.range, range));
}

/** The slot a jump session of this day would take: the longest that takes jumps. */
export function jumpSlot(cell: DayCell): Slot | undefined {
  const slots = cell.slots.filter((slot) => slot.use !== 'lifts');
  return slots.reduce<Slot | undefined>(
    (best, slot) => (best === undefined || slot.minutes > best.minutes ? slot : best),
    undefined,
  );
}
