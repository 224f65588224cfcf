// Record files as rows of located cells, and what can be wrong with their columns.

import { describe, expect, it } from 'vitest';
import { readTable, tableOf } from '../../../src/read/read-table.ts';
import type { TableColumn } from '../../../src/read/read-table.ts';
import type { ScalarNode } from '../../../src/read/types.ts';
import { sourceFile, textOf } from '../../../src/source/source-file.ts';
import { memoryFiles } from './memory-files.ts';
import { plainValue } from './plain-value.ts';

const columns: readonly TableColumn[] = [
  { name: 'date', needs: 'filled' },
  { name: 'contacts', needs: 'there' },
  { name: 'note', needs: 'nothing', freeText: true },
];

const codesOf = (text: string): readonly string[] =>
  tableOf(sourceFile('done.csv', text), columns).diagnostics.map(({ code }) => code);

describe('a table', () => {
  it('has a map for each row, empty cells left out', () => {
    const text = 'contacts,date,note\n80,2027-01-05,"fine, but\ntired"\n,2027-01-07,\n';
    const file = sourceFile('done.csv', text);
    const { value, diagnostics } = tableOf(file, columns);
    expect(diagnostics).toEqual([]);
    expect(value.rows.map((row) => plainValue(row))).toEqual([
      {
        map: [
          ['contacts', 80],
          ['date', '2027-01-05'],
          ['note', 'fine, but\ntired'],
        ],
      },
      { map: [['date', '2027-01-07']] },
    ]);
    expect(value.rows.map(({ span }) => textOf(file, span))[1]).toBe(',2027-01-07,');
    expect(value.rows[0]?.entries.map(({ keySpan }) => textOf(file, keySpan))).toEqual(['contacts', 'date', 'note']);
  });

  it('may have no rows, and no column that nobody needs', () => {
    expect(codesOf('date,contacts\n')).toEqual([]);
  });

  it.each([
    ['date\n2027-01-05\n', ['csv/missing-column']],
    ['date,contact\n2027-01-05,80\n', ['csv/unknown-column']],
    ['date,contacts,weather\n2027-01-05,80,rain\n', ['csv/unknown-column']],
    ['date,contacts,\n2027-01-05,80,\n', ['csv/unnamed-column']],
    ['date,contacts,date\n2027-01-05,80,2027-01-05\n', ['csv/duplicate-column']],
    ['date,contacts\n,80\n', ['csv/missing-cell']],
    ['date,contacts\n"2027-\n01-05",80\n', ['csv/line-break']],
    ['date;contacts\n2027-01-05;80\n', ['csv/separator']],
    ['date,contacts\n2027-01-05,80,5\n', ['csv/decimal-comma']],
    ['date,contacts\n2027-01-05\n', ['csv/cell-count']],
    ['date,contacts\n2027-01-05,"8"0"\n', ['csv/stray-quote']],
    ['date,contacts\n2027-01-05,"80\n', ['csv/unclosed-quote']],
    ['date,contacts\r2027-01-05,80\r', ['source/lone-carriage-return']],
    ['date,contacts\n2027-01-05,\u00A080\n', ['source/no-break-space']],
    ['', ['source/empty']],
  ])('%j is reported as %j', (text, codes) => {
    expect(codesOf(text)).toEqual(codes);
  });
});

describe('a record file', () => {
  const named = (path: string): ScalarNode => ({
    kind: 'scalar',
    span: { file: 'season.yaml', start: 3, end: 9 },
    text: path,
    value: path,
    quoted: false,
  });
  const host = memoryFiles({
    '/plan/season.yaml': 'footfall: 1',
    '/plan/record/done.csv': 'date,contacts\n2027-01-05,80\n',
    '/plan/record/link.csv': { link: '/elsewhere/done.csv' },
    '/elsewhere/done.csv': 'date,contacts\n',
    '/plan/record/latin.csv': new Uint8Array([0x64, 0x61, 0x74, 0x65, 0x0a, 0xe9]),
  });

  it('is found from the folder of the plan', () => {
    const { value, diagnostics } = readTable('/plan', named('record/done.csv'), columns, host);
    expect(diagnostics).toEqual([]);
    expect(value.file?.path).toBe('record/done.csv');
    expect(value.rows).toHaveLength(1);
  });

  it.each([
    ['record/dome.csv', 'files/missing'],
    ['record', 'files/wrong-ending'],
    ['record/done.tsv', 'files/wrong-ending'],
    ['../elsewhere/done.csv', 'files/outside'],
    ['record/link.csv', 'files/outside'],
    ['C:\\done.csv', 'files/outside'],
    ['record\\done.csv', 'files/not-portable'],
    ['record/latin.csv', 'source/not-utf8'],
  ])('%s is reported as %s', (path, code) => {
    const { value, diagnostics } = readTable('/plan', named(path), columns, host);
    expect(diagnostics.map((each) => each.code)).toEqual([code]);
    expect(value.rows).toEqual([]);
  });
});
