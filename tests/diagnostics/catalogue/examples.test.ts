// The catalogue shows a wrong and a right example for each code. Each is set into a plan and checked as `footfall check`
// does: the wrong one is reported with that code, beside it only with what truly belongs to it; the right one with no
// error and not with that code.

import { readFileSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import { catalogue, codes, findEntry } from '../../../src/diagnostics/catalogue.ts';
import type { Code } from '../../../src/diagnostics/catalogue.ts';
import type { Diagnostic } from '../../../src/diagnostics/types.ts';
import type { Day } from '../../../src/util/days.ts';
import { memoryFiles } from '../../unit/read/memory-files.ts';
import type { Files } from '../../unit/read/memory-files.ts';
import { diagnose } from '../diagnose.ts';
import { baseFiles, baseSections, planText } from './base-plan.ts';
import { examplePlan, wrongPlan } from './example-plan.ts';
import { settings } from './settings.ts';

/** Codes whose wrong example no plan of a few lines brings about, each with the test that does. */
const ELSEWHERE: Readonly<Record<string, { readonly because: string; readonly test: string }>> = {
  'audit/adapted-volume': {
    because: 'it would be a mistake of footfall, not of the plan',
    test: 'tests/unit/audit/waivers.test.ts',
  },
  'rule/stations': {
    because: 'the minutes of a session are worked out with the waiting, whatever the plan',
    test: 'tests/unit/audit/stations.test.ts',
  },
  'schedule/sessions-not-held': {
    because: 'it takes a waiver in the week before and several sessions; else the contacts are shared among fewer',
    test: 'tests/unit/days/days.test.ts',
  },
};

/** Codes whose examples are commands on the plans of this repository. */
const COMMANDS: ReadonlySet<string> = new Set(['files/no-season']);

/** An example with an athlete of its own needn't show the birth. */
const BIRTH_NOT_SHOWN: Code = 'plan/born-left-out';

const told = (files: Files, today?: Day): readonly Diagnostic[] =>
  diagnose('/plan', memoryFiles(files), today).diagnostics;

const commanded = (example: string): readonly Diagnostic[] =>
  diagnose(example.replace('footfall build ', '')).diagnostics;

const kinds = (diagnostics: readonly Diagnostic[]): readonly string[] =>
  [...new Set(diagnostics.map(({ code }) => code))].toSorted();

test('nothing is reported of the plan around the examples', () => {
  expect(told({ ...baseFiles, '/plan/season.yaml': planText(baseSections, {}) })).toEqual([]);
});

describe('the wrong example of', () => {
  it.each(codes.filter((code) => !Object.hasOwn(ELSEWHERE, code)))('%s', (code) => {
    const setting = settings[code] ?? {};
    const { bad } = catalogue[code];
    const found = kinds(COMMANDS.has(code) ? commanded(bad) : told(wrongPlan(bad, setting), setting.today));
    expect(found).toContain(code);
    expect([code, BIRTH_NOT_SHOWN, ...(setting.also ?? [])]).toEqual(expect.arrayContaining([...found]));
  });
});

describe('the right example of', () => {
  it.each(codes)('%s', (code) => {
    const setting = settings[code] ?? {};
    const { good } = catalogue[code];
    const found = COMMANDS.has(code) ? commanded(good) : told(examplePlan(good, setting), setting.today);
    expect(kinds(found)).not.toContain(code);
    expect(kinds(found.filter(({ severity }) => severity === 'error'))).toEqual([]);
  });
});

/** Codes that tell of heights or masses that were worked out, not of words in the plan. */
const MEASURED: readonly Code[] = [
  'rule/drop-age',
  'rule/drop-mass',
  'rule/drop-height',
  'rule/drop-strength',
  'rule/kit',
  'rule/load-step',
  'audit/plates-too-coarse',
  'audit/kilos-of-no-maximum',
  'plan/impossible-max',
  'plan/no-first-drop',
];

function inPounds(files: Files): Files {
  const season = files['/plan/season.yaml'];
  const text = typeof season === 'string' ? season : '';
  return { ...files, '/plan/season.yaml': text.replace(/^season: \{/mu, 'season: { units: imperial,') };
}

describe('in a plan of pounds and inches, the wrong example of', () => {
  it.each(MEASURED)('%s', (code) => {
    const setting = settings[code] ?? {};
    const messages = told(inPounds(wrongPlan(catalogue[code].bad, setting)), setting.today)
      .filter((one) => one.code === code)
      .map(({ message }) => message);
    expect(messages.filter((message) => /\d (?:kg|cm)\b|\bkilos\b/u.test(message))).toEqual([]);
    expect(messages.join('\n')).toMatch(/\d (?:lb|in)\b|\bracks\b/u);
  });
});

test('an example that is not run has another test, and one that is run is not on the list', () => {
  for (const [code, { test: path }] of Object.entries(ELSEWHERE)) {
    const rule = code.startsWith('rule/') ? code.slice('rule/'.length) : code;
    expect(readFileSync(path, 'utf8'), path).toContain(rule);
    expect(kinds(told(wrongPlan(findEntry(code)?.bad ?? '', settings[code] ?? {})))).not.toContain(code);
  }
});

test('settings are of codes there are', () => {
  expect(Object.keys(settings).filter((code) => findEntry(code) === undefined)).toEqual([]);
});
