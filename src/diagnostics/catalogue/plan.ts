// What a well-formed plan can get wrong: names that stand for nothing, dates out of order, values nobody can have.
// Reported while names are bound and defaults filled.

import type { Entries } from '../entry.ts';

export const planEntries = {} as const satisfies Entries;
