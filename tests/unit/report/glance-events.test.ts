// The rows of events above the weeks of a season.

import { expect, test } from 'vitest';
import { createEvents } from '../../../src/report/glance-events.ts';
import { EVERYBODY } from '../schedule/make-plan.ts';
import { athlete, day, HERE, madePlan, STARTS } from './made-build.ts';

const weeks = [0, 1, 2].map((index) => ({ starts: STARTS + 7 * index }));

function closed(from: string, until: string): readonly string[] | undefined {
  const range = { from: day(from), until: day(until) };
  const plan = madePlan({ closures: [{ range, because: 'works', who: EVERYBODY, trained: 'none', span: HERE }] });
  return createEvents(plan, weeks)(athlete('intermediate', 50))[0]?.cells;
}

test('closed days say from when, up to when, or which', () => {
  expect(closed('2027-01-07', '2027-01-07')).toEqual(['thu', '', '']);
  expect(closed('2027-01-07', '2027-01-19')).toEqual(['thu…', 'all', '…tue']);
  expect(closed('2027-01-11', '2027-01-13')).toEqual(['', '…wed', '']);
  expect(closed('2027-01-12', '2027-01-13')).toEqual(['', 'some', '']);
});
