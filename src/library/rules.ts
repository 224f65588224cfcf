// The rule table: every rule as one row of data, in the order it is printed. The scheduler obeys the rows, the audit
// checks them with code of its own, `footfall rules` prints them. A number that a plan may change stands here only.

import { GATE_RULES } from './rules/gates.ts';
import { RULE_IDS } from './rules/ids.ts';
import type { RuleId } from './rules/ids.ts';
import { LOAD_RULES } from './rules/loads.ts';
import type { RuleRow } from './rules/rule-row.ts';
import { SESSION_RULES } from './rules/sessions.ts';
import { SPACING_RULES } from './rules/spacing.ts';
import { TEST_RULES } from './rules/tests.ts';
import { VOLUME_RULES } from './rules/volume.ts';
import type { Level, RuleParameter } from './types.ts';

export { RULE_IDS } from './rules/ids.ts';
export type { RuleId } from './rules/ids.ts';
export type { RuleRow } from './rules/rule-row.ts';

const BY_ID: ReadonlyMap<string, RuleRow> = new Map(
  [...VOLUME_RULES, ...SPACING_RULES, ...GATE_RULES, ...SESSION_RULES, ...LOAD_RULES, ...TEST_RULES].map((rule) => [
    rule.id,
    rule,
  ]),
);

/** Every rule, in the order of RULE_IDS. */
export const RULES: readonly RuleRow[] = RULE_IDS.map((id) => getRule(id));

/** The rule of that id. Throws for an id that is no rule's: what a person wrote goes through `findRule` first. */
export function getRule(id: string): RuleRow {
  const rule = BY_ID.get(id);
  if (rule === undefined) throw new Error(`no row for the rule ${id}`);
  return rule;
}

/** The rule of an id a person wrote, if there is one. */
export function findRule(id: string): RuleRow | undefined {
  return BY_ID.get(id);
}

/** The parameter of that name, if the rule has one. Asked for more often than anything else, so nothing is made for it. */
export function findParameter(id: RuleId, name: string): RuleParameter | undefined {
  const { parameters } = getRule(id);
  for (let index = 0; index < parameters.length; index += 1)
    if (parameters[index]?.name === name) return parameters[index];
  return undefined;
}

/** The default of a rule's parameter, an integer in the parameter's unit. Throws for one that has no default. */
export function getDefault(id: RuleId, name: string): number {
  const value = findParameter(id, name)?.value;
  if (value === undefined) throw new Error(`the rule ${id} has no default for ${name}`);
  return value;
}

/** The default ceiling of a session, in contacts, by level and by whether the week is in season. */
export function getSessionCeiling(level: Level, inSeason: boolean): number {
  return getDefault('session-ceiling', inSeason ? `in-season-${level}` : level);
}
