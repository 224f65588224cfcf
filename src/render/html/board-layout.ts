// How large a board can be printed: everything on one page where it fits, otherwise the floor on the first and the bars on
// the second, each as large as its page allows, since it is read from where people stand. Heights are worked out from the
// text before a browser sees it, on the safe side. Measures are millimetres and points, and are the stylesheet's as well.

import type { Board, BoardGroup } from '../../report/board.ts';
import type { BoardCell } from '../../report/board-cells.ts';
import type { BoardRow } from '../../report/board-rows.ts';
import type { Station, StationTable } from '../../report/board-stations.ts';
import { CAUTIONS } from '../../report/cautions.ts';
import { boardFooterWords, cueText, exerciseText, leaveOutWords, ownText, usualWords } from './board-words.ts';
import type { StrongAndPlain } from './board-words.ts';
import { printable } from './paper.ts';
import type { Paper } from './paper.ts';
import { linesNeeded, linesOfRuns, textWidth } from './text-width.ts';
import type { Type } from './text-width.ts';

export const BOARD_TYPE = {
  title: { points: 18, bold: true },
  facts: { points: 11 },
  text: { points: 10 },
  strong: { points: 10, bold: true },
  small: { points: 9 },
  cue: { points: 9.5 },
} as const;

export const BOARD_MEASURES = {
  titleLine: 8,
  factsLine: 5,
  headLine: 4.6,
  gap: 1.5,
  side: 60,
  sideGap: 4,
  /** What most of a row do stands in it on one line. */
  minutes: 30,
  minutesLine: 4.4,
  smallLine: 3.7,
  textLine: 4.1,
  padding: 1,
  stationsAcross: 4,
  stationGap: 1.2,
  stationLine: 4.2,
  rollRow: 5.9,
  /** Of the list to tick, where it has a page's width: at most so many columns, no narrower than this. */
  rollColumns: 5,
  rollColumn: 50,
  rollGap: 3.5,
  remindersGap: 5,
  cueLine: 4,
} as const;

/** Groups side by side on one page. */
export const MOST_GROUPS = 6;
/** Names under the group, as long as they are few enough to read. */
export const MOST_NAMES_IN_HEAD = 8;

/**
 * What the first page has: `all`; everything but `bars` and `cues`; the timetable over its whole width and what doesn't
 * stand in it; or the timetable alone.
 */
export type BoardForm = 'all' | 'beside' | 'wide' | 'full';

/** What may stand behind the first page, in this order. */
export type BoardBlock = 'rest' | 'roll' | 'bars' | 'cues';

export interface BoardPage {
  readonly blocks: readonly BoardBlock[];
  /** Per cent of the sizes in the stylesheet. */
  readonly zoom: number;
}

export interface BoardLayout {
  readonly form: BoardForm;
  /** Of the first page. */
  readonly zoom: number;
  readonly behind: readonly BoardPage[];
}

/** Per cents that pages are enlarged by, the largest first. */
export const ZOOMS = [160, 150, 140, 130, 125, 120, 115, 110, 105, 100] as const;

export function layOutBoard(board: Board, paper: Paper): BoardLayout {
  const largest = largestOn(paper);
  const whole = largest((width) => onePage(board, width));
  if (whole !== undefined) return { form: 'all', zoom: whole, behind: [] };
  const fits = ({ first }: Form): boolean => largest((width) => first(board, width)) !== undefined;
  const { name, first, behind } = FORMS.find(fits) ?? FULL;
  return {
    form: name,
    zoom: largest((width) => first(board, width)) ?? 100,
    behind: pagesBehind(board, behind, largest),
  };
}

type HeightIn = (width: number) => number;
type Largest = (heightIn: HeightIn) => number | undefined;

/** The most that something can be enlarged by to fit a page. */
function largestOn(paper: Paper): Largest {
  const { width, height } = printable(paper, 'landscape');
  return (heightIn) => ZOOMS.find((zoom) => heightIn((width * 100) / zoom) <= (height * 100) / zoom - SPARE);
}

/** As many blocks to a page as fit. */
function pagesBehind(board: Board, blocks: readonly BoardBlock[], largest: Largest): readonly BoardPage[] {
  const pages: BoardBlock[][] = [];
  const heightOf = (those: readonly BoardBlock[]) => (width: number) =>
    those.reduce((sum, block) => sum + m.gap + BLOCK_HEIGHTS[block](board, width), pageFrame(board, width));
  for (const block of blocks) {
    const last = pages.at(-1);
    if (last !== undefined && largest(heightOf([...last, block])) !== undefined) last.push(block);
    else pages.push([block]);
  }
  return pages.map((those) => ({ blocks: those, zoom: largest(heightOf(those)) ?? 100 }));
}

/** What stands above and below on every page. */
const pageFrame = (board: Board, width: number): number =>
  headerHeight(board, width) + footerHeight(board, width) + m.gap;

/** Kept free at the foot of a page for what a browser adds in rounding. */
const SPARE = 3;
const m = BOARD_MEASURES;

function onePage(board: Board, width: number): number {
  const floor = width - m.side - m.sideGap;
  const middle = Math.max(floorHeight(board, floor) + stationsHeight(board, floor), sideHeight(board));
  return headerHeight(board, width) + middle + cuesHeight(board, width) + footerHeight(board, width) + 3 * m.gap;
}

function besideFirst(board: Board, width: number): number {
  const middle = Math.max(floorHeight(board, width - m.side - m.sideGap), sideHeight(board));
  return headerHeight(board, width) + middle + SHORT_FOOTER + 2 * m.gap;
}

const wideFirst = (board: Board, width: number): number => fullFirst(board, width) + leastBelow(board, width) + m.gap;

const fullFirst = (board: Board, width: number): number =>
  headerHeight(board, width) + timetablesHeight(board, width) + SHORT_FOOTER + 2 * m.gap;

interface Form {
  readonly name: BoardForm;
  /** Height of the first page. */
  readonly first: (board: Board, width: number) => number;
  readonly behind: readonly BoardBlock[];
}

const FULL: Form = { name: 'full', first: fullFirst, behind: ['rest', 'roll', 'bars', 'cues'] };

/** The one that reads best is tried first. */
const FORMS: readonly Form[] = [
  { name: 'beside', first: besideFirst, behind: ['bars', 'cues'] },
  { name: 'wide', first: wideFirst, behind: ['roll', 'bars', 'cues'] },
  FULL,
];

const BLOCK_HEIGHTS: Readonly<Record<BoardBlock, (board: Board, width: number) => number>> = {
  rest: (board, width) => leastBelow(board, width),
  roll: (board, width) => rollAcrossHeight(board, width),
  bars: (board, width) => stationsHeight(board, width),
  cues: (board, width) => cuesHeight(board, width),
};

/** In columns, each of which may end before a group that doesn't fit. */
function rollAcrossHeight(board: Board, width: number): number {
  const columns = Math.max(1, Math.min(m.rollColumns, Math.floor((width + m.rollGap) / (m.rollColumn + m.rollGap))));
  const longest = Math.max(...board.groups.map(groupRollHeight));
  return m.headLine + (board.groups.length <= columns ? longest : rollHeight(board) / columns + longest);
}

/**
 * Shares of the width that reminders may have, to one of what somebody does apart from the rows; where it is none, each has
 * the whole width, one below the other.
 */
export const SHARES = [0, 0.6, 0.8, 1, 1.3, 1.8, 2.5] as const;

const leastBelow = (board: Board, width: number): number =>
  Math.min(...SHARES.map((share) => belowHeight(board, width, share)));

/** What stands below the timetable, side by side. */
function belowHeight(board: Board, width: number, share: number): number {
  if (board.own.length === 0 || share === 0) return ownHeight(board, width) + remindersHeight(board, width);
  const reminders = ((width - m.remindersGap) * share) / (1 + share);
  return Math.max(remindersHeight(board, reminders), ownHeight(board, width - reminders - m.remindersGap));
}

/** The share that takes the least room. */
export function remindersShare(board: Board, paper: Paper, zoom: number): number {
  const width = (printable(paper, 'landscape').width * 100) / zoom;
  const heights = SHARES.map((share) => belowHeight(board, width, share));
  return SHARES[heights.indexOf(Math.min(...heights))] ?? 1;
}

/** A line, where the cautions stand on the next page. */
const SHORT_FOOTER = m.smallLine + 1.5;

const lines = (text: string, width: number, type: Type): number => linesNeeded(text, width, type);

/** The facts stand beside the title where there is room. */
function headerHeight({ day, time = '', place, next = '' }: Board, width: number): number {
  const title = textWidth(`${day}, ${time}, ${place}`, BOARD_TYPE.title);
  const facts = textWidth(`99 due · planned for 999 min, the slot has 999 · sheet 0000000 · ${MORE} · next: ${next}`, {
    points: 11,
  });
  const ruled = 1;
  if (title + facts + m.factsLine <= width) return m.titleLine + ruled;
  return Math.ceil(title / width) * m.titleLine + Math.ceil(facts / width) * m.factsLine + ruled;
}

const MORE = 'page 9 of 9';

const floorHeight = (board: Board, width: number): number => timetablesHeight(board, width) + ownHeight(board, width);

function timetablesHeight(board: Board, width: number): number {
  let height = 0;
  for (let from = 0; from < board.groups.length; from += MOST_GROUPS) {
    height += (from === 0 ? 0 : 3) + timetableHeight(board, from, width);
  }
  return height;
}

function ownHeight({ own }: Board, width: number): number {
  if (own.length === 0) return 0;
  const text = own.reduce((sum, one) => sum + mixedLines(ownText(one), width, 10) * MIXED_LINE, 0);
  return m.gap + m.headLine + text;
}

function timetableHeight(board: Board, from: number, width: number): number {
  const { groups, rows } = board;
  const shown = groups.slice(from, from + MOST_GROUPS);
  const column = (width - m.minutes) / shown.length - 2 * m.padding - 0.3;
  const head = Math.max(...shown.map((group) => groupHeadHeight(group, column)));
  const body = rows.reduce((sum, row) => sum + rowHeight(row, from, column), 0);
  return head + m.minutesLine + RULED + body;
}

/** Padding above and below, and a rule. */
const RULED = m.padding + 0.4;

function groupHeadHeight({ together }: BoardGroup, width: number): number {
  const names = together.length > MOST_NAMES_IN_HEAD ? 1 : lines(together.join(', '), width, BOARD_TYPE.small);
  return m.headLine + 0.5 + names * m.smallLine + RULED;
}

function rowHeight(row: BoardRow, from: number, column: number): number {
  const usual = usualWords(row);
  const own = usual === '' ? 0 : lines(usual, m.minutes - 2 * m.padding, BOARD_TYPE.small) * m.smallLine;
  const cells = row.cells.slice(from, from + MOST_GROUPS).map((cell) => cellHeight(cell, column));
  return Math.max(m.minutesLine + own, ...cells) + RULED;
}

/** Small type within a line makes it a little higher. */
const MIXED_LINE = 4.3;

function mixedLines(parts: readonly StrongAndPlain[], width: number, points: number): number {
  const runs = parts.flatMap(({ strong, plain }) => [
    { text: strong, type: { points, bold: true } },
    ...(plain === '' ? [] : [{ text: plain, type: { points } }]),
  ]);
  return linesOfRuns(runs, width);
}

const BETWEEN_EXERCISES = 1.1;

function cellHeight({ exercises }: BoardCell, width: number): number {
  const text = exercises.reduce((sum, exercise) => sum + mixedLines(exerciseText(exercise), width, 10) * MIXED_LINE, 0);
  return text + Math.max(0, exercises.length - 1) * BETWEEN_EXERCISES;
}

/** Columns that a lift's stations take. */
export const columnsOf = ({ stations }: StationTable): number => Math.min(stations.length, m.stationsAcross);

/** Lifts with few stations stand side by side. */
function stationsHeight({ stations: tables }: Board, width: number): number {
  const column = (width - (m.stationsAcross - 1) * m.stationGap) / m.stationsAcross;
  let height = 0;
  let highest = 0;
  let left = 0;
  for (const table of tables) {
    const columns = columnsOf(table);
    if (columns > left) {
      height += highest;
      highest = 0;
      left = m.stationsAcross;
    }
    left -= columns;
    highest = Math.max(highest, tableHeight(table, columns, column));
  }
  return height + highest;
}

function tableHeight({ title, stations }: StationTable, columns: number, width: number): number {
  const head = lines(title, columns * width, { points: 10.5, bold: true }) * m.headLine;
  let height = m.gap + head;
  for (let from = 0; from < stations.length; from += columns) {
    const row = stations.slice(from, from + columns);
    height += Math.max(...row.map((station) => stationHeight(station, width - 2 * m.padding - 0.6))) + m.stationGap;
  }
  return height;
}

function stationHeight({ people }: Station, width: number): number {
  const persons = people.map(
    ({ name, dose, load, exercise, made }) =>
      lines(`${name} ${dose} ${load ?? '__________'}`, width, BOARD_TYPE.strong) * m.stationLine +
      [exercise, made].reduce(
        (sum, words) => sum + (words === undefined ? 0 : lines(words, width, BOARD_TYPE.small) * m.smallLine),
        0,
      ),
  );
  return RULED + m.stationLine + persons.reduce((sum, one) => sum + one + 0.3, 0);
}

const groupRollHeight = ({ people }: BoardGroup): number => (people.length + 1) * m.rollRow + 1.5;

const rollHeight = ({ groups }: Board): number => groups.reduce((sum, group) => sum + groupRollHeight(group), 0);

const sideHeight = (board: Board): number =>
  m.headLine + rollHeight(board) + m.gap + reminderHeights(board, m.side).reduce((sum, one) => sum + one, 0);

/** Side by side. */
const remindersHeight = (board: Board, width: number): number =>
  m.gap + Math.max(...reminderHeights(board, (width - 2 * m.remindersGap) / 3));

function reminderHeights({ watch, kit, short }: Board, width: number): readonly number[] {
  const text = width - 2.5;
  return [watch, [kit.join(' · ')], [leaveOutWords(short)]].map((items) =>
    items.reduce((sum, words) => sum + lines(words, text, BOARD_TYPE.cue) * m.cueLine, REMINDER_HEAD),
  );
}

const REMINDER_HEAD = 6;

function cuesHeight({ cues }: Board, width: number): number {
  if (cues.length === 0) return 0;
  return cues.reduce<number>((sum, cue) => sum + mixedLines(cueText(cue), width, 9.5) * m.cueLine, m.headLine);
}

function footerHeight(board: Board, width: number): number {
  return (
    lines(`${boardFooterWords(board, '0000000')} ${CAUTIONS.join(' ')}`, width, BOARD_TYPE.small) * m.smallLine + 1.5
  );
}
