// Every rule of the table has a file in the audit, a place in the walk, a code in the catalogue and a test.

import { existsSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { AUDIT_RULES } from '../../../src/audit/rules.ts';
import { findEntry } from '../../../src/diagnostics/catalogue.ts';
import { RULES, RULE_IDS } from '../../../src/library/rules.ts';

const here = new URL('.', import.meta.url);
const files = new URL('../../../src/audit/rules/', import.meta.url);

describe('the rule table', () => {
  it('is walked whole and in its order', () => {
    expect(AUDIT_RULES.map((rule) => rule.id)).toEqual(RULE_IDS);
  });

  it('has one file for each rule and no others', () => {
    expect(readdirSync(files).sort()).toEqual(RULE_IDS.map((id) => `${id}.ts`).sort());
  });

  it.each(RULE_IDS)('%s has a test', (id) => {
    expect(existsSync(new URL(`${id}.test.ts`, here))).toBe(true);
  });

  it.each(RULES)('$id has a code with the severity of its row', (rule) => {
    expect(findEntry(`rule/${rule.id}`)?.severity).toBe(rule.severity);
  });
});
