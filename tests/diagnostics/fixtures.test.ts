// Every folder with an expected.txt below this one is a plan with something wrong in it. What is reported has to be, to
// the byte, what is written beside it, as text and as JSON. FOOTFALL_UPDATE=1 writes the files anew; read the
// difference before it is committed.

import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, test } from 'vitest';
import { codes } from '../../src/diagnostics/catalogue.ts';
import { diagnosticsJson } from '../../src/render/diagnostics/diagnostics-json.ts';
import { diagnosticsText } from '../../src/render/diagnostics/diagnostics-text.ts';
import { createPalette } from '../../src/render/palette.ts';
import { diagnosticsView } from '../../src/report/diagnostics-view.ts';
import { diagnose } from './diagnose.ts';
import { fixtures, here } from './fixture-folders.ts';
import { galleryText } from './gallery.ts';
import { madePlan } from './made-plans.ts';

const update = process.env['FOOTFALL_UPDATE'] === '1';

/** Where the plan is said to be: a fixture may have another entry than season.yaml, or none. */
function entryOf(folder: string): string {
  const named = join(folder, 'entry.txt');
  return existsSync(named) ? `${folder}/plan/${readFileSync(named, 'utf8').trim()}` : `${folder}/plan`;
}

function agrees(path: string, made: string): void {
  if (update) writeFileSync(path, made);
  expect(existsSync(path), `${path} is missing: write it with FOOTFALL_UPDATE=1`).toBe(true);
  expect(made).toBe(readFileSync(path, 'utf8'));
}

describe.each(fixtures)('%s', (fixture) => {
  const folder = `${here}/${fixture}`;
  const { files, diagnostics } = diagnose(madePlan(fixture) ?? entryOf(folder));
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

test('GALLERY.md shows what the fixtures are told, code by code', () => {
  const told = fixtures.map((fixture) => ({ fixture, text: readFileSync(`${here}/${fixture}/expected.txt`, 'utf8') }));
  agrees(`${here}/GALLERY.md`, galleryText(told));
});
