// What a well-formed plan can get wrong: names that stand for nothing, dates out of order, values nobody can have.
// Reported while names are bound and defaults filled.

import type { Entries } from '../entry.ts';
import { calendarEntries } from './plan/calendar.ts';
import { decisionsEntries } from './plan/decisions.ts';
import { namesEntries } from './plan/names.ts';
import { peopleEntries } from './plan/people.ts';

export const planEntries = {
  ...calendarEntries,
  ...peopleEntries,
  ...decisionsEntries,
  ...namesEntries,
} as const satisfies Entries;
