// The indented part of YAML: groups of keys, lists with dashes, and the values in them, by the column each begins in.
// Called once per file by parse-yaml. After a mistake it goes on at the next line of the same group, so that one run
// shows them all.

import { outdentedLines, siblingsBefore, straggling } from './mend-indent.ts';
import { listBelow, restOfLine, spacedDash } from './mend-line.ts';
import { aliasedNode, keepAnchor } from './yaml-alias.ts';
import { addEntry } from './yaml-entries.ts';
import type { EntryList } from './yaml-entries.ts';
import { flowCollection } from './yaml-flow.ts';
import {
  advance,
  emptyNode,
  enterLevel,
  isAtEnd,
  isScalar,
  leaveLevel,
  report,
  reportMended,
  spanOf,
  textAt,
} from './yaml-parse-state.ts';
import type { ParseState, Range } from './yaml-parse-state.ts';
import { takeProperties } from './yaml-properties.ts';
import {
  blockTextNode,
  reportOpenQuote,
  reportQuoteInside,
  scalarNode,
  touchesQuoted,
  unexpected,
} from './yaml-scalar.ts';
import type { Token } from './yaml-tokens.ts';
import type { MapNode, Node, SequenceNode } from './types.ts';

/** What a value belongs to: the key or dash before it, and the column of the group it is in. */
interface Owner {
  readonly kind: 'document' | 'key' | 'dash';
  readonly column: number;
  readonly line: number;
  readonly end: number;
}

/** The value of a whole document. */
export const documentNode = (state: ParseState): Node => {
  const root = blockValue(state, { kind: 'document', column: -1, line: -1, end: 0 });
  while (!isAtEnd(state)) {
    reportLeftover(state, -1);
    const before = state.current;
    blockValue(state, { kind: 'document', column: -1, line: -1, end: 0 });
    if (state.current === before) advance(state);
  }
  return root;
};

/** The value at the cursor, or an empty one if the next line belongs further out. */
const blockValue = (state: ParseState, owner: Owner): Node => {
  if (!belongsTo(state, owner)) return emptyNode(state, owner.end);
  const anchor = takeProperties(state);
  const anchorLine = anchor?.line;
  if (!belongsTo(state, owner)) {
    const empty = emptyNode(state, owner.end);
    keepAnchor(state, anchor, empty);
    return empty;
  }
  const token = state.current;
  const node = bareValue(state, owner);
  // `&name key: value` would mark the key alone, which nobody means.
  if (anchor !== undefined && anchorLine === token.line && node.kind !== 'scalar' && token.kind !== 'alias') {
    const inBrackets = token.kind === 'open-list' || token.kind === 'open-map';
    if (!inBrackets)
      report(state, 'yaml/anchor', { span: spanOf(state, anchor), help: 'put the anchor on the line above' });
  }
  keepAnchor(state, anchor, node);
  return node;
};

/** A dash may stand in the column of the key its list belongs to; everything else is indented further. */
const belongsTo = (state: ParseState, owner: Owner): boolean => {
  const { current } = state;
  if (isAtEnd(state)) return false;
  if (!current.first || current.column > owner.column) return true;
  return owner.kind === 'key' && current.kind === 'item' && current.column === owner.column;
};

const bareValue = (state: ParseState, owner: Owner): Node => {
  const token = state.current;
  if (isScalar(token)) return scalarOrMap(state, owner);
  switch (token.kind) {
    case 'alias':
      return wordOnly(state, owner, aliasedNode(state, advance(state)), 'an alias');
    case 'open-list':
    case 'open-map':
      return bracketed(state, owner);
    case 'block-header':
      return blockText(state, owner);
    case 'item':
      return listAt(state, owner);
    case 'explicit-key':
    case 'colon':
      return refuseKey(state, owner, token.kind === 'colon' ? 'nothing' : 'marked with ?');
    default:
      reportLeftover(state, owner.column);
      return emptyNode(state, owner.end);
  }
};

const scalarOrMap = (state: ParseState, owner: Owner): Node => {
  const token = advance(state);
  const isDashed = reportTouchingDashes(state, token);
  if (isDashed && !isKey(state, token)) return emptyNode(state, owner.end);
  if (!isKey(state, token)) return scalarNode(state, token);
  const onKeyLine = owner.kind === 'key' && token.line === owner.line;
  if (!onKeyLine) {
    if (token.line !== token.endLine && token.kind === 'plain') reportLinesBeforeKey(state, token);
    return blockMap(state, token);
  }
  if (token.line === token.endLine) report(state, 'yaml/colon-in-text', { span: spanOf(state, token) });
  else reportKeyUnderValue(state, owner, token);
  skipTo(state, owner.column);
  return emptyNode(state, owner.end);
};

/** Mostly the line above stands too far left; at the left edge its value takes the place of the group below it. */
const reportKeyUnderValue = (state: ParseState, owner: Owner, token: Token): void => {
  const key = lastLineOf(state, token);
  if (reportOutdented(state, key.start)) return;
  const details = { span: spanOf(state, key) };
  if (owner.column > 0) {
    report(state, 'yaml/key-under-value', details);
    return;
  }
  const { start, end } = restOfLine(state.text, token.start);
  reportMended(state, 'yaml/key-under-value', details, [{ at: start, cut: end - start, put: '' }], false);
};

/** False if no line further up is to blame for the one at `start`. */
const reportOutdented = (state: ParseState, start: number): boolean => {
  const lines = outdentedLines(state.text, start);
  for (const { range, edit } of lines) {
    reportMended(state, 'yaml/outdented', { span: spanOf(state, range) }, [edit], true);
  }
  return lines.length > 0;
};

/** Dashes without a space behind them make their lines texts or keys. */
const reportTouchingDashes = (state: ParseState, token: Token): boolean => {
  if (token.kind !== 'plain' || !token.first) return false;
  if (!TOUCHING_DASH.test(textAt(state, token))) return false;
  const looked = { ...token, end: Math.min(token.end, token.start + MOST_LOOKED) };
  const dashed = linesOf(state, looked).filter((range) => TOUCHING_DASH.test(textAt(state, range)));
  for (const { start } of dashed) {
    const span = spanOf(state, { start, end: start + 1 });
    reportMended(state, 'yaml/dash-without-space', { span }, spacedDash(state.text, start), true);
  }
  return dashed.length > 0;
};

/** Characters of a text that are looked through. */
const MOST_LOOKED = 10_000;

const TOUCHING_DASH = /^-[\p{L}{["']/u;

/** The scalar just read has a colon right behind it, so it is a key. */
const isKey = (state: ParseState, token: Token): boolean =>
  state.current.kind === 'colon' && state.current.line === token.endLine && !state.current.first;

const lastLineOf = (state: ParseState, token: Token): Range => {
  const source = textAt(state, token);
  const lastBreak = source.lastIndexOf('\n');
  const indent = /\S/u.exec(source.slice(lastBreak + 1))?.index ?? 0;
  return { start: token.start + lastBreak + 1 + indent, end: token.end };
};

/** Lines without a colon before a key are read as the beginning of that key. */
const reportLinesBeforeKey = (state: ParseState, token: Token): void => {
  const keyStart = lastLineOf(state, token).start;
  for (const range of linesOf(state, token)) if (range.start < keyStart) reportNoColon(state, range);
};

const reportNoColon = (state: ParseState, range: Range): void => {
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
};

/** A group whose first key has been read and whose colon is at the cursor. */
const blockMap = (state: ParseState, firstKey: Token): MapNode => {
  const list: EntryList = { entries: [], seen: new Map() };
  const { column } = firstKey;
  if (!enterLevel(state, firstKey)) return { kind: 'map', span: spanOf(state, firstKey), entries: [] };
  let key: Token | undefined = firstKey;
  let end = firstKey.end;
  while (key !== undefined) {
    reportTabBefore(state, key);
    if (key !== firstKey) reportItemAgain(state, firstKey, key);
    const colon = advance(state);
    const value = blockValue(state, { kind: 'key', column, line: colon.line, end: colon.end });
    end = Math.max(value.span.end, colon.end);
    // Lines without a colon were reported already; the key is what stands on the last of them.
    addEntry(state, list, key.kind === 'plain' && key.line !== key.endLine ? onItsLastLine(state, key) : key, value);
    endOfEntry(state, column);
    key = nextKey(state, column);
  }
  leaveLevel(state);
  return { kind: 'map', span: spanOf(state, { start: firstKey.start, end }), entries: list.entries };
};

/** The first key of an item once more: an item that lacks its dash. */
const reportItemAgain = (state: ParseState, firstKey: Token, key: Token): void => {
  const { text } = state;
  const isItem = !firstKey.first && text.slice(firstKey.start - 2, firstKey.start) === '- ';
  if (!isItem || textAt(state, key) !== textAt(state, firstKey)) return;
  if (text.slice(key.start - 2, key.start) !== '  ') return;
  const dash = [{ at: key.start - 2, cut: 2, put: '- ' }];
  reportMended(state, 'yaml/missing-dash', { span: spanOf(state, key) }, dash, true);
};

const onItsLastLine = (state: ParseState, key: Token): Token => ({
  ...key,
  ...lastLineOf(state, key),
  line: key.endLine,
});

/** The next key of a group in this column, read; undefined where the group ends. */
const nextKey = (state: ParseState, column: number): Token | undefined => {
  let inList = false;
  while (!isAtEnd(state) && state.current.column >= column) {
    const token = state.current;
    if (isScalar(token)) {
      advance(state);
      if (reportTouchingDashes(state, token)) {
        // Read as an item in the mended text.
      } else if (isKey(state, token)) {
        if (token.line !== token.endLine && token.kind === 'plain') reportLinesBeforeKey(state, token);
        return token;
      } else {
        reportNoKey(state, token);
      }
    } else if (token.kind === 'item') {
      if (!inList) report(state, 'yaml/mixed-list', { span: spanOf(state, token) });
      inList = true;
      advance(state);
    } else {
      reportNotAKey(state, token);
    }
    skipTo(state, column);
  }
  return undefined;
};

const reportNoKey = (state: ParseState, token: Token): void => {
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
};

/** The lines of a text in the column it begins in: each of them was meant to be a key of its own. */
const linesOf = (state: ParseState, token: Token): readonly Range[] => {
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
};

const reportNotAKey = (state: ParseState, token: Token): void => {
  const found = notKeys[token.kind];
  if (found !== undefined) report(state, 'yaml/key-not-text', { params: { found }, span: spanOf(state, token) });
  else if (token.kind === 'anchor' || token.kind === 'tag')
    report(state, 'yaml/anchor', { span: spanOf(state, token) });
  else reportLeftover(state, token.column);
  advance(state);
};

const notKeys: Readonly<Record<string, string>> = {
  'explicit-key': 'marked with ?',
  colon: 'nothing',
  alias: 'an alias',
  'open-list': 'a list',
  'open-map': 'a group',
};

const refuseKey = (state: ParseState, owner: Owner, found: string): Node => {
  report(state, 'yaml/key-not-text', { params: { found }, span: spanOf(state, state.current) });
  advance(state);
  skipTo(state, owner.column);
  return emptyNode(state, owner.end);
};

/** A value that can't be a key: a colon behind it is a mistake. */
const wordOnly = (state: ParseState, owner: Owner, node: Node, found: string): Node => {
  const { current } = state;
  if (current.kind !== 'colon' || current.first || state.stopped) return node;
  report(state, 'yaml/key-not-text', { params: { found }, span: node.span });
  skipTo(state, owner.column);
  return node;
};

const bracketed = (state: ParseState, owner: Owner): Node => {
  const found = state.current.kind === 'open-map' ? 'a group' : 'a list';
  const node = flowCollection(state);
  if (!state.broken) return wordOnly(state, owner, node, found);
  skipTo(state, owner.column);
  return node;
};

const blockText = (state: ParseState, owner: Owner): Node => {
  const header = advance(state);
  let stray: Token | undefined;
  while (state.current.kind === 'stray') stray = advance(state);
  if (stray !== undefined) report(state, 'yaml/bad-text-block', { span: spanOf(state, stray) });
  if (state.current.kind !== 'block-text') return { ...emptyNode(state, header.end), quoted: true };
  return blockTextNode(state, header, advance(state), owner.column);
};

const listAt = (state: ParseState, owner: Owner): Node => {
  const { current } = state;
  if (owner.kind === 'key' && current.line === owner.line) {
    const below = listBelow(state.text, current.start, owner.column);
    reportMended(state, 'yaml/list-on-key-line', { span: spanOf(state, current) }, [below], true);
    skipTo(state, owner.column);
    return emptyNode(state, owner.end);
  }
  return blockList(state, owner);
};

const blockList = (state: ParseState, owner: Owner): SequenceNode => {
  const firstDash = state.current;
  const { column } = firstDash;
  const items: Node[] = [];
  if (!enterLevel(state, firstDash)) return { kind: 'sequence', span: spanOf(state, firstDash), items };
  let end = firstDash.end;
  while (state.current.kind === 'item' && state.current.column === column) {
    reportTabBefore(state, state.current);
    const dash = advance(state);
    const item = blockValue(state, { kind: 'dash', column, line: dash.line, end: dash.end });
    items.push(item);
    end = Math.max(item.span.end, dash.end);
    endOfEntry(state, column);
    if (column !== owner.column) skipKeysAmongItems(state, column);
  }
  leaveLevel(state);
  return { kind: 'sequence', span: spanOf(state, { start: firstDash.start, end }), items };
};

const skipKeysAmongItems = (state: ParseState, column: number): void => {
  let reported = false;
  while (!isAtEnd(state) && state.current.column === column && state.current.kind !== 'item') {
    const token = advance(state);
    if (token.kind === 'open-map') {
      reportMissingDashes(state, token);
    } else if (!reportTouchingDashes(state, token)) {
      if (!reported) report(state, 'yaml/mixed-list', { span: spanOf(state, firstWordOf(state, token)) });
      reported = true;
    }
    skipTo(state, column);
  }
};

const firstWordOf = (state: ParseState, token: Token): Range => {
  const [word = ''] = textAt(state, token).split(/\s/u, 1);
  return { start: token.start, end: token.start + word.length };
};

/** After an entry comes a line of the same group or of one further out; anything else is reported and skipped. */
const endOfEntry = (state: ParseState, column: number): void => {
  state.broken = false;
  if (isAtEnd(state) || (state.current.first && state.current.column <= column)) return;
  reportLeftover(state, column);
  skipTo(state, column);
};

/** Moves to the next line that begins in this column or before it. */
const skipTo = (state: ParseState, column: number): void => {
  while (!isAtEnd(state) && !(state.current.first && state.current.column <= column)) advance(state);
  state.broken = false;
};

const reportLeftover = (state: ParseState, column: number): void => {
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
};

/** Groups in braces below each other are items of a list. */
const reportMissingDashes = (state: ParseState, token: Token): void => {
  for (const start of [...siblingsBefore(state.text, token.start), token.start]) {
    const span = spanOf(state, { start, end: start + 1 });
    reportMended(state, 'yaml/missing-dash', { span }, [{ at: start, cut: 0, put: '- ' }], true);
  }
};

const reportIndent = (state: ParseState, token: Token): void => {
  if (reportOutdented(state, token.start)) return;
  const moved = straggling(state.text, token.start);
  const details = { span: spanOf(state, moved[0]?.range ?? firstWordOf(state, token)) };
  if (moved.length === 0) report(state, 'yaml/indent', details);
  else {
    const edits = moved.map(({ edit }) => edit);
    reportMended(state, 'yaml/indent', details, edits, true);
  }
};

/** Tabs before a line are counted with the tokens; here only those between a dash and what it holds. */
const reportTabBefore = (state: ParseState, token: Token): void => {
  if (token.first) return;
  let start = token.start;
  while (state.text.charAt(start - 1) === ' ') start -= 1;
  if (state.text.charAt(start - 1) !== '\t') return;
  report(state, 'yaml/tab-indent', { params: { lines: 1 }, span: spanOf(state, { start: start - 1, end: start }) });
};
