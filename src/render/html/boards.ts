// Session boards: one landscape page each to run the floor from, more where a squad is big. What is read from afar (who,
// what, how often) is large; lists to tick stand at the side, or below where there are many names.

import type { Board, BoardGroup } from '../../report/board.ts';
import type { BoardCell, BoardDose, BoardExercise, BoardRow } from '../../report/board-rows.ts';
import type { Cue } from '../../report/board-watch.ts';
import type { Station, StationPerson } from '../../report/board-stations.ts';
import { CAUTIONS } from '../../report/cautions.ts';
import { box, groupMark, h, name, names } from './element.ts';
import type { Content, Element } from './element.ts';

/** Groups side by side on one page. */
const MOST_GROUPS = 6;
/** From so many names on the list to tick stands below, in columns. */
const MANY_NAMES = 18;
/** Exercises named under what to leave out. */
const MOST_LEFT_OUT = 4;

/** The pages of one session. */
export function boardPage(board: Board, mark: string): Element {
  const isBig = board.due > MANY_NAMES;
  return h(
    'article',
    { class: isBig ? 'board big' : 'board' },
    boardHeader(board, mark),
    h('div', { class: 'floor' }, timetables(board), stationTables(board)),
    h('div', { class: 'side' }, roll(board), reminders(board)),
    board.cues.length === 0 ? null : cueList(board.cues),
    h('footer', { class: 'small' }, `${board.day}, ${board.place}, sheet ${mark}. ${CAUTIONS.join(' ')}`),
  );
}

function boardHeader(board: Board, mark: string): Element {
  const { day, time, place, due, minutes, slotMinutes, next } = board;
  const length =
    minutes > slotMinutes
      ? `planned for ${minutes} min, the slot has ${slotMinutes}`
      : `${minutes} of ${slotMinutes} min`;
  return h(
    'header',
    {},
    h('h2', {}, day, time === undefined ? null : `, ${time}`, `, ${place}`),
    h(
      'p',
      { class: 'facts' },
      [`${due} due`, length, ...(next === undefined ? [] : [`next: ${next}`]), `sheet ${mark}`].join(' · '),
    ),
  );
}

/** The timetable, in several where there are more groups than fit side by side. */
function timetables({ groups, rows }: Board): readonly Element[] {
  const tables: Element[] = [];
  for (let from = 0; from < groups.length; from += MOST_GROUPS) {
    tables.push(timetable(groups, rows, from, Math.min(groups.length, from + MOST_GROUPS)));
  }
  return tables;
}

function timetable(groups: readonly BoardGroup[], rows: readonly BoardRow[], from: number, until: number): Element {
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
        groups.slice(from, until).map((group) => h('th', { scope: 'col' }, groupHead(group))),
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

/** Names under the group, as long as they are few enough to read. */
const MOST_NAMES_IN_HEAD = 8;

function groupHead({ mark, people }: BoardGroup): Content {
  return [
    mark === undefined ? 'everybody else' : groupMark(mark),
    h('p', { class: 'people' }, people.length > MOST_NAMES_IN_HEAD ? `${people.length} athletes` : names(people)),
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
      row.usual.map((words) => h('p', { class: 'usual' }, words)),
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

function exerciseWords({ name: exercise, doses }: BoardExercise): Element {
  const [only] = doses;
  if (doses.length === 1 && only !== undefined) {
    return h(
      'div',
      { class: 'exercise' },
      h('b', {}, exercise, ' ', h('span', { class: 'sets' }, only.dose)),
      doseDetails(only),
    );
  }
  return h(
    'div',
    { class: 'exercise' },
    h('b', {}, exercise),
    doses.map((dose) => h('p', {}, h('b', { class: 'sets' }, dose.dose), doseDetails(dose))),
  );
}

function doseDetails({ differs, who }: BoardDose): Content {
  return [
    differs.length === 0 ? null : h('span', { class: 'differs' }, ` ${differs.join(', ')}`),
    who === undefined ? null : h('span', { class: 'who' }, ' ', names(who)),
  ];
}

function stationTables({ stations }: Board): readonly Element[] {
  return stations.map((table) =>
    h(
      'section',
      { class: 'stations' },
      h('h3', {}, table.title),
      h(
        'ul',
        {},
        table.stations.map((station) => h('li', {}, h('b', {}, station.name), stationPeople(station))),
      ),
    ),
  );
}

function stationPeople({ people }: Station): Element {
  return h(
    'ol',
    {},
    people.map((person) => h('li', {}, stationPerson(person))),
  );
}

function stationPerson({ name: person, exercise, dose, load, made }: StationPerson): Content {
  return [
    name(person),
    ` ${dose} `,
    load === undefined ? h('span', { class: 'blank' }, h('span', { class: 'unseen' }, 'own weight')) : h('b', {}, load),
    exercise === undefined ? null : h('p', { class: 'small' }, exercise.toLowerCase()),
    made === undefined ? null : h('p', { class: 'small' }, made),
  ];
}

function reminders({ watch, kit, short }: Board): Element {
  return h(
    'dl',
    { class: 'reminders' },
    reminder('Watch', watch.length === 0 ? ['nobody in particular'] : watch),
    reminder('Set out', kit.length === 0 ? ['nothing'] : [kit.join(' · ')]),
    reminder(
      'Short of time',
      short.length === 0
        ? ['do it all']
        : [
            `leave out ${short
              .slice(0, MOST_LEFT_OUT)
              .map((one) => one.toLowerCase())
              .join(', then ')}`,
          ],
    ),
  );
}

function reminder(title: string, lines: readonly string[]): readonly Element[] {
  return [
    h('dt', {}, title),
    h(
      'dd',
      {},
      h(
        'ul',
        {},
        lines.map((line) => h('li', {}, line)),
      ),
    ),
  ];
}

/** What is ticked here is the record. */
function roll({ groups }: Board): Element {
  return h(
    'section',
    { class: 'roll' },
    h('h3', {}, 'Tick: in, out, did less'),
    h(
      'div',
      { class: 'lists' },
      groups.map(({ mark, people }) =>
        h(
          'table',
          {},
          h(
            'thead',
            {},
            h(
              'tr',
              {},
              h('th', { scope: 'col' }, mark === undefined ? 'Name' : groupMark(mark)),
              ['in', 'out', 'less'].map((words) => h('th', { scope: 'col', class: 'tick' }, words)),
            ),
          ),
          h(
            'tbody',
            {},
            people.map((person) =>
              h(
                'tr',
                {},
                h('th', { scope: 'row' }, name(person)),
                [1, 2, 3].map(() => h('td', { class: 'tick' }, box())),
              ),
            ),
          ),
        ),
      ),
    ),
  );
}

function cueList(cues: readonly Cue[]): Element {
  return h(
    'section',
    { class: 'cues' },
    h('h3', {}, 'How it looks, and when to stop a set'),
    h(
      'ul',
      {},
      cues.map(({ name: exercise, cue, stop }) =>
        h('li', {}, h('b', {}, exercise), ` ${cue} `, h('b', {}, 'Stop: '), stop),
      ),
    ),
  );
}
