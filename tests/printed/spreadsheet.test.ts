// The tables in a real spreadsheet: LibreOffice opens each in four locales, told to look for dates and numbers wherever it
// can, and gives back the same text and the same numbers. Nothing becomes a date, a formula or another number.

import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { renderCsv } from '../../src/render/csv/csv.ts';
import { drawTable } from '../../src/report/athlete-table.ts';
import { EVERYTHING } from '../../src/report/selection.ts';
import type { Cell, ColumnKind, Table } from '../../src/report/table.ts';
import { TABLES } from '../../src/report/tables.ts';
import { haveAll } from './programs.ts';
import { exampleBuild } from './written.ts';

/** Names of the locales, and the numbers by which LibreOffice's text filter knows their languages. */
const LOCALES = { 'en-GB': 2057, 'de-DE': 1031, 'nl-NL': 1043, 'hu-HU': 1038 } as const;

/** What spreadsheets are known to take for something else. */
const HOSTILE = [
  '=cmd()',
  "=cmd|' /C calc'!A0",
  '+3',
  '-5',
  '@x',
  '=1+1',
  '10-12',
  '3-5',
  '1/2',
  '1.5',
  '1,5',
  '1e5',
  '3 May',
  'May 3',
  '12:30',
  '5 %',
  '€ 5',
  'TRUE',
  'wahr',
  '007',
  "'quoted",
  'Mira, K.',
  'said "now"',
  'two\nlines',
  '3x10',
  'Łucja',
  'נועה',
];

const hostileTable: Table = {
  name: 'hostile',
  columns: [
    { name: 'text', kind: 'text' },
    { name: 'date', kind: 'date' },
    { name: 'load', kind: 'decimal' },
    { name: 'count', kind: 'integer' },
  ],
  rows: HOSTILE.map((text, index) => [text, '2027-03-04', index + 0.25, -index]),
};

/** A table with few enough rows to read back. */
const MOST_ROWS = 400;

const listed = (table: Table): Table => ({ ...table, rows: [...table.rows].slice(0, MOST_ROWS) });

interface Read {
  readonly type: string;
  readonly value: string;
  readonly text: string;
  readonly formula: boolean;
}

const ROW = /<table:table-row\b[^>]*?(?:\/>|>([\s\S]*?)<\/table:table-row>)/gu;
const CELL = /<table:table-cell\b([^>]*?)(?:\/>|>([\s\S]*?)<\/table:table-cell>)/gu;
const attribute = (attributes: string, name: string): string | undefined =>
  new RegExp(`${name}="([^"]*)"`, 'u').exec(attributes)?.[1];

/** The cells of a flat spreadsheet document, repeated ones as often as they are there. */
function readRows(xml: string): readonly (readonly Read[])[] {
  return [...xml.matchAll(ROW)].map(([, row = '']) =>
    [...row.matchAll(CELL)].flatMap(([, attributes = '', content = '']) => {
      const paragraphs = [...content.matchAll(/<text:p[^>]*?(?:\/>|>([\s\S]*?)<\/text:p>)/gu)].map(([, text = '']) =>
        plain(text),
      );
      const type = attribute(attributes, 'office:value-type') ?? '';
      const cell: Read = {
        type,
        value: attribute(attributes, type === 'date' ? 'office:date-value' : 'office:value') ?? '',
        text: paragraphs.join('\n'),
        formula: attribute(attributes, 'table:formula') !== undefined,
      };
      const times = Number(attribute(attributes, 'table:number-columns-repeated') ?? 1);
      return times > 100 ? [] : Array.from({ length: times }, () => cell);
    }),
  );
}

const plain = (xml: string): string =>
  xml
    .replaceAll(/<text:s(?: text:c="(\d+)")?\/>/gu, (_, count: string | undefined) => ' '.repeat(Number(count ?? 1)))
    .replaceAll(/<[^>]*>/gu, '')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&apos;', "'")
    .replaceAll('&amp;', '&');

/** What went wrong with one cell, in words; undefined when it came back as it went. */
function fault(cell: Cell, kind: ColumnKind, read: Read | undefined): string | undefined {
  if (cell === undefined || cell === '')
    return read === undefined || read.text === '' ? undefined : `empty became ${read.text}`;
  if (read === undefined || read.formula) return `${cell} became ${read === undefined ? 'nothing' : 'a formula'}`;
  if (typeof cell === 'number') {
    // Where the decimal sign is a comma a number with a point stays the text it is.
    const isSame =
      read.type === 'float' ? Number(read.value) === cell : read.type === 'string' && Number(read.text) === cell;
    return isSame ? undefined : `${cell} became ${read.type} ${read.value} ${read.text}`;
  }
  if (kind === 'date') return read.value === cell || read.text === cell ? undefined : `${cell} became ${read.text}`;
  const kept = read.type === 'string' && (read.text === cell || read.text === `'${cell}`);
  return kept ? undefined : `${cell} became ${read.type} ${read.text}`;
}

describe.runIf(haveAll('soffice'))('in LibreOffice', () => {
  let folder = '';
  let tables: readonly Table[] = [];

  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'footfall-csv-'));
    const build = exampleBuild('handball-spring');
    tables = [hostileTable, ...Object.values(TABLES).map((table) => listed(drawTable(table, build, EVERYTHING)))];
    for (const table of tables) writeFileSync(join(folder, `${table.name}.csv`), [...renderCsv(table)].join(''));
  }, 60_000);

  afterAll(() => {
    rmSync(folder, { recursive: true, force: true });
  });

  test.each(Object.entries(LOCALES))(
    'every table comes back in %s as it went',
    { timeout: 180_000 },
    (locale, language) => {
      const out = join(folder, locale);
      mkdirSync(out);
      // Comma, double quotes, UTF-8, from the first line, in this language; not quoted means text, look for special numbers.
      const filter = `Text - txt - csv (StarCalc):44,34,76,1,,${language},false,true,false,false,false,0,true`;
      execFileSync(
        'soffice',
        [
          `-env:UserInstallation=file://${join(folder, `profile-${locale}`)}`,
          '--headless',
          '--norestore',
          `--infilter=${filter}`,
          '--convert-to',
          'fods',
          '--outdir',
          out,
          ...tables.map(({ name }) => join(folder, `${name}.csv`)),
        ],
        { stdio: 'ignore', env: { ...process.env, LC_ALL: `${locale.replace('-', '_')}.UTF-8` } },
      );
      for (const table of tables) {
        const [head = [], ...rows] = readRows(readFileSync(join(out, `${table.name}.fods`), 'utf8'));
        expect(head.map(({ text }) => text)).toEqual(table.columns.map(({ name }) => name));
        const faults = [...table.rows].flatMap((row, index) =>
          table.columns.flatMap(({ kind }, column) => fault(row[column], kind, rows[index]?.[column]) ?? []),
        );
        expect(faults).toEqual([]);
      }
    },
  );
});
