// The Monday page to print: what to decide with a box to tick, what went otherwise than written, then the numbers.
// Called by `footfall review --format html`.

import { CAUTIONS } from '../../report/cautions.ts';
import { NO_DECISIONS, NO_EXCEPTIONS, NOTHING_AHEAD } from '../../report/review-page.ts';
import type { ReviewPage } from '../../report/review-page.ts';
import type { ReviewSection } from '../../report/review/sections/section.ts';
import type { ToldItem } from '../../report/review/told-item.ts';
import { box, h, names } from './element.ts';
import type { Content, Element } from './element.ts';

/** The sections in order, made one at a time. */
export function* reviewSections(page: ReviewPage): Iterable<Element> {
  yield h('header', {}, h('h1', {}, page.title), h('p', { class: 'facts' }, page.facts.join(' · ')));
  yield section(page.toDecide, decisions(page.decisions));
  yield section('Otherwise than written', items(page.exceptions, NO_EXCEPTIONS));
  yield section('The week ahead', items(page.ahead, NOTHING_AHEAD));
  for (const one of page.sections) yield section(one.title, content(one));
  yield h('footer', { class: 'small' }, CAUTIONS.join(' '));
}

const section = (title: string, inside: Content): Element => h('section', {}, h('h2', {}, title), inside);

function decisions(items: readonly ToldItem[]): Element {
  if (items.length === 0) return h('p', {}, NO_DECISIONS);
  return h(
    'ol',
    { class: 'decisions' },
    items.map(({ names: who, words, changes, places }) =>
      h(
        'li',
        {},
        box(),
        h('p', {}, h('b', {}, names(who)), `: ${words}`),
        h('p', {}, changes ?? null, placesOf(places)),
      ),
    ),
  );
}

/** Each whole on its line where there is room for it. */
const placesOf = (places: readonly string[]): Content =>
  places.map((place) => [' ', h('span', { class: 'place' }, place)]);

function items(told: readonly ToldItem[], none: string): Element {
  if (told.length === 0) return h('p', {}, none);
  return table(
    ['What', 'Who', 'How', 'Line'].map((title) => head(title, 'left')),
    told.map(({ kind, names: who, words, places }) => [
      rowHead(kind),
      h('td', { class: 'who' }, names(who)),
      cell(words, 'left'),
      h('td', { class: 'line' }, placesOf(places)),
    ]),
  );
}

type Align = 'left' | 'right';

function content({ columns, rows, notes }: ReviewSection): Content {
  const below = notes.map((note) => h('p', { class: 'note' }, note));
  const lines = h(
    'ul',
    {},
    rows.map(([line = '']) => h('li', {}, line)),
  );
  if (columns.length === 0) return [lines, below];
  const body = rows.map((row) =>
    row.map((text, index) => (index === 0 ? rowHead(text) : cell(text, columns[index]?.align ?? 'left'))),
  );
  return [
    table(
      columns.map(({ title, align }) => head(title, align)),
      body,
    ),
    below,
  ];
}

const table = (heads: readonly Element[], rows: readonly (readonly Element[])[]): Element =>
  h(
    'table',
    { class: 'plain' },
    h('thead', {}, h('tr', {}, heads)),
    h(
      'tbody',
      {},
      rows.map((row) => h('tr', {}, row)),
    ),
  );

const head = (title: string, align: Align): Element => h('th', { scope: 'col', ...aligned(align) }, title);

const rowHead = (text: string): Element => h('th', { scope: 'row' }, h('bdi', { dir: 'auto' }, text));

const cell = (inside: Content, align: Align): Element => h('td', aligned(align), inside);

const aligned = (align: Align): { readonly class?: string } => (align === 'right' ? { class: 'number' } : {});
