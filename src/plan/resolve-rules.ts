// Changed rule parameters and waivers. Called by resolve.ts. A rule that can't be waived may be made stricter and never
// looser: what it protects is not the coach's to put aside, and the refusal says why.

import { at } from '../language/authored.ts';
import type { Item, Located, RuleItem } from '../language/authored.ts';
import type { ListFields } from '../language/sections.ts';
import { problem } from '../diagnostics/problem.ts';
import { findRule, getRule, RULE_IDS } from '../library/rules.ts';
import type { RuleId, RuleRow } from '../library/rules.ts';
import type { RuleParameter } from '../library/types.ts';
import { inWords } from '../util/in-words.ts';
import { isBound, namesOf, whoOf } from './bind-names.ts';
import { inOrder } from './in-order.ts';
import { rangeOf, warnOutside } from './ranges.ts';
import type { Scope } from './scope.ts';
import type { RuleChange, Waiver } from './types.ts';

/** In the order of the rule table. */
export function resolveRuleChanges(scope: Scope): readonly RuleChange[] {
  const changes = scope.authored.rules.flatMap((change) => resolveRuleChange(scope, change) ?? []);
  return inOrder(changes, ({ rule }) => RULE_IDS.indexOf(rule));
}

function resolveRuleChange(scope: Scope, { rule: id, item }: RuleItem): RuleChange | undefined {
  const rule = findRule(id);
  if (rule === undefined) return undefined;
  const who = whoOf(scope, item, item.value);
  const range = rangeOf(scope, item, item.value);
  const parameters = parametersOf(rule, item);
  const isAllowed = [...parameters].filter(([name, value]) => isLoosened(scope, rule, item, name, value)).length === 0;
  if (item.kind === 'broken') return undefined;
  if (parameters.size === 0) {
    const names = inWords(
      rule.parameters.map(({ name }) => name),
      'and',
    );
    scope.report(problem('plan/rule-unchanged', { ...at(item), params: { rule: id, parameters: names }, rule: id }));
    return undefined;
  }
  if (who === undefined || range === undefined || !isAllowed) return undefined;
  warnOutside(scope, item, range, item.value.until === undefined ? 'from' : 'until');
  return { rule: rule.id, parameters, range, who, because: item.value.because, span: item.span };
}

function parametersOf(rule: RuleRow, item: RuleItem['item']): ReadonlyMap<string, number> {
  return new Map(
    rule.parameters.flatMap(({ name }): [string, number][] => {
      const value: unknown = item.value[name];
      return typeof value === 'number' ? [[name, value]] : [];
    }),
  );
}

function isLoosened(scope: Scope, rule: RuleRow, item: Located, name: string, value: number): boolean {
  const parameter = rule.parameters.find((one) => one.name === name);
  if (rule.waivable || parameter?.value === undefined || !isLooser(parameter, parameter.value, value)) return false;
  const params = {
    rule: rule.id,
    parameter: name,
    value,
    usual: parameter.value,
    unit: parameter.unit,
    stricter: parameter.stricter,
    why: rule.refusal ?? '',
  };
  scope.report(problem('plan/rule-loosened', { ...at(item, name), params, rule: rule.id }));
  return true;
}

function isLooser({ stricter }: RuleParameter, usual: number, value: number): boolean {
  return stricter === 'smaller' ? value > usual : value < usual;
}

/** In order of rule, first day. */
export function resolveWaivers(scope: Scope): readonly Waiver[] {
  const waivers = scope.authored.waivers.flatMap((item) => resolveWaiver(scope, item) ?? []);
  return inOrder(waivers, ({ rule }) => RULE_IDS.indexOf(rule));
}

function resolveWaiver(scope: Scope, item: Item<ListFields<'waivers'>>): Waiver | undefined {
  const { value } = item;
  const rule = value.rule === undefined ? undefined : waivableRule(scope, item, value.rule);
  const who = whoOf(scope, item, value);
  const range = rangeOf(scope, item, value);
  const isDecided = rule === undefined || isDecidedBy(scope, item, rule);
  if (item.kind === 'broken') return undefined;
  if (value.week === undefined && (value.from === undefined || value.until === undefined)) {
    scope.report(problem('plan/waiver-undated', at(item)));
    return undefined;
  }
  if (rule === undefined || who === undefined || range === undefined || !isDecided) return undefined;
  warnOutside(scope, item, range, value.week === undefined ? 'until' : 'week');
  const { because, decided } = item.value;
  return { rule, range, who, because, ...(decided !== undefined && { decided }), span: item.span };
}

function waivableRule(scope: Scope, item: Located, name: string): RuleId | undefined {
  if (!isBound(scope, namesOf('rule', new Set<string>(RULE_IDS)), name, item, 'rule')) return undefined;
  const rule = getRule(name);
  if (rule.waivable) return rule.id;
  scope.report(
    problem('plan/not-waivable', { ...at(item, 'rule'), params: { rule: name, why: rule.refusal ?? '' }, rule: name }),
  );
  return undefined;
}

function isDecidedBy(scope: Scope, item: Item<ListFields<'waivers'>>, rule: RuleId): boolean {
  if (getRule(rule).whoDecided !== true || item.value.decided !== undefined) return true;
  scope.report(problem('plan/waiver-undecided', { ...at(item, 'rule'), params: { rule }, rule }));
  return false;
}
