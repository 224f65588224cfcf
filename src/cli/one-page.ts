// One page or calendar of a build for standard output: which of them answers what was asked for. Called by
// build-once.ts; a folder is written by write-build.ts.

import type { Build } from '../build/types.ts';
import { boardPages } from '../render/html/boards.ts';
import { cardHalves, createSheets } from '../render/html/cards.ts';
import { page, PAGE_END, pageStart } from '../render/html/document.ts';
import type { Paper } from '../render/html/paper.ts';
import { seasonPages } from '../render/html/season.ts';
import { renderCalendar } from '../render/ical/calendar.ts';
import { NO_LAST_EVENTS } from '../render/ical/last-events.ts';
import { createBoards } from '../report/board.ts';
import { createCalendars } from '../report/calendar.ts';
import type { Calendar } from '../report/calendar.ts';
import { createCards } from '../report/card.ts';
import { createSeasonChart } from '../report/season-chart.ts';
import { isShort } from '../report/selection.ts';
import type { Selection } from '../report/selection.ts';

/** Cards of a single athlete, boards of a few days, otherwise the season's chart. */
export function* htmlPage(build: Build, selection: Selection, single: boolean, paper: Paper): Iterable<string> {
  if (single) yield* cardsPage(build, selection, paper);
  else if (isShort(selection)) yield* boardsPage(build, selection, paper);
  else yield* chartPage(build, selection, paper);
}

function* cardsPage(build: Build, selection: Selection, paper: Paper): Iterable<string> {
  const cardsOf = createCards(build, selection);
  const cards = [...build.athletes].flatMap((built) => cardsOf(built));
  const title = `Cards: ${cards[0]?.name ?? 'no sessions are planned'}`;
  const frame = { paper, mark: build.mark };
  const sheets = createSheets();
  yield pageStart({ title, paper, kind: 'cards' });
  for (const card of cards) yield* sheets.add(cardHalves(card, frame));
  yield* sheets.finish();
  yield PAGE_END;
}

function* boardsPage(build: Build, selection: Selection, paper: Paper): Iterable<string> {
  const boards = createBoards(build, selection);
  for (const built of build.athletes) boards.add(built);
  const title = `Session boards: ${build.plan.season.title}`;
  const { mark } = build;
  const pages = [...boards.finish()].flatMap((board) => boardPages(board, { mark, paper }));
  yield* page({ title, paper, kind: 'board' }, pages);
}

function* chartPage(build: Build, selection: Selection, paper: Paper): Iterable<string> {
  const maker = createSeasonChart(build, selection);
  for (const built of build.athletes) maker.add(built);
  const chart = maker.finish();
  yield* page({ title: `Season chart: ${chart.title}`, paper, kind: 'season' }, seasonPages(chart, paper));
}

/** The calendar of a single athlete, otherwise the squad's. */
export function* calendarFile(build: Build, selection: Selection, single: boolean): Iterable<string> {
  const calendars = createCalendars(build, selection);
  let own: Calendar | undefined;
  for (const built of build.athletes) own = calendars.add(built);
  yield renderCalendar(single && own !== undefined ? own : calendars.finish(), NO_LAST_EVENTS);
}
