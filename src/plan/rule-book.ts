// The rules as they stand for one athlete: the library's parameters, with what the plan changes under `rules:` put in
// their place, and the waivers. Scheduler and audit both read it; what they do with the numbers they each do alone.

import type { Athlete, DayRange, Plan, RuleChange, Waiver } from './types.ts';
import { findParameter, getRule } from '../library/rules.ts';
import type { RuleId } from '../library/rules.ts';
import { overlap } from './applies.ts';
import { itemsOf } from './items-of.ts';

export interface RuleBook {
  /**
   * A parameter's value over a range, in the unit its rule names; undefined where there is none until a plan sets it.
   * Where several changes touch the range the strictest counts, so that the order of files can't matter.
   */
  readonly value: (rule: RuleId, parameter: string, range: DayRange) => number | undefined;
  /** The changes of a rule in force in a range. */
  readonly changes: (rule: RuleId, range: DayRange) => readonly RuleChange[];
  /** The waiver that frees a rule in a range, or undefined. A rule that can't be waived is never free. */
  readonly waiver: (rule: RuleId, range: DayRange) => Waiver | undefined;
}

const NO_CHANGES: readonly RuleChange[] = [];

/** The rules for one athlete of the plan; the changes and waivers of others don't count. */
export function ruleBook(plan: Plan, athlete: Athlete): RuleBook {
  const { ruleChanges: changes, ...items } = itemsOf(plan, athlete);
  const waivers = items.waivers.filter((waiver) => getRule(waiver.rule).waivable);
  const changed = new Set<string>(changes.map(({ rule }) => rule));
  const inForce = (rule: RuleId, range: DayRange): readonly RuleChange[] =>
    changed.has(rule) ? changes.filter((change) => change.rule === rule && overlap(change.range, range)) : NO_CHANGES;
  return {
    value: (rule, parameter, range) => parameterValue(rule, parameter, inForce(rule, range)),
    changes: inForce,
    waiver: (rule, range) =>
      waivers.length === 0 ? undefined : waivers.find((waiver) => waiver.rule === rule && overlap(waiver.range, range)),
  };
}

function parameterValue(ruleId: RuleId, name: string, changes: readonly RuleChange[]): number | undefined {
  const parameter = findParameter(ruleId, name);
  if (parameter === undefined) throw new Error(`rule ${ruleId} has no parameter ${name}`);
  if (changes.length === 0) return parameter.value;
  const written = changes.flatMap((change) => change.parameters.get(name) ?? []);
  if (written.length === 0) return parameter.value;
  return parameter.stricter === 'smaller' ? Math.min(...written) : Math.max(...written);
}

/** As `value`, for a parameter the library always sets. */
export function getRuleValue(book: RuleBook, rule: RuleId, parameter: string, range: DayRange): number {
  const value = book.value(rule, parameter, range);
  if (value === undefined) throw new Error(`rule ${rule} has no value for ${parameter}`);
  return value;
}
