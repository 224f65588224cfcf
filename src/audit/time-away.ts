// Weeks in a row in which an athlete doesn't jump, read from the build's weeks and the plan's closures. Read by the
// adapted volume and by the rules on coming back. A week of transition is a rest that was meant, and no time away.

import type { Athlete, Closure, Limit, Plan, Slot, Trained } from '../plan/types.ts';
import { holds, overlap } from '../plan/applies.ts';
import { limitsOn } from '../plan/athlete-facts.ts';
import { weekdayOf } from '../util/days.ts';
import type { Day } from '../util/days.ts';
import type { RunAway, WeekReading } from './season-reading.ts';
import { itemsOf } from '../plan/items-of.ts';

/** The run that a week belongs to, or undefined where the athlete isn't away; one for each week. */
export function runsAway(
  plan: Plan,
  athlete: Athlete,
  slots: readonly Slot[],
  weeks: readonly WeekReading[],
): readonly (RunAway | undefined)[] {
  const runs: (RunAway | undefined)[] = weeks.map(() => undefined);
  let from = 0;
  while (from < weeks.length) {
    let until = from;
    const trained: Trained[] = [];
    for (let week = weeks[until]; week !== undefined && isAway(week); week = weeks[until]) {
      trained.push(leastTrained(plan, athlete, slots, week));
      until += 1;
    }
    const counted = trained.filter((one) => one === 'none').length;
    const range = { from: weeks[from]?.range.from ?? 0, until: weeks[until - 1]?.range.until ?? 0 };
    trained.forEach((one, index) => (runs[from + index] = { counted, trained: one, range }));
    from = until + 1;
  }
  return runs;
}

/** An empty week, or one that the record shows without jumps. */
function isAway({ built, contacts }: WeekReading): boolean {
  return built.kind === 'empty' || (built.done && built.kind !== 'transition' && contacts === 0);
}

const LEAST_FIRST: readonly Trained[] = ['none', 'some', 'full'];

/**
 * Of all closures and absences that touch the week; where none does, or where a limit alone keeps the athlete from a
 * slot, it was not trained.
 */
function leastTrained(plan: Plan, athlete: Athlete, slots: readonly Slot[], week: WeekReading): Trained {
  const { range } = week;
  const closures = itemsOf(plan, athlete).closures.filter((one) => overlap(one.range, range));
  const away = athlete.away.filter((one) => overlap(one.range, range));
  if (isLimitAlone(athlete, slots, week, closures)) return 'none';
  const concerned = closures.filter(
    ({ places }) => places === undefined || slots.some((slot) => places.includes(slot.place.id)),
  );
  const marks = new Set<Trained>([...away, ...concerned].map((one) => one.trained));
  return LEAST_FIRST.find((one) => marks.has(one)) ?? 'none';
}

function isClosed(places: Closure['places'], slot: Slot): boolean {
  return places === undefined || places.includes(slot.place.id);
}

function isLimitAlone(
  athlete: Athlete,
  slots: readonly Slot[],
  { range }: WeekReading,
  closures: readonly Closure[],
): boolean {
  if (athlete.limits.length === 0) return false;
  for (let day = range.from; day <= range.until; day += 1) {
    if (!limitsOn(athlete, day).some(forbidsAll) || athlete.away.some((one) => holds(one.range, day))) continue;
    const shut = closures.filter((one) => holds(one.range, day));
    if (slots.some((slot) => isOnDay(slot, day) && !shut.some(({ places }) => isClosed(places, slot)))) return true;
  }
  return false;
}

function isOnDay(slot: Slot, day: Day): boolean {
  return slot.use !== 'lifts' && slot.day === weekdayOf(day) && holds(slot.range, day);
}

function forbidsAll(limit: Limit): boolean {
  return limit.contactsASession === 0 || limit.contactsAWeek === 0;
}
