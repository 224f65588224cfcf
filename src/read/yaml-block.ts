// The indented part of YAML: groups of keys, lists with dashes, and the values in them, by the column each begins in.
// Called once per file by parse-yaml. After a mistake it goes on at the next line of the same group, so that one run
// shows them all; what the mistake is, yaml-block-slips.ts says.

import { listBelow } from './mend-line.ts';
import { aliasedNode, keepAnchor } from './yaml-alias.ts';
import {
  firstWordOf,
  onItsLastLine,
  reportItemAgain,
  reportKeyUnderValue,
  reportLeftover,
  reportLinesBeforeKey,
  reportMissingDashes,
  reportNoKey,
  reportTabBefore,
  reportTouchingDashes,
} from './yaml-block-slips.ts';
import { addEntry, NO_KEYS } from './yaml-entries.ts';
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
} from './yaml-parse-state.ts';
import type { ParseState } from './yaml-parse-state.ts';
import { takeProperties } from './yaml-properties.ts';
import { blockTextNode, scalarNode } from './yaml-scalar.ts';
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
export function documentNode(state: ParseState): Node {
  const root = blockValue(state, { kind: 'document', column: -1, line: -1, end: 0 });
  while (!isAtEnd(state)) {
    reportLeftover(state, -1);
    const before = state.current;
    blockValue(state, { kind: 'document', column: -1, line: -1, end: 0 });
    if (state.current === before) advance(state);
  }
  return root;
}

/** The value at the cursor, or an empty one if the next line belongs further out. */
function blockValue(state: ParseState, owner: Owner): Node {
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
}

/** A dash may stand in the column of the key its list belongs to; everything else is indented further. */
function belongsTo(state: ParseState, owner: Owner): boolean {
  const { current } = state;
  if (isAtEnd(state)) return false;
  if (!current.first || current.column > owner.column) return true;
  return owner.kind === 'key' && current.kind === 'item' && current.column === owner.column;
}

function bareValue(state: ParseState, owner: Owner): Node {
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
}

function scalarOrMap(state: ParseState, owner: Owner): Node {
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
  else reportKeyUnderValue(state, owner.column, token);
  skipTo(state, owner.column);
  return emptyNode(state, owner.end);
}

/** The scalar just read has a colon right behind it, so it is a key. */
const isKey = (state: ParseState, token: Token): boolean =>
  state.current.kind === 'colon' && state.current.line === token.endLine && !state.current.first;

/** A group whose first key has been read and whose colon is at the cursor. */
function blockMap(state: ParseState, firstKey: Token): MapNode {
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
}

/** The next key of a group in this column, read; undefined where the group ends. */
function nextKey(state: ParseState, column: number): Token | undefined {
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
}

function reportNotAKey(state: ParseState, token: Token): void {
  const found = NO_KEYS[token.kind];
  if (found !== undefined) report(state, 'yaml/key-not-text', { params: { found }, span: spanOf(state, token) });
  else if (token.kind === 'anchor' || token.kind === 'tag')
    report(state, 'yaml/anchor', { span: spanOf(state, token) });
  else reportLeftover(state, token.column);
  advance(state);
}

function refuseKey(state: ParseState, owner: Owner, found: string): Node {
  report(state, 'yaml/key-not-text', { params: { found }, span: spanOf(state, state.current) });
  advance(state);
  skipTo(state, owner.column);
  return emptyNode(state, owner.end);
}

/** A value that can't be a key: a colon behind it is a mistake. */
function wordOnly(state: ParseState, owner: Owner, node: Node, found: string): Node {
  const { current } = state;
  if (current.kind !== 'colon' || current.first || state.stopped) return node;
  report(state, 'yaml/key-not-text', { params: { found }, span: node.span });
  skipTo(state, owner.column);
  return node;
}

function bracketed(state: ParseState, owner: Owner): Node {
  const found = state.current.kind === 'open-map' ? 'a group' : 'a list';
  const node = flowCollection(state);
  if (!state.broken) return wordOnly(state, owner, node, found);
  skipTo(state, owner.column);
  return node;
}

function blockText(state: ParseState, owner: Owner): Node {
  const header = advance(state);
  let stray: Token | undefined;
  while (state.current.kind === 'stray') stray = advance(state);
  if (stray !== undefined) report(state, 'yaml/bad-text-block', { span: spanOf(state, stray) });
  if (state.current.kind !== 'block-text') return { ...emptyNode(state, header.end), quoted: true };
  return blockTextNode(state, header, advance(state), owner.column);
}

function listAt(state: ParseState, owner: Owner): Node {
  const { current } = state;
  if (owner.kind === 'key' && current.line === owner.line) {
    const below = listBelow(state.text, current.start, owner.column);
    reportMended(state, 'yaml/list-on-key-line', { span: spanOf(state, current) }, [below], true);
    skipTo(state, owner.column);
    return emptyNode(state, owner.end);
  }
  return blockList(state, owner);
}

function blockList(state: ParseState, owner: Owner): SequenceNode {
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
}

function skipKeysAmongItems(state: ParseState, column: number): void {
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
}

/** After an entry comes a line of the same group or of one further out; anything else is reported and skipped. */
function endOfEntry(state: ParseState, column: number): void {
  state.broken = false;
  if (isAtEnd(state) || (state.current.first && state.current.column <= column)) return;
  reportLeftover(state, column);
  skipTo(state, column);
}

/** Moves to the next line that begins in this column or before it. */
function skipTo(state: ParseState, column: number): void {
  while (!isAtEnd(state) && !(state.current.first && state.current.column <= column)) advance(state);
  state.broken = false;
}
