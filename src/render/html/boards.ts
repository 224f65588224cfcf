// Session boards: one landscape page each to run the floor from, more where a squad is big. What is read from afar (who,
// what, how often) is large; lists to tick stand at the side, or below where there are many names.

import type { Board, BoardGroup } from '../../report/board.ts';
import type { BoardCell, BoardDose, BoardExercise, BoardWho } from '../../report/board-cells.ts';
import type { BoardOwn, BoardRow } from '../../report/board-rows.ts';
import { CAUTIONS } from '../../report/cautions.ts';
import type { Cue } from '../../report/board-watch.ts';
import type { Station, StationPerson } from '../../report/board-stations.ts';
import { columnsOf, layOutBoard, MOST_GROUPS, MOST_NAMES_IN_HEAD, remindersShare } from './board-layout.ts';
import type { BoardBlock, BoardForm } from './board-layout.ts';
import { aroundNames, atWords, BETWEEN_DOSES, boardFooterWords, leaveOutWords, usualWords } from './board-words.ts';
import { box, groupMark, h, name, names } from './element.ts';
import type { Content, Element } from './element.ts';
import type { Paper } from './paper.ts';

/** The pages of one session: the floor with who is there, and where that fills a page the bars and cues on a second. */
export function boardPages(board: Board, { mark, paper }: BoardFrame): readonly Element[] {
  const { form, zoom, behind } = layOutBoard(board, paper);
  const pages: readonly Page[] = [
    { ...firstPage(board, form, { paper, zoom }), zoom },
    ...behind.map((one) => ({
      content: one.blocks.map((block) => blockOf(board, block, { paper, zoom: one.zoom })),
      zoom: one.zoom,
    })),
  ];
  return pages.map((one, part) =>
    h(
      'article',
      { class: classOf(one) },
      boardHeader(board, mark, { part, of: pages.length }),
      one.content,
      boardFooter(board, mark, part === pages.length - 1),
    ),
  );
}

interface Page {
  readonly content: Content;
  readonly zoom: number;
  /** The list to tick stands beside the timetable. */
  readonly beside?: true;
}

const classOf = ({ zoom, beside }: Page): string =>
  ['board', ...(beside === true ? ['beside'] : []), ...(zoom === 100 ? [] : [`zoom-${zoom}`])].join(' ');

type Size = { readonly paper: Paper; readonly zoom: number };

function firstPage(board: Board, form: BoardForm, size: Size): Pick<Page, 'content' | 'beside'> {
  const side = h('div', { class: 'side' }, roll(board), reminders(board));
  const floor = [timetables(board), ownList(board.own)];
  switch (form) {
    case 'all':
      return { beside: true, content: [h('div', { class: 'floor' }, floor, bars(board)), side, cueList(board.cues)] };
    case 'beside':
      return { beside: true, content: [h('div', { class: 'floor' }, floor), side] };
    case 'wide':
      return { content: [timetables(board), blockOf(board, 'rest', size)] };
    case 'full':
      return { content: timetables(board) };
  }
}

function blockOf(board: Board, block: BoardBlock, { paper, zoom }: Size): Content {
  switch (block) {
    case 'rest': {
      const share = Math.round(10 * remindersShare(board, paper, zoom));
      return h('div', { class: `across share-${share}` }, ownList(board.own), reminders(board));
    }
    case 'roll':
      return h('div', { class: 'listed' }, roll(board));
    case 'bars':
      return bars(board);
    case 'cues':
      return cueList(board.cues);
  }
}

const bars = (board: Board): Element => h('div', { class: 'bars' }, stationTables(board));

/** What stands on all boards of a build. */
export interface BoardFrame {
  readonly paper: Paper;
  readonly mark: string;
}

/** The cautions stand on the last page. */
function boardFooter(board: Board, mark: string, isLast: boolean): Element {
  const words = boardFooterWords(board, mark);
  return h('footer', { class: 'small' }, isLast ? `${words} ${CAUTIONS.join(' ')}` : words);
}

function boardHeader(board: Board, mark: string, { part, of }: { part: number; of: number }): Element {
  const { day, time, place, due, minutes, slotMinutes, next } = board;
  const length =
    minutes > slotMinutes
      ? `planned for ${minutes} min, the slot has ${slotMinutes}`
      : `${minutes} of ${slotMinutes} min`;
  const ahead = next === undefined ? [] : [`next: ${next}`];
  const pages = of === 1 ? [] : [`page ${part + 1} of ${of}`];
  const facts = part === 0 ? [`${due} due`, length, ...ahead, ...pages] : pages;
  return h(
    'header',
    {},
    h('h2', {}, day, time === undefined ? null : `, ${time}`, `, ${place}`),
    h('p', { class: 'facts' }, [...facts, `sheet ${mark}`].join(' · ')),
  );
}

/** The timetable, in several where there are more groups than fit side by side. */
function timetables(board: Board): readonly Element[] {
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

/** What somebody does apart from the rows, each with the minute it starts at. */
function ownList(own: readonly BoardOwn[]): Element | null {
  if (own.length === 0) return null;
  return h(
    'section',
    { class: 'own' },
    h('h3', {}, 'On their own'),
    h(
      'ul',
      {},
      own.map(({ name: person, lines }) =>
        h(
          'li',
          {},
          h('b', {}, name(person), ':'),
          lines.map(({ at, exercise, dose, manner }, index) => [
            index === 0 ? ' ' : ' · ',
            h('span', { class: 'at' }, `at ${at} `),
            h('b', {}, `${exercise} `, h('span', { class: 'sets' }, dose)),
            ` ${manner.join(', ')}`,
          ]),
        ),
      ),
    ),
  );
}

function stationTables({ stations }: Board): readonly Element[] {
  return stations.map((table) =>
    h(
      'section',
      { class: `stations columns-${columnsOf(table)}` },
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
    reminder('Short of time', [leaveOutWords(short)]),
  );
}

const reminder = (title: string, lines: readonly string[]): Element =>
  h(
    'div',
    {},
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
  );

/** A longer list may go on in the next column. */
const MANY_IN_GROUP = 12;

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
          people.length > MANY_IN_GROUP ? { class: 'long' } : {},
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

function cueList(cues: readonly Cue[]): Element | null {
  if (cues.length === 0) return null;
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
