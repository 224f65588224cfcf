// What to write instead of a slip inside one line: a quote left open, one inside of a text, a list begun behind its key.
// Called by the parsers where they report the slip; looks at the text alone.

import type { Edit } from './mend-text.ts';
import type { Range } from './yaml-parse-state.ts';

const MOST_WIDTH = 100_000;

/** From an offset up to the end of its line, spaces and a comment there aside. */
export function restOfLine(text: string, start: number): Range {
  const lineEnd = text.indexOf('\n', start);
  const line = text.slice(start, Math.min(lineEnd === -1 ? text.length : lineEnd, start + MOST_WIDTH));
  const comment = line.search(/[ \t]#/u);
  return { start, end: start + (comment === -1 ? line : line.slice(0, comment)).trimEnd().length };
}

/** Closes a text whose quote is left open where it was most likely meant to end: before its colon, a comma or a bracket. */
export function closedQuote(text: string, start: number): readonly Edit[] {
  const quote = text.charAt(start);
  const { end } = restOfLine(text, start);
  const line = text.slice(start + 1, end);
  const key = /^[^:{}[\],]*(?=:(?:\s|$))/u.exec(line)?.[0];
  const words = key ?? (isInBrackets(text, start) ? (/^[^,\]}]*/u.exec(line)?.[0] ?? '') : withoutClosers(line));
  // A backslash would make the quote that is put there part of the text.
  const closed = words.includes('\\')
    ? { at: start, cut: words.length + 1, put: 'x' }
    : { at: start + 1 + words.trimEnd().length, cut: 0, put: quote };
  return key === undefined ? [closed, ...withoutFurtherLines(text, start)] : [closed];
}

/** The lines below a text that go on with it: indented further, and neither a key nor an item. */
function withoutFurtherLines(text: string, start: number): readonly Edit[] {
  const indent = indentAt(text, text.lastIndexOf('\n', start) + 1);
  const edits: Edit[] = [];
  let next = text.indexOf('\n', start) + 1;
  while (next > 0 && edits.length < MOST_LINES && indentAt(text, next) > indent) {
    const { end } = restOfLine(text, next);
    const line = text.slice(next, end).trimStart();
    if (line === '' || /^(?:- |["']?[\w-]+["']?:(?:\s|$))/u.test(line)) break;
    edits.push({ at: next, cut: end - next, put: '' });
    next = text.indexOf('\n', next) + 1;
  }
  return edits;
}

function indentAt(text: string, lineStart: number): number {
  let at = lineStart;
  while (text.charAt(at) === ' ') at += 1;
  return at - lineStart;
}

function withoutClosers(line: string): string {
  let end = line.length;
  while (end > 0 && ' \t,]}'.includes(line.charAt(end - 1))) end -= 1;
  return line.slice(0, end);
}

function isInBrackets(text: string, offset: number): boolean {
  const before = text.slice(Math.max(0, offset - MOST_WIDTH), offset);
  return /[{[]/u.test(before.slice(before.lastIndexOf('\n') + 1));
}

/**
 * A text in quotes that a quote of the same kind inside of it ends too early: the whole of it, up to the quote that was
 * meant to end it.
 */
export function wholeQuoted(text: string, start: number, endedAt: number): Range {
  const quote = text.charAt(start);
  const rest = text.slice(endedAt, restOfLine(text, endedAt).end);
  const pattern = quote === '"' ? MEANT_DOUBLE : MEANT_SINGLE;
  const meant = isInBrackets(text, start) ? pattern.exec(rest)?.[0] : undefined;
  return { start, end: endedAt + (meant ?? rest).length };
}

/** Up to a quote before a comma or a bracket, or up to the comma or bracket. */
const MEANT_DOUBLE = /^.*?(?:"(?=\s*[,\]}])|(?=[,\]}]))/u;
const MEANT_SINGLE = /^.*?(?:'(?=\s*[,\]}])|(?=[,\]}]))/u;

/** A space behind a dash, and one before the lines below that stand in the column of what is behind it. */
export function spacedDash(text: string, dash: number): readonly Edit[] {
  const column = dash - text.lastIndexOf('\n', dash);
  const edits = [{ at: dash + 1, cut: 0, put: ' ' }];
  let next = text.indexOf('\n', dash) + 1;
  while (next > 0 && edits.length < MOST_LINES && startsIn(text, next, column)) {
    edits.push({ at: next, cut: 0, put: ' ' });
    next = text.indexOf('\n', next) + 1;
  }
  return edits;
}

const MOST_LINES = 50;

/** Whether a line has a word in this column, and nothing before it. */
function startsIn(text: string, lineStart: number, column: number): boolean {
  return text.slice(lineStart, lineStart + column).trim() === '' && /[^\s-]/u.test(text.charAt(lineStart + column));
}

/** A dash behind a key moved to the next line, to the column of the other dashes where there are some. */
export function listBelow(text: string, dash: number, keyColumn: number): Edit {
  const next = text.indexOf('\n', dash);
  const column = next === -1 ? undefined : /^( *)- /u.exec(text.slice(next + 1, next + MOST_WIDTH))?.[1]?.length;
  const indent = column !== undefined && column >= keyColumn ? column : keyColumn + 2;
  return { at: dash, cut: 0, put: `\n${' '.repeat(indent)}` };
}
