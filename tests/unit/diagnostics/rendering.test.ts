// The three forms diagnostics are shown in: the same list, the marks where they belong, the numbers as each form counts.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { problem } from '../../../src/diagnostics/problem.ts';
import type { Diagnostic } from '../../../src/diagnostics/types.ts';
import { diagnosticsJson } from '../../../src/render/diagnostics/diagnostics-json.ts';
import { diagnosticsSarif } from '../../../src/render/diagnostics/diagnostics-sarif.ts';
import { diagnosticsText } from '../../../src/render/diagnostics/diagnostics-text.ts';
import { markedLine } from '../../../src/render/diagnostics/source-line.ts';
import { createPalette } from '../../../src/render/palette.ts';
import { diagnosticsView, summaryOf } from '../../../src/report/diagnostics-view.ts';
import { sourceFile } from '../../../src/source/source-file.ts';
import { displayWidth } from '../../../src/util/display-width.ts';

const ESCAPE = '\u001B';
const plain = createPalette(0);
const text = 'footfall: 1\nathletes:\n  zoé 🏐: { mass: 1, mass: 2 }\n';
const file = sourceFile('season.yaml', text);
function spanOf(found: string, from = 0): { file: string; start: number; end: number } {
  const start = text.indexOf(found, from);
  return { file: 'season.yaml', start, end: start + found.length };
}
const twice: Diagnostic = problem('yaml/duplicate-key', {
  params: { key: 'mass' },
  span: spanOf('mass', text.indexOf('mass') + 1),
  related: [{ span: spanOf('mass'), message: 'the first one is here' }],
  path: 'athletes.zoé.mass',
  athlete: 'zoé',
  week: 20_823,
});

describe('text', () => {
  it('marks the words with carets under them, and names every place in the form editors jump to', () => {
    expect(diagnosticsText(diagnosticsView([twice], [file], { folder: 'plans/spring' }), plain)).toBe(
      [
        'plans/spring/season.yaml:3:22: error: the key "mass" is there twice [yaml/duplicate-key]',
        '    3 |   zoé 🏐: { mass: 1, mass: 2 }',
        '      |                      ^^^^ again here',
        '  help: delete one of the two, or merge them',
        'plans/spring/season.yaml:3:13: note: the first one is here',
        '    3 |   zoé 🏐: { mass: 1, mass: 2 }',
        '      |             ^^^^',
        '',
        '1 error',
        '',
      ].join('\n'),
    );
  });

  it('is nothing for nothing', () => {
    expect(diagnosticsText(diagnosticsView([], [file]), plain)).toBe('');
  });

  it('says the same in colour', () => {
    const view = diagnosticsView([twice], [file]);
    const coloured = diagnosticsText(view, createPalette(1));
    expect(
      coloured
        .split(ESCAPE)
        .map((part, index) => (index === 0 ? part : part.replace(/^\[[0-9;]*m/u, '')))
        .join(''),
    ).toBe(diagnosticsText(view, plain));
    expect(coloured).not.toBe(diagnosticsText(view, plain));
  });
});

describe('a marked line', () => {
  it.each([
    ['mass: 1', 0, 4, 0, 4],
    ['zoe\u0301: 1', 6, 7, 5, 1],
    ['🏐🏐: 1', 4, 5, 4, 1],
    ['陽子: 1', 4, 5, 6, 1],
    ['陽子: 1', 0, 2, 0, 4],
    ['\tmass: 1', 1, 5, 4, 4],
    ['a\tmass: 1', 2, 6, 4, 4],
    ['mass:\t1', 5, 6, 5, 3],
    ['mass', 4, 4, 4, 1],
    ['👩‍👩‍👦: 1', 8, 9, 2, 1],
  ])('%j from %i to %i', (line, start, end, indent, width) => {
    expect(markedLine(line, start, end)).toMatchObject({ indent, width });
  });

  it('is cut around the mark if it is long, and stays under it', () => {
    const line = `${'x'.repeat(5000)}MARK${'y'.repeat(5000)}`;
    const { text: shown, indent, width } = markedLine(line, 5000, 5004);
    expect(shown.length).toBeLessThan(200);
    expect(shown.slice(indent, indent + width)).toBe('MARK');
  });

  it('never reaches beyond its line, for any line', () => {
    const unit = fc.constantFrom('a', ' ', '\t', '🏐', '陽', 'e\u0301', '\u200B', '\u001B', 'é');
    fc.assert(
      fc.property(fc.array(unit, { maxLength: 300 }), fc.nat(), fc.nat(), (units, a, b) => {
        const line = units.join('');
        const start = a % (line.length + 1);
        const end = start + (b % (line.length - start + 1));
        const marked = markedLine(line, start, end);
        expect(marked.width).toBeGreaterThanOrEqual(1);
        expect(marked.indent + marked.width).toBeLessThanOrEqual(
          Math.max(displayWidth(marked.text), marked.indent) + 1,
        );
        expect(marked.text).not.toMatch(/[\t\n\r]/u);
        expect(marked.text).not.toContain('\u001B');
        expect(displayWidth(marked.text)).toBeLessThanOrEqual(170);
      }),
    );
  });
});

describe('JSON', () => {
  it('counts lines and UTF-16 units from 0', () => {
    const { diagnostics, errors } = JSON.parse(diagnosticsJson(diagnosticsView([twice], [file])));
    expect(errors).toBe(1);
    expect(diagnostics).toEqual([
      {
        file: 'season.yaml',
        range: { start: { line: 2, character: 21 }, end: { line: 2, character: 25 } },
        severity: 'error',
        code: 'yaml/duplicate-key',
        message: 'the key "mass" is there twice',
        params: { key: 'mass' },
        label: 'again here',
        path: 'athletes.zoé.mass',
        help: 'delete one of the two, or merge them',
        athlete: 'zoé',
        week: '2027-01-05',
        related: [
          {
            file: 'season.yaml',
            range: { start: { line: 2, character: 12 }, end: { line: 2, character: 16 } },
            message: 'the first one is here',
          },
        ],
      },
    ]);
  });

  it('has no place where there is none', () => {
    const view = diagnosticsView([problem('files/missing', { params: { wanted: 'x' } })], []);
    expect(JSON.parse(diagnosticsJson(view)).diagnostics[0]).not.toHaveProperty('file');
  });
});

describe('SARIF', () => {
  const log = JSON.parse(diagnosticsSarif(diagnosticsView([twice], [file], { folder: 'my plans' }), '1.2.3'));
  const [run] = log.runs;

  it('is a log of version 2.1.0 that counts UTF-16 units from 1', () => {
    expect(log.version).toBe('2.1.0');
    expect(run.columnKind).toBe('utf16CodeUnits');
    expect(run.tool.driver).toMatchObject({ name: 'footfall', semanticVersion: '1.2.3' });
    expect(run.results[0].locations[0].physicalLocation).toEqual({
      artifactLocation: { uri: 'my%20plans/season.yaml' },
      region: { startLine: 3, startColumn: 22, endLine: 3, endColumn: 26 },
    });
    expect(run.results[0].relatedLocations[0].physicalLocation.region).toMatchObject({ startLine: 3, startColumn: 13 });
  });

  it('describes each code it uses, and points at the description', () => {
    const { ruleId, ruleIndex } = run.results[0];
    expect(run.tool.driver.rules[ruleIndex].id).toBe(ruleId);
    expect(run.tool.driver.rules).toHaveLength(1);
  });

  it('has the levels SARIF knows', () => {
    const notice = { ...twice, severity: 'notice' } as const;
    const view = diagnosticsView([notice], [file]);
    expect(JSON.parse(diagnosticsSarif(view, '1')).runs[0].results[0].level).toBe('note');
  });
});

describe('the summary', () => {
  it.each([
    [{ error: 3, warning: 1, notice: 0 }, '3 errors, 1 warning'],
    [{ error: 1, warning: 0, notice: 2 }, '1 error, 2 notices'],
    [{ error: 0, warning: 0, notice: 0 }, 'no problems'],
  ])('of %j is %s', (counts, words) => {
    expect(summaryOf(counts)).toBe(words);
  });
});

describe('a view', () => {
  it('is not made of places that are in no file', () => {
    const stray = problem('yaml/merge-key', { span: { file: 'gone.yaml', start: 0, end: 1 } });
    expect(() => diagnosticsView([stray], [file])).toThrow('gone.yaml');
  });
});
