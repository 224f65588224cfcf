// The first page of a written build. Plain links and tables, so that it is read and walked with the keyboard alone.
// Called by cli/write-build.ts.

import { CAUTIONS } from '../../report/cautions.ts';
import type { Decision } from '../../report/decision-words.ts';
import type { IndexAthlete, IndexPage, IndexWeek } from '../../report/index-page.ts';
import { h, name } from './element.ts';
import type { Content, Element } from './element.ts';

/** Where the pages of a build are, from its folder. */
export interface IndexLinks {
  readonly cards: (athlete: string) => string;
  readonly calendar: (athlete: string) => string;
  readonly week: (starts: string) => string;
  readonly board: (date: string) => string;
  readonly whole: readonly { readonly words: string; readonly href: string }[];
}

/** The sections in order, made one at a time. Links are those of the folder that is written. */
export function* indexSections(index: IndexPage, links: IndexLinks): Iterable<Element> {
  yield h(
    'header',
    {},
    h('h1', {}, index.title),
    h('p', {}, `${index.dates} · ${index.athletes.length} athletes · sheet ${index.mark}`),
  );
  yield h(
    'nav',
    { 'aria-label': 'The whole season' },
    h('h2', {}, 'The whole season'),
    h(
      'ul',
      { class: 'row' },
      links.whole.map(({ words, href }) => h('li', {}, link(href, words))),
    ),
  );
  yield section('Week by week', weeksTable(index.weeks, links));
  yield section('Athletes', athletesTable(index.athletes, links));
  yield section("The coach's own numbers", decisions(index.decisions));
  yield section('Waived rules', decisions(index.waivers));
  yield section('What was found', found(index.findings));
  yield h('footer', { class: 'small' }, CAUTIONS.join(' '));
}

const link = (href: string, words: Content): Element => h('a', { href }, words);

const section = (title: string, ...content: readonly Content[]): Element =>
  h('section', {}, h('h2', {}, title), content);

function table(heads: readonly string[], rows: readonly Element[]): Element {
  return h(
    'table',
    { class: 'plain' },
    h(
      'thead',
      {},
      h(
        'tr',
        {},
        heads.map((head) => h('th', { scope: 'col' }, head)),
      ),
    ),
    h('tbody', {}, rows),
  );
}

function weeksTable(weeks: readonly IndexWeek[], links: IndexLinks): Element {
  return table(
    ['Week', 'Dates', 'Cards to hand out', 'Boards'],
    weeks.map(({ week, starts, dates, hasCards, sessions }) =>
      h(
        'tr',
        {},
        h('th', { scope: 'row' }, week),
        h('td', {}, dates),
        h('td', {}, hasCards ? link(links.week(starts), `cards of week ${week}`) : 'none'),
        h(
          'td',
          {},
          sessions.length === 0 ? 'none' : separated(sessions.map(({ date, words }) => link(links.board(date), words))),
        ),
      ),
    ),
  );
}

const separated = (items: readonly Content[]): Content =>
  items.flatMap((item, index) => (index === 0 ? [item] : [', ', item]));

function athletesTable(athletes: readonly IndexAthlete[], links: IndexLinks): Element {
  return table(
    ['Name', 'Squad', 'Group', 'Season', 'Phone'],
    athletes.map(({ id, name: person, squad, group }) =>
      h(
        'tr',
        {},
        h('th', { scope: 'row' }, name(person)),
        h('td', {}, squad ?? ''),
        h('td', {}, group ?? ''),
        h('td', {}, link(links.cards(id), ['all cards of ', name(person)])),
        h('td', {}, link(links.calendar(id), ['calendar of ', name(person)])),
      ),
    ),
  );
}

function decisions(list: readonly Decision[]): Element {
  if (list.length === 0) return h('p', {}, 'None.');
  return table(
    ['When', 'For', 'What', 'Because'],
    list.map(({ when, who, what, because }) =>
      h('tr', {}, h('td', {}, when), h('td', {}, who), h('td', {}, what), h('td', {}, because)),
    ),
  );
}

function found(findings: readonly string[]): Element {
  if (findings.length === 0) return h('p', {}, 'Nothing.');
  return h(
    'div',
    {},
    h(
      'ul',
      { class: 'found' },
      findings.map((line) => h('li', {}, line)),
    ),
    h('p', {}, 'footfall check shows them whole.'),
  );
}
