// Which day a plan was planned on where nobody named one: the record says, and whoever stopped keeping it would not see
// that weeks since then count as they were planned.

import { dayAfterRecord } from '../compile.ts';
import type { Plan } from '../plan/types.ts';
import { isoDate } from '../util/days.ts';
import type { Day } from '../util/days.ts';
import type { Session } from './session.ts';

/** Told on standard error, of a plan that has a record. */
export async function tellDay(plan: Plan, session: Session): Promise<void> {
  const day = dayAfterRecord(plan);
  if (day === undefined) return;
  await session.err.write(
    `footfall: planned as of ${isoDate(day)}, the day after the last record; --as-of names another\n`,
  );
}

/** For a plan that is built again with every save: tells the day of the first, and later where a save has moved it. */
export function dayTeller(session: Session): (plan: Plan) => Promise<void> {
  let told: Day | undefined;
  return async (plan) => {
    const day = dayAfterRecord(plan);
    if (day === told) return;
    told = day;
    if (day !== undefined) await tellDay(plan, session);
    else await session.err.write('footfall: nothing is on the record any more: all weeks are as the plan has them\n');
  };
}

/** Told of two plans where their records end on different days, as that alone changes sheets. */
export async function tellTwoDays(before: Plan | undefined, after: Plan | undefined, session: Session): Promise<void> {
  const [old, fresh] = [before, after].map((plan) => plan && dayAfterRecord(plan));
  if (before === undefined || after === undefined || old === fresh) return;
  const words = [old, fresh].map((day) => (day === undefined ? 'the plan alone' : isoDate(day)));
  await session.err.write(
    `footfall: the old one goes by ${words[0]}, the new one by ${words[1]}, each by the day after its last record; --as-of names one day for both\n`,
  );
}
