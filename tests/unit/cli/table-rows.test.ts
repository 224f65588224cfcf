// An athlete's rows of a table are what the table alone gives, also for who has the weeks of somebody else.

import { expect, test } from 'vitest';
import { tableRows } from '../../../src/cli/table-rows.ts';
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

test('who has no weeks to show has no rows', () => {
  const built = builtAthlete([]);
  expect(tableRows(TABLES.lines, context)({ ...built, weeks: [] })).toBe('');
});
