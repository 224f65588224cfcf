// Who stands on the way back on the day of a competition and is counted into it all the same: its jumps, the days kept free
// around it, its line on the card. Asked for once a plan has no errors, as the coach may mean it.

import { problem } from '../diagnostics/problem.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import { isoDate } from '../util/days.ts';
import { returnStageOn } from './athlete-facts.ts';
import { itemsOf } from './items-of.ts';
import type { Athlete, Plan } from './types.ts';

/** One notice for each athlete, at the stage in force. */
export const returningCompetes = (plan: Plan): readonly Diagnostic[] =>
  plan.athletes.flatMap((athlete) => (athlete.returning.length === 0 ? [] : competing(plan, athlete)));

function competing(plan: Plan, athlete: Athlete): readonly Diagnostic[] {
  const { starts, ends } = plan.season;
  const counted = itemsOf(plan, athlete)
    .competitions.filter(({ range: { from } }) => starts <= from && from <= ends)
    .filter(({ range }) => returnStageOn(athlete, range.from) !== undefined)
    .toSorted((a, b) => a.range.from - b.range.from);
  const [first] = counted;
  const stage = first === undefined ? undefined : returnStageOn(athlete, first.range.from);
  if (first === undefined || stage === undefined) return [];
  const params = {
    athlete: athlete.id,
    stage: stage.stage,
    of: stage.of,
    competition: first.name,
    date: isoDate(first.range.from),
    more: counted.length - 1,
  };
  const related = [{ span: first.span, message: 'the competition' }];
  return [problem('plan/returning-competes', { params, span: stage.span, related, athlete: athlete.id })];
}
