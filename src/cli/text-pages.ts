// The pages of `footfall build` for a person at a terminal: which of them answer what was asked for, in which order.
// Called by build-once.ts, which writes them while the athletes are compiled.

import type { Build, BuiltAthlete } from '../build/types.ts';
import { renderAthlete, renderSessions, renderWeeks } from '../render/terminal/athlete-page.ts';
import type { Canvas } from '../render/terminal/canvas.ts';
import { renderCautions } from '../render/terminal/cautions.ts';
import { renderGlance } from '../render/terminal/glance.ts';
import { renderSheet } from '../render/terminal/session-sheet.ts';
import { renderTextTable } from '../render/terminal/text-table.ts';
import { drawTable } from '../report/athlete-table.ts';
import { reportAthlete } from '../report/athlete-page.ts';
import { createGlance } from '../report/glance.ts';
import { isShort } from '../report/selection.ts';
import type { Selection } from '../report/selection.ts';
import { createSheets } from '../report/session-sheet.ts';
import { TABLES } from '../report/tables.ts';
import type { TableName } from '../report/table-names.ts';
import type { Terminal } from '../host/terminal.ts';
import { canvasOf } from './canvas.ts';

export interface PageRequest {
  readonly table?: TableName;
  /** One athlete was named: that athlete's page takes the place of the season at a glance. */
  readonly single: boolean;
}

/** The lines of the pages. Walks the athletes once. */
export function* textPages(
  request: PageRequest,
  build: Build,
  selection: Selection,
  terminal: Terminal,
): Iterable<string> {
  const canvas = canvasOf(terminal);
  switch (request.table) {
    case undefined:
      yield* request.single ? singlePage(build, selection, canvas) : seasonPage(build, selection, canvas);
      break;
    case 'season':
      yield* renderTextTable(drawTable(TABLES.season, build, selection), canvas);
      break;
    case 'weeks':
      yield* eachAthlete(build, (built) => renderWeeks(reportAthlete(build.plan, built, selection), canvas));
      break;
    case 'sessions':
      yield* eachAthlete(build, (built) => [
        canvas.palette.strong(built.athlete.name),
        ...renderSessions(reportAthlete(build.plan, built, selection), canvas),
      ]);
      break;
    case 'lines':
      yield* sheetPages(build.athletes, build, selection, canvas);
      break;
  }
  yield '';
  yield* renderCautions(canvas);
}

function* seasonPage(build: Build, selection: Selection, canvas: Canvas): Iterable<string> {
  const glance = createGlance(build, selection);
  const sheets = createSheets(build, selection);
  const readOut = isShort(selection);
  for (const built of build.athletes) {
    glance.add(built);
    if (readOut) sheets.add(built);
  }
  yield* renderGlance(glance.finish(), canvas);
  for (const sheet of sheets.finish()) yield* ['', ...renderSheet(sheet, canvas)];
}

function* singlePage(build: Build, selection: Selection, canvas: Canvas): Iterable<string> {
  for (const built of build.athletes) {
    const page = reportAthlete(build.plan, built, selection);
    if (isShort(selection)) {
      yield* [...renderWeeks(page, canvas), '', ...sheetPages([built], build, selection, canvas)];
    } else {
      yield* renderAthlete(page, canvas);
    }
  }
}

function* sheetPages(
  athletes: Iterable<BuiltAthlete>,
  build: Build,
  selection: Selection,
  canvas: Canvas,
): Iterable<string> {
  const sheets = createSheets(build, selection);
  for (const built of athletes) sheets.add(built);
  let before: readonly string[] = [];
  for (const sheet of sheets.finish()) {
    yield* [...before, ...renderSheet(sheet, canvas)];
    before = [''];
  }
}

function* eachAthlete({ athletes }: Build, page: (built: BuiltAthlete) => Iterable<string>): Iterable<string> {
  let before: readonly string[] = [];
  for (const built of athletes) {
    yield* before;
    yield* page(built);
    before = [''];
  }
}
