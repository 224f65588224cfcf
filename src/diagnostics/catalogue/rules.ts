// Findings of the audit, one code `rule/<id>` for each rule of the rule table.
// Reported by the audit over a compiled build.

import type { Entries } from '../entry.ts';

export const rulesEntries = {} as const satisfies Entries;
