// The weekly rise it would take to have so many contacts in a given week, every other bound standing. Called by
// `footfall reach`.

import { ruleBook } from '../plan/rule-book.ts';
import type { Athlete, Plan } from '../plan/types.ts';
import { ceilingLine } from './contacts/search.ts';
import type { WeekTerms } from './contacts/terms.ts';
import { weekTerms } from './contacts/week-terms.ts';
import { layGrid } from './grid.ts';
import { planPhases } from './phases.ts';
import { chooseWeekKinds } from './week-kinds.ts';

/** Rises in per cent that are tried, up to this. */
export const MOST_PERCENT = 100;

/** Whole per cent; undefined where no rise of 100 % or less does it. `week` counts from 0. */
export function riseNeeded(plan: Plan, athlete: Athlete, contacts: number, week: number): number | undefined {
  const book = ruleBook(plan, athlete);
  const grid = layGrid(plan, athlete, book);
  const phases = planPhases(plan, grid);
  const kinds = chooseWeekKinds(plan, book, grid, phases);
  const { contactsASession, sessionsAWeek } = athlete.now.value;
  return riseFor(weekTerms(plan, book, grid, phases, kinds.value), contactsASession * sessionsAWeek, contacts, week);
}

/** As `riseNeeded`, on the terms of the weeks and A before the first. */
function riseFor(terms: readonly WeekTerms[], adapted: number, contacts: number, week: number): number | undefined {
  for (let percent = 1; percent <= MOST_PERCENT; percent += 1) {
    const line = ceilingLine(
      terms.slice(0, week + 1).map((one) => withRise(one, percent)),
      adapted,
    );
    if ((line[week]?.most ?? 0) >= contacts) return percent;
  }
  return undefined;
}

/** The week as it would be with another weekly rise; less than it has changes nothing. */
export function withRise(terms: WeekTerms, percent: number): WeekTerms {
  if (terms.growth.kind !== 'rise') return terms;
  return { ...terms, growth: { ...terms.growth, percent: Math.max(percent, terms.growth.percent) } };
}
