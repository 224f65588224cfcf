// Lays an athlete's week out on half pages: which session stands in which column of which half. Heights are worked out
// from the text before a browser sees it, on the safe side; sessions stay whole where they can. Measures are millimetres
// and points, and are the stylesheet's as well.

import type { Card, CardLine, CardSession } from '../../report/card.ts';
import { printable } from './paper.ts';
import type { Paper } from './paper.ts';
import { linesNeeded, linesOfRuns, textWidth } from './text-width.ts';

export const CARD_TYPE = {
  title: { points: 17, bold: true },
  when: { points: 12, bold: true },
  group: { points: 10, bold: true },
  name: { points: 10.5, bold: true },
  detail: { points: 9 },
  purpose: { points: 12 },
  limit: { points: 10.5, bold: true },
  event: { points: 10.5, bold: true },
  session: { points: 11.5, bold: true },
} as const;

export const CARD_MEASURES = {
  /** Between the two halves of a sheet, where it is cut. */
  cut: 6,
  header: 9,
  headerColumnGap: 4,
  swatch: 12,
  /** The build's mark, with the word before it. */
  mark: 23,
  purposeLine: 5.4,
  limitLine: 5,
  eventLine: 5,
  headerGap: 2,
  footer: 16.2,
  columnGap: 5,
  /** Kept free at the edge of the paper, where a rule would lose half of its width. */
  hair: 0.2,
  sessionLine: 5,
  factsLine: 4,
  /** The rule under a session's head. */
  sessionRule: 1,
  sessionFoot: 8,
  sessionGap: 2.5,
  /** Of a row: padding and rule. */
  rowPadding: 1.5,
  nameLine: 4.3,
  detailLine: 3.6,
  boxWidth: 6.4,
  boxHeight: 7,
  /** Where the boxes of a line stand in two rows. */
  lowBoxHeight: 4.6,
  boxesInARow: 4,
  /** Between them and what stands beside them. */
  boxGap: 0.4,
  /** Of more sets than these the rest is told by the dose alone. */
  mostBoxes: 16,
  number: 5.5,
  /** Of sets and reps at least, so that they stand in one column; a long one takes what it needs from the name. */
  dose: 19,
  doseGap: 1,
} as const;

/** Explains, beside what the week is for, what stands in every line. */
export const IF_NOT_MEANS = '“if not”: when you can’t today';

/** A session or, where it doesn't fit a column, a part of it. */
export interface CardPart {
  readonly session: CardSession;
  readonly lines: readonly CardLine[];
  readonly isFirst: boolean;
  readonly isLast: boolean;
}

export interface HalfPage {
  readonly columns: readonly (readonly CardPart[])[];
}

export interface CardSpace {
  /** Height of a half page. */
  readonly half: number;
  readonly width: number;
  readonly column: number;
}

/** Width and height of a half page, and the width of one of its two columns, in mm. */
export function cardSpace(paper: Paper): CardSpace {
  const { width, height } = printable(paper, 'portrait');
  const column = (width - CARD_MEASURES.columnGap) / 2 - CARD_MEASURES.hair;
  return { half: (height - CARD_MEASURES.cut) / 2, width, column };
}

/** The half pages of a card, one where its week fits; a session goes on in the next column, hardly ever overleaf. */
export function layOutCard(card: Card, paper: Paper): readonly HalfPage[] {
  const space = cardSpace(paper);
  const height = columnHeight(card, space);
  const halves: HalfPage[] = [];
  for (let from = 0; from < card.sessions.length;) {
    let until = card.sessions.length;
    let laidOut = layOut(card.sessions.slice(from, until), height, space);
    while (laidOut.length > 1 && until - from > 1) {
      until -= 1;
      laidOut = layOut(card.sessions.slice(from, until), height, space);
    }
    halves.push(...laidOut);
    from = until;
  }
  return halves;
}

/** Sessions whole where that takes one half page, otherwise cut where a column ends. */
function layOut(sessions: readonly CardSession[], height: number, space: CardSpace): readonly HalfPage[] {
  const whole = sessions.map(wholePart);
  const fits = whole.every((part) => partHeight(part, space) <= height);
  const halves = fits ? fill(whole, height, space) : [];
  return halves.length === 1 ? halves : fill(splitParts(sessions, height, space), height, space);
}

const wholePart = (session: CardSession): CardPart => ({
  session,
  lines: session.lines,
  isFirst: true,
  isLast: true,
});

/** What a column may hold: the half page less what stands above and below it. */
function columnHeight(card: Card, { half, width }: CardSpace): number {
  const m = CARD_MEASURES;
  const beside = textWidth(IF_NOT_MEANS, CARD_TYPE.detail) + m.headerColumnGap;
  const purpose = linesNeeded(card.purpose, width - beside, CARD_TYPE.purpose) * m.purposeLine;
  const limits =
    card.limits.length === 0 ? 0 : linesNeeded(card.limits.join(' '), width, CARD_TYPE.limit) * m.limitLine;
  const events =
    card.events.length === 0 ? 0 : linesNeeded(card.events.join(' · '), width, CARD_TYPE.event) * m.eventLine;
  return half - headerLines(card, width) * m.header - purpose - limits - events - m.headerGap - m.footer;
}

/** A long name takes several lines beside what else stands at the top. */
function headerLines({ name, group, dates }: Card, width: number): number {
  const m = CARD_MEASURES;
  const groupWidth = group === undefined ? 0 : m.swatch + textWidth(group.name.toUpperCase(), CARD_TYPE.group);
  const beside = groupWidth + m.mark + textWidth(`${dates}, card 9 of 9`, CARD_TYPE.when) + 3 * m.headerColumnGap;
  return linesNeeded(name, width - beside, CARD_TYPE.title);
}

/** Column after column, half page after half page, in order. */
function fill(parts: readonly CardPart[], height: number, space: CardSpace): readonly HalfPage[] {
  const columns: CardPart[][] = [];
  let left = 0;
  for (const part of parts) {
    const needed = partHeight(part, space);
    const last = columns.at(-1);
    if (last === undefined || needed + CARD_MEASURES.sessionGap > left) {
      columns.push([part]);
      left = height - needed;
    } else {
      last.push(part);
      left -= needed + CARD_MEASURES.sessionGap;
    }
  }
  const halves: HalfPage[] = [];
  for (let index = 0; index < columns.length; index += 2) halves.push({ columns: columns.slice(index, index + 2) });
  return halves;
}

/** Fewer lines than this are not worth a part of their own. */
const LEAST_LINES = 2;

/** The sessions cut where a column ends, as they come one after the other. */
function splitParts(sessions: readonly CardSession[], height: number, space: CardSpace): readonly CardPart[] {
  const parts: CardPart[] = [];
  let left = height;
  for (const session of sessions) {
    let rest = wholePart(session);
    while (partHeight(rest, space) > left) {
      const lines = Math.min(linesThatFit(rest, left, space), rest.lines.length - LEAST_LINES);
      if (lines < LEAST_LINES && left === height) break;
      if (lines >= LEAST_LINES) {
        parts.push({ ...rest, lines: rest.lines.slice(0, lines), isLast: false });
        rest = { ...rest, lines: rest.lines.slice(lines), isFirst: false };
      }
      left = height;
    }
    parts.push(rest);
    left -= partHeight(rest, space) + CARD_MEASURES.sessionGap;
  }
  return parts;
}

function linesThatFit(part: CardPart, height: number, space: CardSpace): number {
  let used = headHeight(part, space) + CARD_MEASURES.factsLine;
  for (let count = 0; count < part.lines.length; count += 1) {
    const line = part.lines[count];
    used += line === undefined ? 0 : lineHeight(line, part.session, space);
    if (used > height) return count;
  }
  return part.lines.length;
}

/** Where nothing is asked at the end, a line says that the session goes on. */
function partHeight(part: CardPart, space: CardSpace): number {
  const rows = part.lines.reduce((sum, line) => sum + lineHeight(line, part.session, space), 0);
  const foot = part.isLast ? CARD_MEASURES.sessionFoot : CARD_MEASURES.factsLine;
  return headHeight(part, space) + rows + foot;
}

function headHeight({ session }: CardPart, { column }: CardSpace): number {
  const m = CARD_MEASURES;
  const titleLines = linesNeeded(sessionTitle(session), column, CARD_TYPE.session);
  const beside =
    textWidth(sessionTitle(session), CARD_TYPE.session) + textWidth(sessionFacts(session), CARD_TYPE.detail);
  const facts = titleLines > 1 || beside > column - m.columnGap ? m.factsLine : 0;
  return titleLines * m.sessionLine + facts + m.sessionRule;
}

/** The boxes stand at the right; what comes below them has the whole width. */
function lineHeight(line: CardLine, session: CardSession, { column }: CardSpace): number {
  const m = CARD_MEASURES;
  const text = column - m.number;
  const boxes = line.sets > m.boxesInARow ? 2 * m.lowBoxHeight : m.boxHeight;
  const beside = text - m.boxWidth * boxesAcross(line.sets);
  const nameWidth = text - m.boxWidth * boxColumns(session) - doseWidth(line) - m.boxGap;
  let height = linesNeeded(nameWords(line), nameWidth, CARD_TYPE.name) * m.nameLine;
  for (const words of detailLines(line)) {
    const top = height;
    const widthOf = (index: number): number => (top + index * m.detailLine < boxes ? beside : text);
    height += linesOfRuns([{ text: words, type: CARD_TYPE.detail }], widthOf) * m.detailLine;
  }
  return Math.max(boxes, height) + m.rowPadding;
}

function doseWidth({ dose }: CardLine): number {
  return Math.max(CARD_MEASURES.dose, CARD_MEASURES.doseGap + textWidth(dose, CARD_TYPE.name));
}

/** Boxes of a line. */
export const boxesOf = (sets: number): number => Math.min(sets, CARD_MEASURES.mostBoxes);

/** Boxes side by side for so many sets: all of them, or the half of many. */
export function boxesAcross(sets: number): number {
  return sets > CARD_MEASURES.boxesInARow ? Math.ceil(boxesOf(sets) / 2) : sets;
}

/** Columns of boxes that the lines of a session need. */
export function boxColumns({ lines }: CardSession): number {
  return lines.reduce((most, { sets }) => Math.max(most, boxesAcross(sets)), 1);
}

/** `Tue 2 Mar 18:00, hall`. */
export function sessionTitle({ day, time, place }: CardSession): string {
  return `${day}${time === undefined ? '' : ` ${time}`}, ${place}`;
}

/** `52 min, the first 12 warm-up`, beside a session's title or below it; its height is reckoned with. */
export function sessionFacts({ minutes, overSlotOf, warmUpMinutes }: CardSession): string {
  // No longer than without, so that it stands beside the title as well.
  if (overSlotOf !== undefined) return `${minutes} min (slot ${overSlotOf}), ${warmUpMinutes} warm-up`;
  return `${minutes} min, the first ${warmUpMinutes} warm-up`;
}

/** The name with its load. */
export function nameWords({ name, load }: CardLine): string {
  return load === undefined ? name : `${name} ${load}`;
}

/** What stands under the name: what makes the load and how hard it is, then the rest and what to do instead. */
export function detailLines({ made, effort, picksLoad, notes, rest, instead }: CardLine): readonly string[] {
  const before = [made ?? [], notes].flat();
  const hard = effort === undefined ? [] : `${picksLoad ? 'pick the weight, ' : ''}${effort}`;
  const after = [hard, `rest ${rest}`, `if not: ${instead}`].flat();
  return [before, after].filter((words) => words.length > 0).map((words) => words.join(' · '));
}
