// Session boards: one landscape page each to run the floor from, more where a squad is big. What is read from afar (who,
// what, how often) is large; lists to tick stand at the side, or below where there are many names. The timetable itself is
// board-timetable.ts; which parts stand on which page board-layout.ts.

import type { Board, BoardGroup } from '../../report/board.ts';
import type { BoardOwn } from '../../report/board-rows.ts';
import { CAUTIONS } from '../../report/cautions.ts';
import type { Cue } from '../../report/board-watch.ts';
import type { Station, StationPerson } from '../../report/board-stations.ts';
import { columnsOf } from './board-heights.ts';
import { layOutBoard, remindersShare } from './board-layout.ts';
import type { BoardBlock, BoardForm } from './board-layout.ts';
import { timetables } from './board-timetable.ts';
import { OWN_ELSEWHERE, boardFooterWords, leaveOutWords } from './board-words.ts';
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
      return { content: [timetables(board), ownElsewhere(board)] };
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

/** Whoever has the first page alone has to know who isn't in it. */
function ownElsewhere(board: Board): Element | null {
  if (board.own.length === 0) return null;
  return h('p', { class: 'elsewhere' }, `${OWN_ELSEWHERE} `, names(board.own.map((one) => one.name)));
}

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
    h('div', { class: 'lists' }, groups.map(rollOfGroup)),
  );
}

function rollOfGroup({ mark, people }: BoardGroup): Element {
  const ticks = ['in', 'out', 'less'];
  const head = h(
    'tr',
    {},
    h('th', { scope: 'col' }, mark === undefined ? 'Name' : groupMark(mark)),
    ticks.map((words) => h('th', { scope: 'col', class: 'tick' }, words)),
  );
  const row = (person: string): Element =>
    h(
      'tr',
      {},
      h('th', { scope: 'row' }, name(person)),
      ticks.map(() => h('td', { class: 'tick' }, box())),
    );
  const isLong = people.length > MANY_IN_GROUP;
  return h('table', isLong ? { class: 'long' } : {}, h('thead', {}, head), h('tbody', {}, people.map(row)));
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
