// Down the rows of a board each group finds its own session in order.

import { expect, test } from 'vitest';
import { createBoards } from '../../../src/report/board.ts';
import { EVERYTHING } from '../../../src/report/selection.ts';
import { athlete, builtAthlete, line, madeBuild, session, week } from './made-build.ts';

const WARM_UP = 12;
const EACH_DRILL = 8;

function person(id: string, squad: string, drills: readonly string[]) {
  const lines = drills.map((drill) => line(drill));
  const minutes = WARM_UP + EACH_DRILL * drills.length;
  return builtAthlete([week(1, [session('2027-01-05', lines, { minutes })])], {
    athlete: athlete('intermediate', 50, { id, name: id, squad }),
  });
}

function rowsOf(...people: readonly ReturnType<typeof person>[]): readonly (readonly string[])[] {
  const boards = createBoards(madeBuild(people), EVERYTHING);
  for (const one of people) boards.add(one);
  const [board] = boards.finish();
  return (board?.rows ?? []).map(({ cells }) => cells.flatMap(({ exercises }) => exercises.map(({ name }) => name)));
}

const SHORT = ['tuck-jump', 'hurdle-hop'];
const LONG = ['tuck-jump', 'lateral-bound', 'hurdle-hop'];

test('what a few do before the rest of their session stands above it, though most come to that earlier', () => {
  const most = ['a', 'b', 'c', 'd'].map((id) => person(id, 'high', SHORT));
  expect(rowsOf(...most, person('e', 'triple', LONG), person('f', 'triple', LONG))).toEqual([
    ['Tuck jump', 'Tuck jump'],
    ['Lateral bound'],
    ['Hurdle hop', 'Hurdle hop'],
  ]);
});

test('where each of two goes another way round the one that more have stands', () => {
  const there = ['hurdle-hop', 'tuck-jump'];
  expect(rowsOf(person('a', 'x', SHORT), person('b', 'x', there), person('c', 'x', there))).toEqual([
    ['Hurdle hop'],
    ['Tuck jump'],
  ]);
});
