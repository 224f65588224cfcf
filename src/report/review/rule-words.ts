// A rule with the mark of its evidence, as it stands behind what it does: for decisions that a rule brings about.

import { getRule } from '../../library/rules.ts';
import type { RuleId } from '../../library/rules.ts';

/** `rule pain-hold, C`. */
export function ruleWords(id: RuleId): string {
  const { mark } = getRule(id);
  return mark === null ? `rule ${id}` : `rule ${id}, ${mark}`;
}
