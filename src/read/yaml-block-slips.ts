// Slips of the pen in the indented part of YAML: a line too far left or right, a dash or a colon that is missing, a quote
// that isn't closed. Each is told where it stands, and where it is plain what was meant, with the edit that mends the text
// for reading on. Called by yaml-block.ts, which knows the structure.

import { outdentedLines, siblingsBefore, straggling } from './mend-indent.ts';
import { restOfLine, spacedDash } from './mend-line.ts';
import { advance, isScalar, report, reportMended, spanOf, textAt } from './yaml-parse-state.ts';
import type { ParseState, Range } from './yaml-parse-state.ts';
import { reportOpenQuote, reportQuoteInside, scalarNode, touchesQuoted, unexpected } from './yaml-scalar.ts';
import type { Token } from './yaml-tokens.ts';

/**
 * A key below a value that stands on its key's line, which is in `column`. Mostly the line above stands too far left; at
 * the left edge its value takes the place of the group below it.
 */
export function reportKeyUnderValue(state: ParseState, column: number, token: Token): void {
  const key = lastLineOf(state, token);
  if (reportOutdented(state, key.start)) return;
  const details = { span: spanOf(state, key) };
  if (column > 0) {
    report(state, 'yaml/key-under-value', details);
    return;
  }
  const { start, end } = restOfLine(state.text, token.start);
  reportMended(state, 'yaml/key-under-value', details, [{ at: start, cut: end - start, put: '' }], false);
}

/** False if no line further up is to blame for the one at `start`. */
function reportOutdented(state: ParseState, start: number): boolean {
  const lines = outdentedLines(state.text, start);
  for (const { range, edit } of lines) {
    reportMended(state, 'yaml/outdented', { span: spanOf(state, range) }, [edit], true);
  }
  return lines.length > 0;
}

/** Dashes without a space behind them make their lines texts or keys. */
export function reportTouchingDashes(state: ParseState, token: Token): boolean {
  if (token.kind !== 'plain' || !token.first) return false;
  if (!TOUCHING_DASH.test(textAt(state, token))) return false;
  const looked = { ...token, end: Math.min(token.end, token.start + MOST_LOOKED) };
  const dashed = linesOf(state, looked).filter((range) => TOUCHING_DASH.test(textAt(state, range)));
  for (const { start } of dashed) {
    const span = spanOf(state, { start, end: start + 1 });
    reportMended(state, 'yaml/dash-without-space', { span }, spacedDash(state.text, start), true);
  }
  return dashed.length > 0;
}

/** Characters of a text that are looked through. */
const MOST_LOOKED = 10_000;

const TOUCHING_DASH = /^-[\p{L}{["']/u;

function lastLineOf(state: ParseState, token: Token): Range {
  const source = textAt(state, token);
  const lastBreak = source.lastIndexOf('\n');
  const indent = /\S/u.exec(source.slice(lastBreak + 1))?.index ?? 0;
  return { start: token.start + lastBreak + 1 + indent, end: token.end };
}

/** Lines without a colon before a key are read as the beginning of that key. */
export function reportLinesBeforeKey(state: ParseState, token: Token): void {
  const keyStart = lastLineOf(state, token).start;
  for (const range of linesOf(state, token)) if (range.start < keyStart) reportNoColon(state, range);
}

function reportNoColon(state: ParseState, range: Range): void {
  const span = spanOf(state, range);
  const text = textAt(state, range);
  const key = /^([\w-]+):\S/u.exec(text)?.[1];
  if (key === undefined) {
    const word = /^(?:"[^"]*"|'[^']*'|[^\s:]+)/u.exec(text)?.[0] ?? '';
    reportMended(state, 'yaml/missing-colon', { span }, [{ at: range.start + word.length, cut: 0, put: ':' }], false);
  } else {
    const space = { at: range.start + key.length + 1, cut: 0, put: ' ' };
    reportMended(state, 'yaml/missing-space', { params: { key }, span }, [space], true);
  }
}

/** The first key of an item once more: an item that lacks its dash. */
export function reportItemAgain(state: ParseState, firstKey: Token, key: Token): void {
  const { text } = state;
  const isItem = !firstKey.first && text.slice(firstKey.start - 2, firstKey.start) === '- ';
  if (!isItem || textAt(state, key) !== textAt(state, firstKey)) return;
  if (text.slice(key.start - 2, key.start) !== '  ') return;
  const dash = [{ at: key.start - 2, cut: 2, put: '- ' }];
  reportMended(state, 'yaml/missing-dash', { span: spanOf(state, key) }, dash, true);
}

/** A key over several lines as its last line alone, which is what its colon stands behind. */
export const onItsLastLine = (state: ParseState, key: Token): Token => ({
  ...key,
  ...lastLineOf(state, key),
  line: key.endLine,
});

/** Tells of a text that stands where a key was wanted: mostly one whose colon is missing. */
export function reportNoKey(state: ParseState, token: Token): void {
  scalarNode(state, token);
  if (state.broken) {
    state.broken = false;
    return;
  }
  if (token.kind === 'plain') {
    for (const range of linesOf(state, token)) reportNoColon(state, range);
  } else if (touchesQuoted(state)) {
    reportQuoteInside(state, token);
  } else {
    const [line = ''] = textAt(state, token).split(/\r?\n/u, 1);
    reportNoColon(state, { start: token.start, end: token.start + line.length });
  }
}

/** The lines of a text in the column it begins in: each of them was meant to be a key of its own. */
function linesOf(state: ParseState, token: Token): readonly Range[] {
  const ranges: Range[] = [];
  let start = token.start;
  for (const [index, line] of textAt(state, token).split('\n').entries()) {
    const text = line.trim();
    const indent = line.length - line.trimStart().length;
    const range = { start: start + indent, end: start + indent + text.length };
    if (text !== '' && (index === 0 || indent === token.column)) ranges.push(range);
    start += line.length + 1;
  }
  return ranges;
}

/** The stretch of a token's first word, to mark no more than that. */
export function firstWordOf(state: ParseState, token: Token): Range {
  const [word = ''] = textAt(state, token).split(/\s/u, 1);
  return { start: token.start, end: token.start + word.length };
}

/**
 * Tells of a token that no part of the structure took, by the likeliest slip that leaves it there. `column` is the
 * column of the structure it stands behind; -1 at the top.
 */
export function reportLeftover(state: ParseState, column: number): void {
  const { current, previous } = state;
  const span = spanOf(state, current.line === current.endLine ? current : firstWordOf(state, current));
  if (
    previous !== undefined &&
    previous.line !== previous.endLine &&
    previous.kind.endsWith('-quoted') &&
    !current.first
  ) {
    // A text in quotes over several lines with something behind it was mostly meant to end on its first line.
    reportOpenQuote(state, previous, previous.end - 1);
  } else if (previous !== undefined && touchesQuoted(state)) {
    reportQuoteInside(state, previous);
  } else if (current.kind === 'close-list' || current.kind === 'close-map') {
    const cut = [{ at: current.start, cut: 1, put: '' }];
    reportMended(state, 'yaml/stray-bracket', { params: { found: textAt(state, current) }, span }, cut, false);
  } else if (current.kind === 'flow-break') {
    advance(state);
  } else if (current.first && current.kind === 'open-map' && previous?.kind === 'close-map') {
    reportMissingDashes(state, current);
  } else if (current.first && current.tabAt !== -1) {
    state.lostLine = true;
  } else if (current.first && (column >= 0 || isScalar(current) || current.kind === 'item')) {
    reportIndent(state, current);
  } else {
    unexpected(state, current);
  }
}

/** Groups in braces below each other are items of a list. */
export function reportMissingDashes(state: ParseState, token: Token): void {
  for (const start of [...siblingsBefore(state.text, token.start), token.start]) {
    const span = spanOf(state, { start, end: start + 1 });
    reportMended(state, 'yaml/missing-dash', { span }, [{ at: start, cut: 0, put: '- ' }], true);
  }
}

function reportIndent(state: ParseState, token: Token): void {
  if (reportOutdented(state, token.start)) return;
  const moved = straggling(state.text, token.start);
  const details = { span: spanOf(state, moved[0]?.range ?? firstWordOf(state, token)) };
  if (moved.length === 0) report(state, 'yaml/indent', details);
  else {
    const edits = moved.map(({ edit }) => edit);
    reportMended(state, 'yaml/indent', details, edits, true);
  }
}

/** Tabs before a line are counted with the tokens; here only those between a dash and what it holds. */
export function reportTabBefore(state: ParseState, token: Token): void {
  if (token.first) return;
  let start = token.start;
  while (state.text.charAt(start - 1) === ' ') start -= 1;
  if (state.text.charAt(start - 1) !== '\t') return;
  report(state, 'yaml/tab-indent', { params: { lines: 1 }, span: spanOf(state, { start: start - 1, end: start }) });
}
