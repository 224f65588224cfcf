import { parse } from 'csv-parse/sync';
import { stringify } from 'csv-stringify/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { columns } from '../../../../src/report/table.ts';
import type { Row, Table } from '../../../../src/report/table.ts';
import { renderCsv } from '../../../../src/render/csv/csv.ts';
import { harmless, isMistakable } from '../../../../src/render/csv/harmless.ts';

const csv = (table: Table): string => [...renderCsv(table)].join('');

const made = (rows: readonly Row[]): Table => ({
  name: 'made',
  columns: [
    ...columns('text', 'name'),
    ...columns('integer', 'count'),
    ...columns('decimal', 'kilos'),
    ...columns('word', 'kind'),
  ],
  rows,
});

/** The text as it was before it was made harmless. */
const bare = (cell: string): string => (cell.startsWith("'") ? cell.slice(1) : cell);

test('a header, commas, CRLF behind every line, nothing where there is nothing', () => {
  expect(
    csv(
      made([
        ['ada', 5, 72.5, 'load'],
        ['bea', undefined, 100, 'deload'],
      ]),
    ),
  ).toBe('name,count,kilos,kind\r\nada,5,72.5,load\r\nbea,,100,deload\r\n');
});

test('a table without rows is its header', () => {
  expect(csv(made([]))).toBe('name,count,kilos,kind\r\n');
});

test('quotes where RFC 4180 wants them', () => {
  const names = ['a, b', 'say "go"', 'two\nlines', 'two\r\nlines', 'plain', 'Jón Þór', '李 wei'];
  const text = csv(made(names.map((name) => [name, 1, undefined, 'x'])));
  expect(text).toContain('"say ""go""",1,,x\r\n');
  expect(text).toContain('\r\nplain,1,,x\r\n');
  const read: string[][] = parse(text, { from_line: 2, record_delimiter: '\r\n' });
  expect(read.map(([name]) => name)).toEqual(names);
});

const texts = fc.string({ unit: 'grapheme', maxLength: 12 });

test('reads back as what was written, whatever the text', () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(texts, fc.integer()), { minLength: 1 }), (pairs) => {
      const text = csv(made(pairs.map(([name, count]) => [name, count, undefined, 'w'])));
      const read: string[][] = parse(text, { from_line: 2, record_delimiter: '\r\n', relax_column_count: false });
      expect(read.map(([name = '', count]) => [bare(name), Number(count)])).toEqual(pairs);
    }),
  );
});

test('is byte for byte what another writer makes of the same cells', () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(texts, fc.nat(), texts), { minLength: 1 }), (rows) => {
      const safe = rows.map(([a, n, b]) => [harmless(a), n, harmless(b)]);
      const table: Table = {
        name: 't',
        columns: [...columns('text', 'a'), ...columns('integer', 'n'), ...columns('text', 'b')],
        rows,
      };
      expect(csv(table)).toBe(stringify(safe, { header: true, columns: ['a', 'n', 'b'], record_delimiter: '\r\n' }));
    }),
  );
});

describe('a spreadsheet would take for something else:', () => {
  test.each([
    '=1+1',
    '=cmd()',
    '+3',
    '-5',
    '@x',
    '\t=1+1',
    '\r1',
    ' =1+1',
    '＝1+1',
    '10-12',
    '1/2',
    '3-1-1',
    '2027-01-04',
    '4.1.2027',
    'mar-1',
    '5 Jan',
    '5. März',
    'Mon 4 Jan 2027',
    '007',
    '12',
    '1,5',
    '1e5',
    '12:30',
    '5 pm',
    '10 %',
    '€5',
    'true',
    'FALSE',
    'wahr',
    '١٢',
    "'quoted",
  ])('%j', (text) => {
    expect(isMistakable(text)).toBe(true);
    expect(harmless(text)).toBe(`'${text}`);
  });
});

describe('is left alone:', () => {
  test.each([
    'ada',
    'Mira K.',
    'u16',
    'a1',
    'box-jump-30',
    '3x10',
    'depth-landing-20',
    'group 2',
    "O'Neill",
    'x',
    '',
    'maja-2',
    'd1 girls',
    'José',
  ])('%j', (text) => {
    expect(harmless(text)).toBe(text);
  });
});

test('only text is looked at: a word and a date of our own stay as they are', () => {
  const table: Table = {
    name: 't',
    columns: [...columns('date', 'date'), ...columns('word', 'word'), ...columns('integer', 'n')],
    rows: [['2027-01-04', 'load', -5]],
  };
  expect(csv(table)).toBe('date,word,n\r\n2027-01-04,load,-5\r\n');
});

test('a long table comes out the same past what is remembered of its texts', () => {
  const rows = Array.from(
    { length: 25_000 },
    (_, index) => [`name ${index % 12_000}, x`, index, undefined, 'w'] as const,
  );
  const lines = [...renderCsv(made(rows))];
  expect(lines.length).toBe(25_001);
  expect(lines[24_001]).toBe('"name 0, x",24000,,w\r\n');
});
