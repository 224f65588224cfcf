// How large a board can be printed: everything on one page where it fits, otherwise the floor on the first and the bars on
// the second, each as large as its page allows, since it is read from where people stand. Called by boards.ts; the heights
// are worked out before a browser sees the text (board-heights.ts).

import type { Board } from '../../report/board.ts';
import {
  cuesHeight,
  floorHeight,
  footerHeight,
  headerHeight,
  ownHeight,
  remindersHeight,
  rollAcrossHeight,
  SHORT_FOOTER,
  ownElsewhereHeight,
  sideHeight,
  stationsHeight,
  timetablesHeight,
} from './board-heights.ts';
import { BOARD_MEASURES } from './board-measures.ts';
import { printable } from './paper.ts';
import type { Paper } from './paper.ts';

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

/** The first form that fits the paper, as large as it fits; what it leaves out is on pages behind. */
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

const wideFirst = (board: Board, width: number): number => overFooter(board, width) + leastBelow(board, width) + m.gap;

const fullFirst = (board: Board, width: number): number => overFooter(board, width) + ownElsewhereHeight(board, width);

const overFooter = (board: Board, width: number): number =>
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
