// An athlete's rows of a table are what the table alone gives, also for who has the weeks of somebody else.

import { expect, test } from 'vitest';
import { tablePieces, tableRows } from '../../../src/cli/table-rows.ts';
import { lastingBytes } from '../../../src/host/growing-files.ts';
import { renderCsv } from '../../../src/render/csv/csv.ts';
import { EVERYTHING } from '../../../src/report/selection.ts';
import { TABLES } from '../../../src/report/tables.ts';
import { athlete, builtAthlete, line, madePlan, session, week } from '../report/made-build.ts';

const plan = madePlan();
const context = { plan, selection: EVERYTHING };
const weeks = [
  week(1, [session('2027-01-05', [line('pogo'), line('back-squat', { note: 'slow, "deep"\r\nand low' })])]),
  week(2, [session('2027-01-12', [line('pogo', { contacts: 20 })])]),
];

test.each(Object.values(TABLES))('rows of $name begin with the own id', (table) => {
  const rowsOf = tableRows(table, context);
  for (const id of ['ada', 'bea', '=1+1', 'c,d']) {
    const built = { ...builtAthlete(weeks), athlete: { ...athlete('advanced', 100), id } };
    const { name, columns } = table;
    const alone = [...renderCsv({ name, columns, rows: table.rowsOf(built, context) }, false)].join('');
    expect(rowsOf({ ...built, weeks })).toBe(rowsOf({ ...built, weeks }));
    expect(rowsOf({ ...built, weeks })).toBe(alone);
    const blocked = { ...built, weeks, blocked: new Set([1]) };
    const left = [...renderCsv({ name, columns, rows: table.rowsOf(blocked, context) }, false)].join('');
    expect(rowsOf(blocked)).toBe(left);
    expect(left).not.toBe(alone);
  }
});

test.each(Object.values(TABLES))('pieces of $name are its rows, in whatever order they are made', (table) => {
  const rowsOf = tableRows(table, context);
  const piecesOf = tablePieces(table, context);
  const all = ['ada', 'bea', 'é', 'longer', 'leo', '→', ''].map((id) => {
    const built = { ...builtAthlete(weeks), athlete: { ...athlete('advanced', 100), id }, weeks };
    return { text: rowsOf(built), piece: piecesOf(built) };
  });
  for (const { text, piece } of [...all.toReversed(), ...all]) {
    expect(new TextDecoder().decode(lastingBytes(piece))).toBe(text);
    expect(piece.length).toBe(typeof piece === 'string' ? text.length : new TextEncoder().encode(text).length);
  }
});

test('who has no weeks to show has no rows', () => {
  const built = builtAthlete([]);
  const piecesOf = tablePieces(TABLES.lines, context);
  for (const _ of [1, 2]) {
    expect(tableRows(TABLES.lines, context)({ ...built, weeks: [] })).toBe('');
    expect(piecesOf({ ...built, weeks: [] })).toBe('');
  }
});
