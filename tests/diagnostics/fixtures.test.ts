// Every folder with an expected.txt below this one is a plan with something wrong in it. What is reported has to be, to
// the byte, what is written beside it, as text and as JSON. FOOTFALL_UPDATE=1 writes the files anew; read the
// difference before it is committed.

import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { codes } from '../../src/diagnostics/catalogue.ts';
import { hasErrors } from '../../src/diagnostics/collector.ts';
import type { Diagnostic } from '../../src/diagnostics/types.ts';
import { fileSystem } from '../../src/host/files.ts';
import { DONE_COLUMNS, TEST_COLUMNS } from '../../src/language/shapes/record.ts';
import { loadPlan } from '../../src/plan/load-plan.ts';
import { readPlan } from '../../src/read/read-plan.ts';
import { readTable } from '../../src/read/read-table.ts';
import type { Node } from '../../src/read/types.ts';
import { diagnosticsJson } from '../../src/render/diagnostics/diagnostics-json.ts';
import { diagnosticsText } from '../../src/render/diagnostics/diagnostics-text.ts';
import { createPalette } from '../../src/render/palette.ts';
import { diagnosticsView } from '../../src/report/diagnostics-view.ts';
import type { SourceFile } from '../../src/source/types.ts';

const here = 'tests/diagnostics';
const update = process.env['FOOTFALL_UPDATE'] === '1';

const foldersOf = (path: string): readonly string[] =>
  readdirSync(path, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name)
    .sort();

const fixtures = foldersOf(here).flatMap((area) => foldersOf(join(here, area)).map((what) => `${area}/${what}`));

/** Where the plan is said to be: a fixture may have another entry than season.yaml, or none. */
const entryOf = (folder: string): string => {
  const named = join(folder, 'entry.txt');
  return existsSync(named) ? `${folder}/plan/${readFileSync(named, 'utf8').trim()}` : `${folder}/plan`;
};

const valueAt = (node: Node | undefined, key: string): Node | undefined =>
  node?.kind === 'map' ? node.entries.find((entry) => entry.key === key)?.value : undefined;

interface Found {
  readonly files: readonly SourceFile[];
  readonly diagnostics: readonly Diagnostic[];
}

const diagnose = (entry: string): Found => {
  const { value: documents, diagnostics } = readPlan(entry, fileSystem);
  if (hasErrors(diagnostics)) return { files: documents.files, diagnostics };
  const record = valueAt(documents.documents[0]?.root, 'record');
  const tables = [
    { path: valueAt(record, 'done'), columns: DONE_COLUMNS },
    { path: valueAt(record, 'tests'), columns: TEST_COLUMNS },
  ].flatMap(({ path, columns }) => (path?.kind === 'scalar' ? [readTable(entry, path, columns, fileSystem)] : []));
  return {
    files: [...documents.files, ...tables.flatMap(({ value }) => value.file ?? [])],
    diagnostics: [
      ...diagnostics,
      ...tables.flatMap((table) => table.diagnostics),
      ...loadPlan(documents).diagnostics,
    ],
  };
};

const agrees = (path: string, made: string): void => {
  if (update) writeFileSync(path, made);
  expect(existsSync(path), `${path} is missing: write it with FOOTFALL_UPDATE=1`).toBe(true);
  expect(made).toBe(readFileSync(path, 'utf8'));
};

describe.each(fixtures)('%s', (fixture) => {
  const folder = `${here}/${fixture}`;
  const { files, diagnostics } = diagnose(entryOf(folder));
  const view = diagnosticsView(diagnostics, files);
  const plain = createPalette(0);

  it('is reported as text', () => {
    agrees(`${folder}/expected.txt`, diagnosticsText(view, plain));
  });

  it('is reported as JSON', () => {
    agrees(`${folder}/expected.json`, diagnosticsJson(view));
  });

  it('reports something, from the catalogue, in a place that is in its file', () => {
    expect(diagnostics).not.toEqual([]);
    for (const { code, span } of diagnostics) {
      expect(codes).toContain(code);
      const file = files.find(({ path }) => path === span?.file);
      if (span === undefined) continue;
      expect(file?.text.length).toBeGreaterThanOrEqual(span.end);
      expect(span.end).toBeGreaterThanOrEqual(span.start);
    }
  });
});
