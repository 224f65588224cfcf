// Every artefact of a build into one folder: tables, cards, boards, chart, calendars and the first page that leads to all
// of them. Athletes are compiled, written and forgotten one by one; what belongs to everybody is gathered on the way.

import type { Build, BuiltAthlete } from '../build/types.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import { settleForLongRun } from '../host/engine.ts';
import type { OutputFolder } from '../host/output-folder.ts';
import type { Progress } from '../host/progress.ts';
import { boardPages } from '../render/html/boards.ts';
import { cardHalves, createSheets } from '../render/html/cards.ts';
import type { SheetMaker } from '../render/html/cards.ts';
import { page, PAGE_END, pageStart, piece } from '../render/html/document.ts';
import type { PageFrame } from '../render/html/document.ts';
import { h } from '../render/html/element.ts';
import { indexSections } from '../render/html/index-page.ts';
import type { Paper } from '../render/html/paper.ts';
import { physioSections } from '../render/html/physio.ts';
import { seasonPages } from '../render/html/season.ts';
import { renderCalendar } from '../render/ical/calendar.ts';
import { readLastEvents } from '../render/ical/last-events.ts';
import { renderBuild } from '../render/json/build.ts';
import { createBoards } from '../report/board.ts';
import { createDocument } from '../report/build-document.ts';
import type { Calendar } from '../report/calendar.ts';
import { createCalendars } from '../report/calendar.ts';
import { createCards } from '../report/card.ts';
import type { Card } from '../report/card.ts';
import { createFileNames } from '../report/file-names.ts';
import { createIndexPage } from '../report/index-page.ts';
import { createPhysioPage } from '../report/physio-page.ts';
import { createSeasonChart } from '../report/season-chart.ts';
import type { Selection } from '../report/selection.ts';
import { TABLES } from '../report/tables.ts';
import { tableWriter } from './write-tables.ts';
import { lazily, mapped } from '../util/lazily.ts';

export interface BuildToWrite {
  /** Only those who are asked for, to be walked once. */
  readonly build: Build;
  readonly selection: Selection;
  readonly paper: Paper;
  /** Findings of the plan as a whole, asked for when the athletes have been walked. */
  readonly findings: () => readonly Diagnostic[];
  readonly progress: Progress;
  /** Waited for after every athlete. */
  readonly breathe?: () => Promise<void>;
}

/** Writes everything. Of a few athletes the pages alone are a long run. */
export async function writeBuild(folder: OutputFolder, job: BuildToWrite): Promise<void> {
  settleForLongRun();
  const { selection, findings, progress, breathe } = job;
  // The mark of a build is worked out whenever it is asked for: once is enough.
  const build: Build = { ...job.build };
  const document = createDocument(build, selection);
  const parts = createParts(folder, { ...job, build });
  let planFindings: readonly Diagnostic[] = [];
  const text = renderBuild({
    head: document.head,
    athletes: mapped(build.athletes, (built) => {
      for (const part of parts) part.add(built);
      return document.athlete(built);
    }),
    findings: mapped(
      lazily(() => {
        planFindings = findings();
        return planFindings;
      }),
      document.finding,
    ),
  });
  let done = 0;
  for (const line of text) {
    folder.append('plan.json', line);
    done += 1;
    progress.tell(Math.min(done, build.plan.athletes.length), build.plan.athletes.length);
    await breathe?.();
  }
  for (const part of parts) part.finish(planFindings);
}

/** One kind of artefact: takes the athletes as they pass, and is finished when all have. */
interface Part {
  readonly add: (built: BuiltAthlete) => void;
  readonly finish: (findings: readonly Diagnostic[]) => void;
}

function createParts(folder: OutputFolder, job: BuildToWrite): readonly Part[] {
  const names = createFileNames(job.build.plan.athletes.map(({ id }) => id));
  const nameOf = names.of;
  return [
    ...[TABLES.weeks, TABLES.sessions, TABLES.lines].map((table) => ({
      add: tableWriter(folder, { plan: job.build.plan, selection: job.selection }, table),
      finish: noFinish,
    })),
    cardPart(folder, job, nameOf),
    calendarPart(folder, job, nameOf),
    boardPart(folder, job),
    seasonPart(folder, job),
    physioPart(folder, job),
    indexPart(folder, job, nameOf),
  ];
}

function writeAll(folder: OutputFolder, path: string, texts: Iterable<string>): void {
  for (const text of texts) folder.append(path, text);
}

function noFinish(): void {}

/** Each athlete's whole season, and for each week the cards of everybody to hand out. */
function cardPart(folder: OutputFolder, job: BuildToWrite, nameOf: (id: string) => string): Part {
  const { build, selection, paper } = job;
  const frame = { paper, mark: build.mark };
  const cardsOf = createCards(build, selection);
  const weeks = new Map<string, SheetMaker>();
  const addToWeek = (card: Card, halves: readonly string[]): void => {
    const path = `weeks/${card.starts}.html`;
    let sheets = weeks.get(path);
    if (sheets === undefined) {
      sheets = createSheets();
      weeks.set(path, sheets);
      folder.append(path, pageStart(frameOf(job, `Cards of week ${card.week}, ${card.dates}`, 'cards', '../')));
    }
    writeAll(folder, path, sheets.add(halves));
  };
  const add = (built: BuiltAthlete): void => {
    const path = `athletes/${nameOf(built.athlete.id)}.html`;
    const cards = cardsOf(built);
    const sheets = createSheets();
    folder.append(path, pageStart(frameOf(job, `Cards: ${cards[0]?.name ?? built.athlete.id}`, 'cards', '../')));
    if (cards.length === 0) folder.append(path, piece(h('p', {}, 'No sessions are planned.')));
    for (const card of cards) {
      const halves = cardHalves(card, frame);
      writeAll(folder, path, sheets.add(halves));
      addToWeek(card, halves);
    }
    writeAll(folder, path, [...sheets.finish(), PAGE_END]);
  };
  const finish = (): void => {
    for (const [path, sheets] of weeks) writeAll(folder, path, [...sheets.finish(), PAGE_END]);
  };
  return { add, finish };
}

function frameOf({ paper }: BuildToWrite, title: string, kind: PageFrame['kind'], home: string): PageFrame {
  return { title, paper, kind, home: `${home}index.html` };
}

function calendarPart(folder: OutputFolder, { build, selection }: BuildToWrite, nameOf: (id: string) => string): Part {
  const calendars = createCalendars(build, selection);
  const write = (path: string, calendar: Calendar): void => {
    folder.append(path, renderCalendar(calendar, readLastEvents(folder.readLast(path) ?? '')));
  };
  return {
    add: (built) => {
      write(`athletes/${nameOf(built.athlete.id)}.ics`, calendars.add(built));
    },
    finish: () => {
      write('calendar.ics', calendars.finish());
    },
  };
}

function boardPart(folder: OutputFolder, job: BuildToWrite): Part {
  const boards = createBoards(job.build, job.selection);
  return {
    add: boards.add,
    finish: () => {
      let open: string | undefined;
      for (const board of boards.finish()) {
        const path = `sessions/${board.date}.html`;
        if (path !== open) {
          if (open !== undefined) folder.append(open, PAGE_END);
          folder.append(path, pageStart(frameOf(job, `Session board: ${board.day}`, 'board', '../')));
          open = path;
        }
        writeAll(folder, path, boardPages(board, { mark: job.build.mark, paper: job.paper }).map(piece));
      }
      if (open !== undefined) folder.append(open, PAGE_END);
    },
  };
}

function seasonPart(folder: OutputFolder, job: BuildToWrite): Part {
  const maker = createSeasonChart(job.build, job.selection);
  return {
    add: maker.add,
    finish: () => {
      const chart = maker.finish();
      const frame = frameOf(job, `Season chart: ${chart.title}`, 'season', '');
      writeAll(folder, 'season.html', page(frame, seasonPages(chart, job.paper)));
    },
  };
}

function physioPart(folder: OutputFolder, job: BuildToWrite): Part {
  const maker = createPhysioPage(job.build);
  return {
    add: maker.add,
    finish: () => {
      const physio = maker.finish();
      writeAll(
        folder,
        'physio.html',
        page(frameOf(job, `For the physio: ${physio.title}`, 'list', ''), physioSections(physio)),
      );
    },
  };
}

const WHOLE_SEASON = [
  { words: 'Season chart, for the wall', href: 'season.html' },
  { words: 'For the physio, not for the wall', href: 'physio.html' },
  { words: "The squad's calendar", href: 'calendar.ics' },
  { words: 'Table of weeks', href: 'weeks.csv' },
  { words: 'Table of sessions', href: 'sessions.csv' },
  { words: 'Table of lines', href: 'lines.csv' },
  { words: 'Everything, with reasons', href: 'plan.json' },
];

function indexPart(folder: OutputFolder, job: BuildToWrite, nameOf: (id: string) => string): Part {
  const maker = createIndexPage(job.build, job.selection);
  return {
    add: maker.add,
    finish: (findings) => {
      const index = maker.finish(findings);
      const links = {
        cards: (id: string) => `athletes/${nameOf(id)}.html`,
        calendar: (id: string) => `athletes/${nameOf(id)}.ics`,
        week: (starts: string) => `weeks/${starts}.html`,
        board: (date: string) => `sessions/${date}.html`,
        whole: WHOLE_SEASON,
      };
      const frame: PageFrame = { title: index.title, paper: job.paper, kind: 'list' };
      writeAll(folder, 'index.html', page(frame, indexSections(index, links)));
    },
  };
}
