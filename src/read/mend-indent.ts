// Which line is really the one that is indented wrongly, where YAML only notices at a later one, and by how much it has to
// move. Called by the block parser when a line fits no level; looks at the text alone.

import type { Edit } from './mend-text.ts';
import type { Range } from './yaml-parse-state.ts';

export interface MovedLine {
  /** What stands on the line, without the spaces before it. */
  readonly range: Range;
  readonly edit: Edit;
}

interface Line extends Range {
  /** Spaces before it. */
  readonly indent: number;
  readonly text: string;
}

/** Lines that are looked through. */
const MOST_LINES = 200;
const MOST_WIDTH = 1000;

/**
 * Lines left of where they belong: `title: Spring` at the column of an empty `season:`, with `  starts:` below it. `start`
 * is the line that gave them away. None if it isn't so.
 */
export function outdentedLines(text: string, start: number): readonly MovedLine[] {
  const { indent } = lineAt(text, start);
  const moved: Line[] = [];
  for (const line of linesBefore(text, start)) {
    const last = moved.at(-1);
    // A line of the same column before it: the group is in order so far.
    if (last === undefined && line.indent === indent) return [];
    if (last === undefined && line.indent >= indent) continue;
    // A line further in belongs to a key above, which so has a group of its own.
    if (last !== undefined && line.indent !== last.indent) return [];
    if (last !== undefined && isOpenKey(line.text)) return moved.toReversed().map((one) => movedTo(indent, one));
    moved.push(line);
  }
  return [];
}

const isOpenKey = (text: string): boolean => /^[^\s#-][^#]*:\s*(?:#.*)?$/u.test(text);

/** Where lines in braces begin that stand right above one in the same column. */
export function siblingsBefore(text: string, start: number): readonly number[] {
  const { indent } = lineAt(text, start);
  const starts: number[] = [];
  for (const line of linesBefore(text, start)) {
    if (line.indent !== indent || !line.text.startsWith('{')) break;
    starts.push(line.start);
  }
  return starts.toReversed();
}

/**
 * The lines to move where one fits no level: itself, to the column of those it was meant to stand with, or those, where
 * more lines stand as it does.
 */
export function straggling(text: string, start: number): readonly MovedLine[] {
  const line = lineAt(text, start);
  const above: Line[] = [];
  for (const before of linesBefore(text, start)) {
    if (before.indent < line.indent) break;
    above.push(before);
  }
  const level = Math.min(...above.map(({ indent }) => indent));
  if (level === line.indent || !Number.isFinite(level)) return [];
  const all = [...above, ...linesFrom(text, line)];
  const standing = (column: number): number => all.filter(({ indent }) => indent === column).length;
  if (standing(level) >= standing(line.indent)) return [movedTo(level, line)];
  return above.toReversed().map((one) => movedTo(one.indent - level + line.indent, one));
}

function movedTo(column: number, { start, end, indent }: Line): MovedLine {
  const lineStart = start - indent;
  return { range: { start, end }, edit: { at: lineStart, cut: indent, put: ' '.repeat(column) } };
}

function lineAt(text: string, offset: number): Line {
  const lineStart = offset === 0 ? 0 : text.lastIndexOf('\n', offset - 1) + 1;
  const next = text.indexOf('\n', offset);
  const end = next === -1 ? text.length : next;
  const source = text.slice(lineStart, Math.min(end, lineStart + MOST_WIDTH));
  const indent = /[^ ]/u.exec(source)?.index ?? 0;
  const written = source.slice(indent).trimEnd();
  return { start: lineStart + indent, end: lineStart + indent + written.length, indent, text: written };
}

/** Those with something on them besides a comment, the nearest first. */
function* linesBefore(text: string, offset: number): Generator<Line> {
  let { start, indent } = lineAt(text, offset);
  for (let count = 0; start > indent && count < MOST_LINES; count += 1) {
    const line = lineAt(text, start - indent - 1);
    if (line.text !== '' && !line.text.startsWith('#')) yield line;
    ({ start, indent } = line);
  }
}

/** A line and those that follow, as long as they stand at its column or further in. */
function linesFrom(text: string, first: Line): readonly Line[] {
  const lines = [first];
  let next = text.indexOf('\n', first.end);
  for (let count = 0; next !== -1 && next + 1 < text.length && count < MOST_LINES; count += 1) {
    const line = lineAt(text, next + 1);
    const isBare = line.text === '' || line.text.startsWith('#');
    if (!isBare && line.indent < first.indent) break;
    if (!isBare) lines.push(line);
    next = text.indexOf('\n', next + 1);
  }
  return lines;
}
