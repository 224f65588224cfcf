// Findings of the audit, one code `rule/<id>` for each rule of the rule table, and the two of the audit itself.
// Reported by the audit over a compiled build. The files under rules/ follow those of the rule table.

import type { Entries } from '../entry.ts';
import { gateFindings } from './rules/gates.ts';
import { loadFindings } from './rules/loads.ts';
import { sessionFindings } from './rules/sessions.ts';
import { spacingFindings } from './rules/spacing.ts';
import { testFindings } from './rules/tests.ts';
import { volumeFindings } from './rules/volume.ts';

export const rulesEntries = {
  ...volumeFindings,
  ...spacingFindings,
  ...gateFindings,
  ...sessionFindings,
  ...loadFindings,
  ...testFindings,
} as const satisfies Entries;
