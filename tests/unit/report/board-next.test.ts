// What a board says comes next: the match and the tests of whoever is there, within the days it looks ahead.

import { expect, test } from 'vitest';
import { SHEETS } from '../../../src/library/sheets.ts';
import type { Plan, TestDay } from '../../../src/plan/types.ts';
import { createBoards } from '../../../src/report/board.ts';
import { EVERYTHING } from '../../../src/report/selection.ts';
import { EVERYBODY, peak } from '../schedule/make-plan.ts';
import { athlete, builtAthlete, day, HERE, line, madeBuild, madePlan, session, week } from './made-build.ts';

const TODAY = '2027-01-05';

const tests = (date: string): TestDay => ({
  day: day(date),
  what: ['back-squat'],
  contacts: 0,
  who: EVERYBODY,
  span: HERE,
});

function next(change: Partial<Plan>): string | undefined {
  const built = builtAthlete([week(1, [session(TODAY, [line('pogo')])])], {
    athlete: athlete('intermediate', 50, { id: 'ann' }),
  });
  const boards = createBoards(madeBuild([built], madePlan(change)), EVERYTHING);
  boards.add(built);
  const [board] = boards.finish();
  return board?.next;
}

const cup = peak('2027-01-09', { name: 'Cup' });
const others: TestDay['who'] = { kind: 'some', squads: [], athletes: ['bo'] };

test('tests are told', () => {
  expect(next({ tests: [tests('2027-01-07')] })).toBe('Thu 7 Jan: tests');
});

test('a match and tests are both told, the earlier first', () => {
  const both = (date: string): string | undefined => next({ competitions: [cup], tests: [tests(date)] });
  expect(both('2027-01-07')).toBe('Thu 7 Jan: tests; Sat 9 Jan: Cup');
  expect(both('2027-01-11')).toBe('Sat 9 Jan: Cup; Mon 11 Jan: tests');
});

test('of several tests the next ones', () => {
  const several = ['2027-01-04', '2027-01-07', '2027-01-08'].map((date) => tests(date));
  expect(next({ tests: several })).toBe('Thu 7 Jan: tests');
});

test('nothing of others, nothing that is over, nothing far ahead', () => {
  const near = day(TODAY) + SHEETS.boardDaysAhead;
  const squat = tests(TODAY);
  expect(next({ tests: [{ ...squat, who: others }] })).toBeUndefined();
  expect(next({ tests: [{ ...squat, day: day(TODAY) - 1 }] })).toBeUndefined();
  expect(next({ tests: [{ ...squat, day: near + 1 }] })).toBeUndefined();
  expect(next({ tests: [{ ...squat, day: near }] })).toBe('Wed 13 Jan: tests');
});
