// What the audit finds of one rule in a season made by hand, and what a waiver does to it. Used by each rule's test.

import { expect } from 'vitest';
import { auditAthlete, auditPlan } from '../../../src/audit/audit.ts';
import type { Diagnostic } from '../../../src/diagnostics/types.ts';
import { getRule } from '../../../src/library/rules.ts';
import type { RuleId } from '../../../src/library/rules.ts';
import { makeBuild, waiver } from './make-build.ts';
import type { SeasonSpec } from './make-build.ts';

/** The findings of one rule. */
export function found(rule: RuleId, spec: SeasonSpec): readonly Diagnostic[] {
  const { plan, built, weeks } = makeBuild(spec);
  return auditAthlete(plan, built, weeks).diagnostics.filter((one) => one.code === `rule/${rule}`);
}

/**
 * That what breaks the rule in `week` is found with the rule's own severity or `severity`, carries the athlete and the
 * week, and is taken out by a waiver, which then counts as needed; or that no waiver takes it out, where the rule can't
 * be waived.
 */
export function expectFinding(rule: RuleId, spec: SeasonSpec, week: number, severity = getRule(rule).severity): void {
  const plain = found(rule, spec);
  expect(plain.map((one) => one.severity)).toContain(severity);
  expect(plain.every((one) => one.rule === rule && one.athlete === 'ada' && one.span !== undefined)).toBe(true);
  for (const { message } of plain) {
    expect(message).toContain('ada');
    expect(message).not.toMatch(/undefined|NaN|Infinity|\d\.\d{3}/u);
  }
  const { plan, built, weeks } = makeBuild({ ...spec, plan: { ...spec.plan, waivers: [waiver(rule, week)] } });
  expect(plain.some((one) => one.week === weeks[week - 1]?.starts)).toBe(true);
  const audit = auditAthlete(plan, built, weeks);
  const left = audit.diagnostics.filter((one) => one.code === `rule/${rule}` && one.week === weeks[week - 1]?.starts);
  if (getRule(rule).waivable) {
    expect(left).toEqual([]);
    expect([...audit.freed]).toEqual(plan.waivers);
    expect(auditPlan(plan, audit.freed)).toEqual([]);
  } else {
    expect(left.length).toBeGreaterThan(0);
    expect(audit.freed.size).toBe(0);
  }
}

/** That nothing of the rule is found. */
export function expectSilent(rule: RuleId, spec: SeasonSpec): void {
  expect(found(rule, spec).map((one) => one.message)).toEqual([]);
}
