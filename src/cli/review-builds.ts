// The seasons a review is made from: as of its day, and again as of the first day of each week that is looked back on, as
// that is what the week's sheets said. Each is compiled when it is first asked for.

import type { Build } from '../build/types.ts';
import { compilePlan } from '../compile.ts';
import type { Plan } from '../plan/types.ts';
import type { ReviewBuilds } from '../report/review/athlete-review.ts';
import type { Day } from '../util/days.ts';
import type { SheetsOut } from './open-built.ts';

/**
 * Seasons of one plan, with `day` the day of the review and `sheetsOut` what was handed out with `--near`. `withMax` is of
 * the athlete alone, with that maximum in the place of the plan's.
 */
export function reviewBuilds(plan: Plan, day: Day, sheetsOut: SheetsOut = {}): ReviewBuilds {
  const now = compilePlan(plan, { ...sheetsOut, asOf: day });
  const sheets = new Map<Day, Build>();
  return {
    now,
    sheetsOf: (starts) => {
      const known = sheets.get(starts) ?? compilePlan(plan, { ...sheetsOut, asOf: starts });
      sheets.set(starts, known);
      return known;
    },
    withMax: (athlete, max) => {
      const changed = { ...athlete, lifts: new Map([...athlete.lifts, [max.lift, max]]) };
      const athletes = plan.athletes.map((one) => (one.id === athlete.id ? changed : one));
      return compilePlan({ ...plan, athletes }, { ...sheetsOut, asOf: day }).athlete(changed);
    },
  };
}
