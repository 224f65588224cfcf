// Athletes' cards as sheets of two half pages each, to be cut in the middle. How they are laid out stands in
// card-layout.ts.

import { CAUTIONS } from '../../report/cautions.ts';
import type { Card, CardLine } from '../../report/card.ts';
import {
  boxColumns,
  boxesAcross,
  boxesOf,
  CARD_MEASURES,
  detailLines,
  IF_NOT_MEANS,
  layOutCard,
  sessionFacts,
  sessionTitle,
} from './card-layout.ts';
import type { CardPart, HalfPage } from './card-layout.ts';
import { LEFT_MEANS } from './board-words.ts';
import { piece } from './document.ts';
import { box, boxes, groupMark, h, name } from './element.ts';
import type { Content, Element } from './element.ts';
import type { Paper } from './paper.ts';

/** What stands on all cards of a build. */
export interface CardFrame {
  readonly paper: Paper;
  readonly mark: string;
}

/** Takes half pages one after the other and gives the sheets that are full, each with two. */
export interface SheetMaker {
  readonly add: (halves: readonly string[]) => readonly string[];
  /** An odd half page alone on the last sheet. */
  readonly finish: () => readonly string[];
}

/**
 * Puts two half pages on a sheet. `add` gives the sheets that became full, `finish` the last one with an empty half.
 */
export function createSheets(): SheetMaker {
  let waiting: string | undefined;
  const add = (halves: readonly string[]): readonly string[] => {
    const full: string[] = [];
    for (const half of halves) {
      if (waiting === undefined) {
        waiting = half;
      } else {
        full.push(sheet(waiting + half));
        waiting = undefined;
      }
    }
    return full;
  };
  return { add, finish: () => (waiting === undefined ? [] : [sheet(waiting)]) };
}

/** Around half pages that are HTML already. */
const sheet = (halves: string): string => `<div class="sheet">\n${halves}</div>\n`;

/** The half pages of a card as HTML, one where its week fits. */
export function cardHalves(card: Card, frame: CardFrame): readonly string[] {
  const halves = layOutCard(card, frame.paper);
  return halves.map((half, index) => piece(cardHalf(card, half, { index, of: halves.length }, frame)));
}

function cardHalf(card: Card, half: HalfPage, part: { index: number; of: number }, { mark }: CardFrame): Element {
  const partWords = part.of === 1 ? '' : `, card ${part.index + 1} of ${part.of}`;
  return h(
    'article',
    { class: 'card' },
    h(
      'header',
      {},
      h('h2', {}, name(card.name)),
      card.group === undefined ? null : groupMark(card.group),
      h('p', { class: 'mark' }, 'sheet ', mark),
      h('p', { class: 'when' }, card.dates, partWords),
    ),
    h('div', { class: 'intent' }, h('p', { class: 'purpose' }, card.purpose), h('p', { class: 'small' }, IF_NOT_MEANS)),
    card.limits.length === 0 ? null : h('p', { class: 'limits' }, card.limits.join(' ')),
    card.events.length === 0
      ? null
      : h(
          'ul',
          { class: 'events' },
          card.events.map((event) => h('li', {}, event)),
        ),
    h('div', { class: 'columns' }, half.columns.map(column), half.columns.length === 1 ? ROOM : null),
    cardFooter(card),
  );
}

const column = (parts: readonly CardPart[]): Element => h('div', {}, parts.map(sessionPart));

/** Ruled lines to write on. */
const RULES = 11;
const ROOM = h(
  'div',
  { class: 'room', 'aria-hidden': 'true' },
  'notes',
  Array.from({ length: RULES }, () => h('i', {})),
);

function sessionPart({ session, lines, isFirst, isLast }: CardPart): Element {
  return h(
    'section',
    {},
    h(
      'div',
      { class: 'head' },
      h('h3', {}, sessionTitle(session)),
      h('p', { class: 'facts' }, isFirst ? sessionFacts(session) : 'goes on'),
    ),
    h(
      'table',
      { class: `lines across-${boxColumns(session)}` },
      h('colgroup', {}, h('col', { class: 'number' }), h('col', {})),
      h('thead', { class: 'unseen' }, h('tr', {}, COLUMN_HEADS)),
      h('tbody', {}, lines.map(lineRow)),
    ),
    isLast ? ASK : h('p', { class: 'goes-on' }, 'goes on in the next column'),
  );
}

const COLUMN_HEADS = ['No.', 'What to do, with a box for each set'].map((words) => h('th', { scope: 'col' }, words));

function lineRow(line: CardLine): Element {
  const boxClass = `of-${boxesAcross(line.sets)}${line.sets > CARD_MEASURES.boxesInARow ? ' low' : ''}`;
  return h(
    'tr',
    {},
    h('td', { class: 'number' }, line.order),
    h(
      'th',
      { scope: 'row' },
      h('span', { class: `boxes ${boxClass}` }, boxes(boxesOf(line.sets))),
      h('p', { class: 'what' }, h('span', {}, nameAndLoad(line)), h('span', { class: 'dose' }, line.dose)),
      detailLines(line).map((words) => h('p', { class: 'detail' }, words)),
    ),
  );
}

function nameAndLoad({ name: exercise, load }: CardLine): Content {
  return load === undefined ? exercise : [exercise, ' ', h('span', { class: 'load' }, load)];
}

/** What is written down after a session. */
const ASK = h(
  'p',
  { class: 'ask' },
  ['pain before', 'after', 'next morning', 'effort 1–10'].map((words) => h('span', {}, words, box())),
);

function cardFooter({ stop }: Card): Element {
  return h('footer', {}, h('p', { class: 'stop' }, stop.join(' ')), h('p', {}, LEFT_MEANS, ' ', CAUTIONS.join(' ')));
}
