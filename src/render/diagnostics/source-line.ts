// A line of a plan with a stretch of it marked, made fit for a terminal: tabs become spaces, what would move the cursor
// becomes a visible stand-in, a very long line is cut to the part around the mark. Columns are counted as a terminal
// shows them, so that the mark stands under what it marks whatever letters come before it.

import { displayWidth } from '../../util/display-width.ts';

export interface MarkedLine {
  readonly text: string;
  /** Columns before the mark. */
  readonly indent: number;
  /** Columns of the mark; at least one. */
  readonly width: number;
}

const TAB_COLUMNS = 4;
/** Columns of a line that are shown, and how many of them before the mark. */
const MOST_COLUMNS = 160;
const COLUMNS_BEFORE = 60;
/** Units of a line before a mark, of the mark and behind it that are looked at: enough for what is shown. */
const MOST_UNITS = 1000;

/** The line with the stretch from `start` to `end` marked, both in UTF-16 units. */
export function markedLine(line: string, start: number, end: number): MarkedLine {
  const isFar = start > MOST_UNITS || displayWidth(line.slice(0, start)) > MOST_COLUMNS - COLUMNS_BEFORE;
  const from = isFar ? cutBefore(line, start) : 0;
  const lead = from > 0 ? '… ' : '';
  const before = lead + shown(line.slice(from, start), displayWidth(lead));
  const indent = displayWidth(before);
  const marked = shown(line.slice(start, Math.min(end, start + MOST_UNITS)), indent);
  const after = shown(line.slice(end, end + MOST_UNITS), indent + displayWidth(marked));
  const text = fitted(before + marked + after);
  const room = Math.max(1, displayWidth(text) - indent);
  return { text, indent, width: Math.min(Math.max(1, displayWidth(marked)), room) };
}

/** Where a long line begins to be shown: never between the halves of a character. */
function cutBefore(line: string, start: number): number {
  const at = Math.max(0, start - COLUMNS_BEFORE);
  const unit = line.charCodeAt(at);
  return unit >= 0xdc00 && unit <= 0xdfff ? at + 1 : at;
}

function fitted(text: string): string {
  if (text.length <= MOST_COLUMNS) return text.trimEnd();
  let columns = 0;
  let kept = '';
  for (const character of text) {
    columns += displayWidth(character);
    if (columns > MOST_COLUMNS) return `${kept} …`;
    kept += character;
  }
  return kept.trimEnd();
}

/** Text as it can be shown from a column on. */
function shown(text: string, column: number): string {
  let made = '';
  let at = column;
  for (const character of text) {
    const stand = standIn(character, at);
    made += stand;
    at += displayWidth(stand);
  }
  return made;
}

function standIn(character: string, column: number): string {
  if (character === '\t') return ' '.repeat(TAB_COLUMNS - (column % TAB_COLUMNS));
  return /[\p{Cc}\u200B\u200E\u200F\u2028-\u202E\u2060\u2066-\u2069\uFEFF]/u.test(character) ? '\uFFFD' : character;
}
