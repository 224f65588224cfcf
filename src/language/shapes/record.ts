// The shapes of the rows of record files: what was done, and what was tested. Columns are fixed, so that a file can be
// filled in by hand, by a spreadsheet or by a script.

import { UNITS_BY_KIND } from '../../library/test-units.ts';
import type { TableColumn } from '../../read/read-table.ts';
import { date } from '../dates.ts';
import { DONE_KINDS } from '../done-kinds.ts';
import { group } from '../groups.ts';
import { count, decimal } from '../numbers.ts';
import { freeText, nameOf, text, word, yesOrNo } from '../words.ts';
import { MOST_CONTACTS } from './common.ts';
import type { Output } from '../shape.ts';

const MOST_MINUTES = 1440;
/** Of effort and of pain. */
const SCALE = 10;
const MOST_TRIALS = 99;
const MOST_VALUE = 100_000;

/** All units, each kind's together. */
export const TEST_UNITS = Object.values(UNITS_BY_KIND).flat();

export const doneShape = group({
  date: date(),
  athlete: nameOf('the id of an athlete'),
  kind: word(DONE_KINDS),
  contacts: count(0, MOST_CONTACTS).optional(),
  minutes: count(0, MOST_MINUTES).optional(),
  effort: decimal(0, SCALE).optional(),
  pain: count(0, SCALE).optional(),
  note: freeText().optional(),
});

export const testRowShape = group({
  date: date(),
  athlete: nameOf('the id of an athlete'),
  test: nameOf('a test'),
  trial: count(1, MOST_TRIALS),
  value: decimal(0, MOST_VALUE),
  unit: word(TEST_UNITS),
  method: text('how it was measured').optional(),
  arms: yesOrNo().optional(),
  note: freeText().optional(),
});

export type DoneFields = Output<typeof doneShape>;
export type TestRowFields = Output<typeof testRowShape>;

/** A row of a test by its day; what isn't written is absent, and undefined nowhere. */
export function testRowOf({ date, method, arms, note, ...row }: TestRowFields) {
  return {
    day: date,
    ...row,
    ...(method !== undefined && { method }),
    ...(arms !== undefined && { arms }),
    ...(note !== undefined && { note }),
  };
}

const columns = (needs: TableColumn['needs'], ...names: readonly string[]): readonly TableColumn[] =>
  names.map((name) => ({ name, needs, freeText: name === 'note' }));

export const DONE_COLUMNS = [
  ...columns('filled', 'date', 'athlete', 'kind'),
  ...columns('there', 'contacts', 'minutes', 'effort', 'pain', 'note'),
];

export const TEST_COLUMNS = [
  ...columns('filled', 'date', 'athlete', 'test', 'trial', 'value', 'unit'),
  ...columns('there', 'method', 'arms', 'note'),
];
