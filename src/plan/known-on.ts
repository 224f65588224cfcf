// A plan as it was on an earlier day: with the rows of the record before it. Called by ../compile.ts, and by
// schedule/first-stages.ts for what the sheets of a week under way said.

import type { Day } from '../util/days.ts';
import type { Plan } from './types.ts';

/** The plan with what was recorded before a day. */
export function knownOn(plan: Plan, day: Day): Plan {
  const before = <T extends { readonly day: Day }>(rows: readonly T[]): readonly T[] =>
    rows.filter((row) => row.day < day);
  return { ...plan, record: { done: before(plan.record.done), tests: before(plan.record.tests) } };
}
