// Weeks in a row in which an athlete doesn't jump, read from the build's weeks and the plan's closures. Read by the
// adapted volume and by the rules on coming back. A week of transition is a rest that was meant, and no time away.

import type { Athlete, Plan, Slot, Trained } from '../plan/types.ts';
import { appliesTo, overlap } from '../plan/applies.ts';
import type { RunAway, WeekReading } from './season-reading.ts';

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
    for (let week = weeks[until]; week !== undefined && isAway(week); week = weeks[++until]) {
      trained.push(leastTrained(plan, athlete, slots, week));
    }
    const counted = trained.filter((one) => one === 'none').length;
    trained.forEach((one, index) => (runs[from + index] = { counted, trained: one }));
    from = until + 1;
  }
  return runs;
}

/** An empty week, or one that the record shows without jumps. */
function isAway({ built, contacts }: WeekReading): boolean {
  return built.kind === 'empty' || (built.done && built.kind !== 'transition' && contacts === 0);
}

const LEAST_FIRST: readonly Trained[] = ['none', 'some', 'full'];

function leastTrained(plan: Plan, athlete: Athlete, slots: readonly Slot[], week: WeekReading): Trained {
  if (athlete.limits.some((limit) => overlap(limit.range, week.range) && forbidsAll(limit))) return 'none';
  const marks = new Set<Trained>();
  for (const away of athlete.away) if (overlap(away.range, week.range)) marks.add(away.trained);
  for (const closure of plan.closures) {
    if (!overlap(closure.range, week.range) || !appliesTo(closure.who, athlete)) continue;
    const { places } = closure;
    if (places === undefined || slots.some((slot) => places.includes(slot.place.id))) marks.add(closure.trained);
  }
  return LEAST_FIRST.find((one) => marks.has(one)) ?? 'none';
}

function forbidsAll(limit: { readonly contactsASession?: number; readonly contactsAWeek?: number }): boolean {
  return limit.contactsASession === 0 || limit.contactsAWeek === 0;
}
