// How high each part of a board is on so much width, in millimetres, from its text: the timetable, the bars, the list to tick,
// the reminders, the cues. On the safe side, as a browser lays it out. Called by board-layout.ts.

import type { Board, BoardGroup } from '../../report/board.ts';
import type { BoardCell } from '../../report/board-cells.ts';
import type { BoardRow } from '../../report/board-rows.ts';
import type { Station, StationTable } from '../../report/board-stations.ts';
import { CAUTIONS } from '../../report/cautions.ts';
import { BOARD_MEASURES, BOARD_TYPE, MOST_GROUPS, MOST_NAMES_IN_HEAD } from './board-measures.ts';
import {
  boardFooterWords,
  cueText,
  exerciseText,
  leaveOutWords,
  ownElsewhereWords,
  ownText,
  usualWords,
} from './board-words.ts';
import type { StrongAndPlain } from './board-words.ts';
import { linesNeeded, linesOfRuns, textWidth } from './text-width.ts';
import type { Type } from './text-width.ts';

const m = BOARD_MEASURES;

const lines = (text: string, width: number, type: Type): number => linesNeeded(text, width, type);

/** The facts stand beside the title where there is room. */
export function headerHeight({ day, time = '', place, next = '' }: Board, width: number): number {
  const title = textWidth(`${day}, ${time}, ${place}`, BOARD_TYPE.title);
  const facts = textWidth(`99 due · planned for 999 min, the slot has 999 · sheet 0000000 · ${MORE} · next: ${next}`, {
    points: 11,
  });
  const ruled = 1;
  if (title + facts + m.factsLine <= width) return m.titleLine + ruled;
  return Math.ceil(title / width) * m.titleLine + Math.ceil(facts / width) * m.factsLine + ruled;
}

const MORE = 'page 9 of 9';

/** What everybody does: the timetables and, below them, what somebody does alone. */
export const floorHeight = (board: Board, width: number): number =>
  timetablesHeight(board, width) + ownHeight(board, width);

/** All tables, one below the other. */
export function timetablesHeight(board: Board, width: number): number {
  let height = 0;
  for (let from = 0; from < board.groups.length; from += MOST_GROUPS) {
    height += (from === 0 ? 0 : 3) + timetableHeight(board, from, width);
  }
  return height;
}

/** What is done apart from the rows; 0 where there is none. */
export function ownHeight({ own }: Board, width: number): number {
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
export function stationsHeight({ stations: tables }: Board, width: number): number {
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

/** In columns, each of which may end before a group that doesn't fit. */
export function rollAcrossHeight(board: Board, width: number): number {
  const columns = Math.max(1, Math.min(m.rollColumns, Math.floor((width + m.rollGap) / (m.rollColumn + m.rollGap))));
  const longest = Math.max(...board.groups.map(groupRollHeight));
  return m.headLine + (board.groups.length <= columns ? longest : rollHeight(board) / columns + longest);
}

const groupRollHeight = ({ people }: BoardGroup): number => (people.length + 1) * m.rollRow + 1.5;

/** The list to tick, its groups one below the other, without its heading. */
export const rollHeight = ({ groups }: Board): number => groups.reduce((sum, group) => sum + groupRollHeight(group), 0);

/** The column beside the timetable: the list to tick, and the reminders below it. */
export const sideHeight = (board: Board): number =>
  m.headLine + rollHeight(board) + m.gap + reminderHeights(board, m.side).reduce((sum, one) => sum + one, 0);

/** Side by side. */
export const remindersHeight = (board: Board, width: number): number =>
  m.gap + Math.max(...reminderHeights(board, (width - 2 * m.remindersGap) / 3));

function reminderHeights({ watch, kit, short }: Board, width: number): readonly number[] {
  const text = width - 2.5;
  return [watch, [kit.join(' · ')], [leaveOutWords(short)]].map((items) =>
    items.reduce((sum, words) => sum + lines(words, text, BOARD_TYPE.cue) * m.cueLine, REMINDER_HEAD),
  );
}

const REMINDER_HEAD = 6;

/** 0 where there are none. */
export function cuesHeight({ cues }: Board, width: number): number {
  if (cues.length === 0) return 0;
  return cues.reduce<number>((sum, cue) => sum + mixedLines(cueText(cue), width, 9.5) * m.cueLine, m.headLine);
}

/** The line that names who stands on the next page, in millimetres; 0 where there is nobody. */
export function ownElsewhereHeight(board: Board, width: number): number {
  const words = ownElsewhereWords(board);
  return words === '' ? 0 : m.gap + lines(words, width, BOARD_TYPE.strong) * m.cueLine;
}

/** With the cautions, which stand on the last page of a session. */
export function footerHeight(board: Board, width: number): number {
  return (
    lines(`${boardFooterWords(board, '0000000')} ${CAUTIONS.join(' ')}`, width, BOARD_TYPE.small) * m.smallLine + 1.5
  );
}

/** A line, where the cautions stand on the next page. */
export const SHORT_FOOTER = m.smallLine + 1.5;
