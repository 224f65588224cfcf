// What a plan must never get past the reader, by name: each has a fixture, and the fixture is reported with this code.
// And the other way round: every code of the catalogue is reported by some fixture, or has a test of its own that is
// named here with the reason.

import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { codes } from '../../src/diagnostics/catalogue.ts';
import { fixtures, here } from './fixture-folders.ts';

/** The case, its fixtures, and the code each of them is reported with; no code where nothing is wrong. */
const CASES: readonly (readonly [what: string, fixture: string, code: string | undefined])[] = [
  ['a tab for indentation', 'yaml/tab-indent', 'yaml/tab-indent'],
  ['an unclosed quote', 'yaml/unclosed-quote', 'yaml/unclosed-quote'],
  ['a duplicate key in one file', 'yaml/duplicate-key', 'yaml/duplicate-key'],
  ['a duplicate key across files', 'language/duplicate-key', 'language/duplicate-key'],
  ['an unknown key near a known one', 'language/unknown-key', 'language/unknown-key'],
  ['a key at the wrong level', 'language/misplaced-key', 'language/misplaced-key'],
  ['a bare number', 'language/bare-number', 'language/bare-number'],
  ['a wrong unit', 'language/wrong-unit', 'language/wrong-unit'],
  ['1.76 kg', 'language/out-of-range', 'language/out-of-range'],
  ["a date that doesn't exist", 'language/no-such-date', 'language/no-such-date'],
  ['an end before its start', 'plan/end-before-start', 'plan/end-before-start'],
  ['an athlete in an unknown squad', 'plan/unknown-name', 'plan/unknown-name'],
  ['a competition outside the season', 'plan/competition-outside', 'plan/competition-outside'],
  ['two peaks on one day for one athlete', 'plan/two-peaks', 'plan/two-peaks'],
  ['a slot twice', 'plan/slot-twice', 'plan/slot-twice'],
  ['a pin nobody can meet', 'schedule/pin-too-high', 'schedule/pin-too-high'],
  ['a level that steps down', 'plan/level-steps-down', 'plan/level-steps-down'],
  ['an age under 8', 'plan/too-young', 'plan/too-young'],
  ['a mass of 0', 'language/not-positive', 'language/not-positive'],
  ['`no` where a word is meant', 'language/no-word', 'language/no-word'],
  ['`no` where one of a choice is meant', 'language/no-where-a-choice-is-meant', 'language/wrong-word'],
  ['an alias bomb', 'yaml/alias-bomb', 'yaml/alias-too-large'],
  ['an unknown alias', 'yaml/unknown-alias', 'yaml/unknown-alias'],
  ['a merge key', 'yaml/merge-key', 'yaml/merge-key'],
  ['ten thousand keys', 'language/ten-thousand-keys', 'plan/more'],
  ['ten thousand keys, each twice', 'yaml/ten-thousand-keys-twice', 'yaml/more'],
  ['a thousand levels of nesting', 'yaml/thousand-levels', 'yaml/too-deep'],
  ['a thousand brackets', 'yaml/thousand-brackets', 'yaml/too-deep'],
  ['a 50 MB file', 'source/fifty-megabytes', 'source/too-large'],
  ['a binary file', 'source/binary', 'source/binary'],
  ['a BOM, and CRLF', 'source/bom-and-crlf-are-fine', undefined],
  ['a lone CR', 'source/lone-carriage-return', 'source/lone-carriage-return'],
  ['a no-break space', 'source/no-break-space', 'source/no-break-space'],
  ['a Latin-1 file', 'source/latin-1', 'source/not-utf8'],
  ['an empty file', 'source/empty', 'source/empty'],
  ['a missing file', 'files/missing', 'files/missing'],
  ['a missing entry file', 'files/missing-entry', 'files/missing'],
  ['a folder where a file should be', 'files/folder', 'files/folder'],
  ['a glob that matches nothing', 'files/no-match', 'files/no-match'],
  ['a path out of the plan folder: up, from the root, from home, of Windows', 'files/outside', 'files/outside'],
  ['a link out of the plan folder', 'files/link-outside', 'files/outside'],
  ['a list where a path is meant', 'language/wrong-kind-path', 'language/wrong-kind'],
  ['a CSV with a missing column', 'csv/missing-column', 'csv/missing-column'],
  ['a CSV with an extra column', 'csv/extra-column', 'csv/unknown-column'],
  ['a CSV with a quoted newline', 'csv/quoted-newline', 'csv/line-break'],
  ['a CSV with a newline in a cell that has none', 'csv/line-break', 'csv/line-break'],
  ['a CSV with a semicolon separator', 'csv/semicolon', 'csv/separator'],
  ['a record with a semicolon separator', 'csv/record-semicolon', 'csv/separator'],
  ['a CSV with a decimal comma', 'csv/decimal-comma', 'csv/decimal-comma'],
  ['a record with a decimal comma', 'csv/record-decimal-comma', 'csv/decimal-comma'],
  ['a CSV with an unknown athlete', 'plan/record-unknown-athlete', 'plan/unknown-name'],
  ['a CSV with a future date', 'plan/record-in-future', 'plan/record-in-future'],
];

function reported(fixture: string): readonly string[] {
  const { diagnostics }: { diagnostics: readonly { code: string }[] } = JSON.parse(
    readFileSync(`${here}/${fixture}/expected.json`, 'utf8'),
  );
  return diagnostics.map(({ code }) => code);
}

describe('the case of', () => {
  test.each(CASES)('%s', (_, fixture, code) => {
    expect(fixtures).toContain(fixture);
    if (code !== undefined) expect(reported(fixture)).toContain(code);
    else expect(reported(fixture).filter((each) => /^(?:source|yaml|csv)\//u.test(each))).toEqual([]);
  });
});

test('five slips of five kinds in two files come in one run, and nothing else', () => {
  expect(reported('mixed/five-slips')).toEqual([
    'yaml/tab-indent',
    'language/no-such-date',
    'plan/unknown-name',
    'language/bare-number',
    'language/unknown-key',
  ]);
});

/** Codes that no plan in a folder brings about, each with the test that does. */
const ELSEWHERE: Readonly<Record<string, { readonly because: string; readonly test: string }>> = {
  'files/not-a-file': { because: 'git keeps no pipes', test: 'tests/unit/read/load-file.test.ts' },
  'files/unreadable': { because: 'git keeps no permissions to read', test: 'tests/unit/read/load-file.test.ts' },
  'files/too-many': { because: 'it takes fifty thousand files', test: 'tests/unit/read/too-many-files.test.ts' },
  'schedule/sessions-not-held': { because: 'the scheduler mostly finds a day', test: 'tests/unit/days/days.test.ts' },
  'lines/sets-unmet': { because: 'it hangs on the drills of a session', test: 'tests/unit/lines/sessions.test.ts' },
  'audit/adapted-volume': {
    because: 'it would be a mistake of the scheduler',
    test: 'tests/unit/audit/waivers.test.ts',
  },
  'yaml/too-long': { because: 'it takes millions of words', test: 'tests/unit/read/parse-yaml.test.ts' },
};

test('every code is reported by a fixture, or by a test that is named with the reason', () => {
  const seen = new Set(fixtures.flatMap(reported));
  const unseen = codes.filter((code) => !seen.has(code));
  expect(unseen.filter((code) => !Object.hasOwn(ELSEWHERE, code) && !isOfAudit(code))).toEqual([]);
  for (const [code, { test: path }] of Object.entries(ELSEWHERE)) {
    expect(unseen, `${code} has a fixture`).toContain(code);
    expect(readFileSync(path, 'utf8'), path).toContain(code);
  }
});

/** The scheduler keeps the rules, so most findings of the audit come of no plan: each has a test on seasons made for it. */
const isOfAudit = (code: string): boolean =>
  code.startsWith('rule/') && existsSync(`tests/unit/audit/${code.slice('rule/'.length)}.test.ts`);
