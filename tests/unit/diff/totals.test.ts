// The totals of a diff: sessions of weeks that are over on either side are nobody's gain or loss.

import { expect, test } from 'vitest';
import { compilePlan } from '../../../src/compile.ts';
import { diffBuilds } from '../../../src/diff/diff-builds.ts';
import { sideOf } from '../../../src/diff/side.ts';
import { totalWords } from '../../../src/report/diff-words.ts';
import { day } from '../date.ts';
import { filesOf, planWith } from '../report/example-plans.ts';

const plan = planWith(filesOf('harbour-diary'));
const asOf = (date: string) => compilePlan(plan, { asOf: day(date) });
const [before, later] = [asOf('2025-01-06'), asOf('2025-02-10')];

test('count sessions of the weeks that are over on neither side, whichever side is the older', () => {
  const ahead = (build: typeof before): number =>
    [...build.athletes]
      .flatMap(({ weeks }) => weeks.filter(({ starts }) => starts >= day('2025-02-10')))
      .reduce((sum, { sessions }) => sum + sessions.length, 0);
  const diff = diffBuilds(sideOf(before), sideOf(later));
  expect([diff.before.sessions, diff.after.sessions]).toEqual([ahead(before), ahead(later)]);
  expect(totalWords(diff)).toMatch(/, sessions of weeks still to come \d+/u);
  const back = diffBuilds(sideOf(later), sideOf(before));
  expect([back.before.sessions, back.after.sessions]).toEqual([ahead(later), ahead(before)]);
});

test('count all sessions before the first week is over', () => {
  const diff = diffBuilds(sideOf(before), sideOf(before));
  const all = [...before.athletes].flatMap(({ weeks }) => weeks.flatMap(({ sessions }) => sessions));
  expect(diff.before.sessions).toBe(all.length);
  expect(totalWords(diff)).toContain(`, sessions ${all.length}, athletes 7.`);
});
