// The timetable of a board: minutes down the side, groups across, in each cell who does what, how often. Called by boards.ts.
// Neighbours that do the very same share a cell, so that the eye sees at once what is alike.

import type { Board, BoardGroup } from '../../report/board.ts';
import type { BoardCell, BoardDose, BoardExercise, BoardWho } from '../../report/board-cells.ts';
import type { BoardRow } from '../../report/board-rows.ts';
import { MOST_GROUPS, MOST_NAMES_IN_HEAD } from './board-measures.ts';
import { aroundNames, atWords, BETWEEN_DOSES, usualWords } from './board-words.ts';
import { groupMark, h, names } from './element.ts';
import type { Content, Element } from './element.ts';

/** The timetable, in several where there are more groups than fit side by side. */
export function timetables(board: Board): readonly Element[] {
  const { groups } = board;
  const tables: Element[] = [];
  for (let from = 0; from < groups.length; from += MOST_GROUPS) {
    tables.push(timetable(board, from, Math.min(groups.length, from + MOST_GROUPS)));
  }
  return tables;
}

function timetable(board: Board, from: number, until: number): Element {
  const { groups, rows } = board;
  return h(
    'table',
    { class: 'timetable' },
    h(
      'thead',
      {},
      h(
        'tr',
        {},
        h('th', { scope: 'col', class: 'minutes' }, 'min'),
        groups.slice(from, until).map((group) => h('th', { scope: 'col' }, groupHead(group, groups.length === 1))),
      ),
    ),
    h(
      'tbody',
      {},
      h(
        'tr',
        {},
        h('th', { scope: 'row', class: 'minutes' }, '0'),
        h('td', { colspan: until - from }, 'Warm-up, everybody'),
      ),
      rows.map((row) => timetableRow(row, from, until)),
    ),
  );
}

function groupHead({ mark, together }: BoardGroup, isOnly: boolean): Content {
  return [
    mark === undefined ? (isOnly ? 'everybody' : 'everybody else') : groupMark(mark),
    h('p', { class: 'people' }, together.length > MOST_NAMES_IN_HEAD ? `${together.length} athletes` : names(together)),
  ];
}

function timetableRow(row: BoardRow, from: number, until: number): Element {
  return h(
    'tr',
    {},
    h(
      'th',
      { scope: 'row', class: 'minutes' },
      `${row.from}–${row.until}`,
      row.usual.length === 0 ? null : h('p', { class: 'usual' }, usualWords(row)),
    ),
    cellRuns(row.cells.slice(from, until)).map(({ cell, length }) =>
      h('td', length === 1 ? {} : { colspan: length, class: 'alike' }, cell.exercises.map(exerciseWords)),
    ),
  );
}

interface CellRun {
  readonly cell: BoardCell;
  readonly length: number;
}

/** Neighbours that do the very same, with nobody to be named, share one cell. */
function cellRuns(cells: readonly BoardCell[]): readonly CellRun[] {
  const runs: CellRun[] = [];
  for (const cell of cells) {
    const last = runs.at(-1);
    if (last !== undefined && isSame(cell, last.cell)) runs[runs.length - 1] = { cell, length: last.length + 1 };
    else runs.push({ cell, length: 1 });
  }
  return runs;
}

function isSame(one: BoardCell, other: BoardCell): boolean {
  const plain =
    one.exercises.length > 0 && one.exercises.every(({ doses }) => doses.every(({ who }) => who === undefined));
  return plain && JSON.stringify(one) === JSON.stringify(other);
}

function exerciseWords(exercise: BoardExercise): Element {
  return h(
    'div',
    { class: 'exercise' },
    exercise.at === undefined ? null : h('span', { class: 'at' }, atWords(exercise)),
    h('b', {}, exercise.name),
    ' ',
    exercise.doses.map((dose, index) => [
      index === 0 ? null : BETWEEN_DOSES,
      h('b', { class: 'sets' }, dose.dose),
      doseDetails(dose),
    ]),
  );
}

function doseDetails({ differs, who }: BoardDose): Content {
  return [
    differs.length === 0 ? null : h('span', { class: 'differs' }, ` ${differs.join(', ')}`),
    who === undefined ? null : h('span', { class: 'who' }, ' ', whoContent(who)),
  ];
}

const whoContent = (who: readonly BoardWho[]): Content =>
  who.map((one, index) => {
    const { before, after } = aroundNames(one);
    return [index === 0 ? null : ' · ', before, names(one.names), after];
  });
