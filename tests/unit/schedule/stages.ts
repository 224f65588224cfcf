// The first four stages, one behind the other, for the tests.

import type { Athlete, Plan } from '../../../src/plan/types.ts';
import { ruleBook } from '../../../src/plan/rule-book.ts';
import { planContacts } from '../../../src/schedule/contacts.ts';
import { layGrid } from '../../../src/schedule/grid.ts';
import { planPhases } from '../../../src/schedule/phases.ts';
import { chooseWeekKinds } from '../../../src/schedule/week-kinds.ts';

export function stages(plan: Plan, athlete: Athlete) {
  const book = ruleBook(plan, athlete);
  const grid = layGrid(plan, athlete, book);
  const phases = planPhases(plan, grid);
  const kinds = chooseWeekKinds(plan, book, grid, phases);
  const contacts = planContacts(plan, book, grid, phases, kinds.value);
  return {
    book,
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
