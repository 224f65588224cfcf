// The first four stages, one behind the other, for the tests.

import type { Day } from '../../../src/util/days.ts';
import type { Athlete, Plan } from '../../../src/plan/types.ts';
import { ruleBook } from '../../../src/plan/rule-book.ts';
import { planContacts } from '../../../src/schedule/contacts.ts';
import { seasonTerms } from '../../../src/schedule/season-terms.ts';

export function stages(plan: Plan, athlete: Athlete, asOf?: Day) {
  const season = seasonTerms(plan, athlete, asOf);
  const { grid, phases, kinds } = season;
  const contacts = planContacts(plan, season, asOf);
  return {
    book: ruleBook(plan, athlete),
    grid,
    phases,
    kinds: kinds.value,
    contacts: contacts.value,
    diagnostics: [...kinds.diagnostics, ...contacts.diagnostics],
  };
}

/** Phases as runs: `H4 S4` for four weeks of hypertrophy and four of strength. */
export function runs(phases: readonly { readonly phase: string }[]): string {
  const found: { phase: string; weeks: number }[] = [];
  for (const { phase } of phases) {
    const last = found.at(-1);
    if (last?.phase === phase) last.weeks += 1;
    else found.push({ phase, weeks: 1 });
  }
  return found.map(({ phase, weeks }) => `${phase} ${weeks}`).join(', ');
}
