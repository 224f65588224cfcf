// What `check --format sarif` gives, against the published schema of the format (draft 04, as OASIS published it with
// errata 01; shipped by the package @microsoft/jest-sarif). Every fixture is looked at, so each kind of place is.

import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import AjvDraft04 from 'ajv-draft-04';
import { describe, expect, test } from 'vitest';
import { fileSystem } from '../../../src/host/files.ts';
import { readDocuments } from '../../../src/language/read-documents.ts';
import { loadPlan } from '../../../src/plan/load-plan.ts';
import { diagnosticsSarif } from '../../../src/render/diagnostics/diagnostics-sarif.ts';
import { diagnosticsView } from '../../../src/report/diagnostics-view.ts';

const schemaPath = createRequire(import.meta.url).resolve('@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json');
const schema: Record<string, unknown> = JSON.parse(readFileSync(schemaPath, 'utf8'));
const ajv = new AjvDraft04.default({ strict: false, allErrors: true, validateFormats: true, unicodeRegExp: false });
for (const format of ['date-time', 'uri', 'uri-reference']) ajv.addFormat(format, (text: string) => isOf(format, text));
const validate = ajv.compile(schema);

/** The characters a URI may have, and, where it has to be whole, a scheme: RFC 3986, appendix A. */
function isOf(format: string, text: string): boolean {
  if (format === 'date-time') return !Number.isNaN(Date.parse(text));
  const characters = /^(?:[\w.~:/?#[\]@!$&'()*+,;=-]|%[\dA-F]{2})*$/iu;
  return characters.test(text) && (format !== 'uri' || /^[a-z][a-z\d+.-]*:/iu.test(text));
}

interface Log {
  readonly runs: readonly {
    readonly columnKind: string;
    readonly results: readonly { readonly ruleId: string; readonly ruleIndex: number }[];
    readonly tool: { readonly driver: { readonly rules: readonly { readonly id: string }[] } };
  }[];
}

const here = 'tests/diagnostics';
const foldersIn = (path: string): readonly string[] =>
  readdirSync(path, { withFileTypes: true }).flatMap((entry) => (entry.isDirectory() ? [entry.name] : []));
const plans = foldersIn(here)
  .flatMap((area) => foldersIn(join(here, area)).map((what) => `${here}/${area}/${what}/plan`))
  .toSorted();

function logOf(plan: string): Log {
  const { value: documents, diagnostics } = readDocuments(plan, fileSystem);
  const all = [...diagnostics, ...loadPlan(documents).diagnostics];
  return JSON.parse(diagnosticsSarif(diagnosticsView(all, documents.files, { folder: plan }), '1.2.3'));
}

test('the schema refuses what is no SARIF', () => {
  expect(validate({ version: '2.1.0' })).toBe(false);
  const log = structuredClone(logOf(`${here}/language/bare-number/plan`)) as unknown as {
    runs: { columnKind: string }[];
  };
  for (const run of log.runs) run.columnKind = 'bytes';
  expect(validate(log)).toBe(false);
});

describe.each(plans)('%s', (plan) => {
  test('is reported as valid SARIF', () => {
    const log = logOf(plan);
    validate(log);
    expect(validate.errors ?? []).toEqual([]);
    for (const { columnKind, results, tool } of log.runs) {
      expect(columnKind).toBe('utf16CodeUnits');
      expect(results.map(({ ruleIndex }) => tool.driver.rules[ruleIndex]?.id)).toEqual(
        results.map(({ ruleId }) => ruleId),
      );
    }
  });
});
