// The lines of the plan that keep days of a week from jumping or lifting, where there is a slot for it: what the reasons
// of a week with too few days name. Called by contacts/week-facts.ts and days/day-reasons.ts.

import { holds } from '../plan/applies.ts';
import { itemsOf } from '../plan/items-of.ts';
import type { Athlete, Plan, Slot } from '../plan/types.ts';
import type { Span } from '../source/types.ts';
import { weekdayOf } from '../util/days.ts';
import type { DayCell } from './types.ts';
import { pinsWith } from './pins-with.ts';

const NONE_FOR = { jumps: 'lifts', lifts: 'jumps' } as const;

/** Each line once, in order of day. */
export function closingLines(
  plan: Plan,
  athlete: Athlete,
  cells: readonly DayCell[],
  use: 'jumps' | 'lifts',
): readonly Span[] {
  const { slots, pins } = itemsOf(plan, athlete);
  const rests = pinsWith(pins, 'rest');
  const takes = (slot: Slot): boolean => slot.use !== NONE_FOR[use];
  const lines = cells.flatMap((cell) => {
    const due = slots.some((slot) => slot.day === weekdayOf(cell.day) && holds(slot.range, cell.day) && takes(slot));
    if (!due) return [];
    const rest = rests.find((pin) => holds(pin.range, cell.day));
    return rest?.span ?? closedBy(cell, use) ?? [];
  });
  return [...new Set(lines)];
}

/** An event keeps jumps from the days beside it; lifting it only makes light. */
function closedBy({ barred, barredBy }: DayCell, use: 'jumps' | 'lifts'): Span | undefined {
  const closes = use === 'jumps' || barred === 'closed' || barred === 'away' || barred === 'competition';
  return closes ? barredBy : undefined;
}
