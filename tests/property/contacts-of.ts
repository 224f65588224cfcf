// One athlete's season as far as its contacts, for properties that compare two seasons week by week.

import type { Diagnostic } from '../../src/diagnostics/types.ts';
import type { Athlete, Plan } from '../../src/plan/types.ts';
import { planContacts } from '../../src/schedule/contacts.ts';
import { seasonTerms } from '../../src/schedule/season-terms.ts';
import type { SeasonTerms } from '../../src/schedule/season-terms.ts';
import type { ContactsWeek } from '../../src/schedule/types.ts';

export interface ContactsSeason extends SeasonTerms {
  readonly weeks: readonly ContactsWeek[];
  /** What the stage of contacts reports: pins that can't be met. */
  readonly unmet: readonly Diagnostic[];
}

/** Stages 1 to 4. */
export function contactsOf(plan: Plan, athlete: Athlete): ContactsSeason {
  const season = seasonTerms(plan, athlete, undefined);
  const { value: weeks, diagnostics: unmet } = planContacts(plan, season, undefined);
  return { ...season, weeks, unmet };
}
