// The parameters of the rules for one athlete, week by week: the rule book's values, asked for only where the plan
// changes a rule for this athlete. Read by every rule, and by the reading of sessions and of the adapted volume.

import type { Athlete, DayRange, Plan } from '../plan/types.ts';
import type { Level } from '../library/types.ts';
import { getRuleValue, ruleBook } from '../plan/rule-book.ts';
import { findParameter, getDefault } from '../library/rules.ts';
import type { RuleId } from '../library/rules.ts';
import { itemsOf } from '../plan/items-of.ts';

/** A parameter's value in a week, in the unit of the rule table. */
export type Parameter<T> = (week: { readonly range: DayRange }) => T;

export interface Parameters {
  readonly parameter: (rule: RuleId, name: string) => Parameter<number>;
  readonly openParameter: (rule: RuleId, name: string) => Parameter<number | undefined>;
}

/** The rules' numbers as they stand for the athlete. A parameter that the rule table doesn't have throws. */
export function readParameters(plan: Plan, athlete: Athlete): Parameters {
  const changed = new Set(itemsOf(plan, athlete).ruleChanges.map(({ rule }) => rule));
  if (changed.size === 0) return DEFAULTS;
  const book = ruleBook(plan, athlete);
  return {
    parameter: (rule, name) =>
      changed.has(rule) ? (week) => getRuleValue(book, rule, name, week.range) : DEFAULTS.parameter(rule, name),
    openParameter: (rule, name) =>
      changed.has(rule) ? (week) => book.value(rule, name, week.range) : DEFAULTS.openParameter(rule, name),
  };
}

const DEFAULTS: Parameters = {
  parameter: (rule, name) => {
    const value = getDefault(rule, name);
    return () => value;
  },
  openParameter: (rule, name) => {
    const value = findParameter(rule, name)?.value;
    return () => value;
  },
};

/** A parameter that the rule table gives for each level, under the level's own name with a prefix or an ending. */
export function parameterByLevel(
  parameters: Parameters,
  rule: RuleId,
  { prefix = '', ending = '' }: { readonly prefix?: string; readonly ending?: string } = {},
): (week: { readonly range: DayRange }, level: Level) => number {
  const named = (level: Level): Parameter<number> => parameters.parameter(rule, `${prefix}${level}${ending}`);
  const values = {
    beginner: named('beginner'),
    intermediate: named('intermediate'),
    advanced: named('advanced'),
  };
  return (week, level) => values[level](week);
}
