// Lists and groups in brackets. Called by the block parser at an opening bracket; leaves the cursor behind the closing
// one. A mistake is reported once and the bracket read on as well as it goes; a bracket that isn't closed is given up.

import { restOfLine } from './mend-line.ts';
import { aliasedNode, keepAnchor } from './yaml-alias.ts';
import { addEntry, NO_KEYS } from './yaml-entries.ts';
import type { EntryList } from './yaml-entries.ts';
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
import { reportQuoteInside, scalarNode, touchesQuoted, unexpected } from './yaml-scalar.ts';
import type { Token } from './yaml-tokens.ts';
import type { MapNode, Node, SequenceNode } from './types.ts';

/** The list or group that opens at the cursor. */
export function flowCollection(state: ParseState): MapNode | SequenceNode {
  const open = state.current;
  if (!enterLevel(state, open)) return { kind: 'sequence', span: spanOf(state, open), items: [] };
  advance(state);
  const node = open.kind === 'open-map' ? flowMap(state, open) : flowList(state, open);
  leaveLevel(state);
  return node;
}

function flowMap(state: ParseState, open: Token): MapNode {
  const list: EntryList = { entries: [], seen: new Map() };
  const end = readItems(state, open, () => {
    flowEntry(state, list);
  });
  return { kind: 'map', span: spanOf(state, { start: open.start, end }), entries: list.entries };
}

function flowList(state: ParseState, open: Token): SequenceNode {
  const items: Node[] = [];
  const end = readItems(state, open, () => {
    items.push(flowItem(state));
  });
  return { kind: 'sequence', span: spanOf(state, { start: open.start, end }), items };
}

/** Reads items and their commas up to the closing bracket; returns the offset behind it. */
function readItems(state: ParseState, open: Token, readItem: () => void): number {
  let itemWanted = true;
  const { length: mendsBefore } = state.mends;
  for (;;) {
    if (state.broken || state.stopped) return state.previous?.end ?? open.end;
    const { current } = state;
    if (current.kind === 'close-map' || current.kind === 'close-list') return close(state, open);
    if (current.kind === 'flow-break' || isAtEnd(state)) {
      // What looked wrong inside may only look so because the bracket was meant to end further up.
      state.mends.length = mendsBefore;
      return giveUp(state, open);
    }
    if (current.kind === 'comma') {
      if (itemWanted) report(state, 'yaml/extra-comma', { span: spanOf(state, current) });
      itemWanted = true;
      advance(state);
      continue;
    }
    if (!itemWanted && !reportMissingComma(state)) return current.start;
    itemWanted = false;
    const before = state.current;
    readItem();
    if (state.current === before) advance(state);
  }
}

/** False if it is no comma that is missing, but a quote too many. */
function reportMissingComma(state: ParseState): boolean {
  const { current, previous } = state;
  if (previous !== undefined && touchesQuoted(state)) {
    reportQuoteInside(state, previous);
    return false;
  }
  const comma = [{ at: previous?.end ?? current.start, cut: 0, put: ', ' }];
  reportMended(state, 'yaml/missing-comma', { span: spanOf(state, firstLineOf(current)) }, comma, true);
  return true;
}

const firstLineOf = (token: Token): Range =>
  token.line === token.endLine ? token : { start: token.start, end: token.start + 1 };

const bracketsOf = ({ kind }: Token): { readonly open: string; readonly close: string } =>
  kind === 'open-map' ? { open: '{', close: '}' } : { open: '[', close: ']' };

function close(state: ParseState, open: Token): number {
  const { current } = state;
  if ((open.kind === 'open-map') === (current.kind === 'close-map')) return advance(state).end;
  const related = [{ span: spanOf(state, current), message: `${textAt(state, current)} stands here instead` }];
  const brackets = bracketsOf(open);
  const edits = [{ at: current.start, cut: 1, put: brackets.close }];
  reportMended(state, 'yaml/unclosed-bracket', { params: brackets, span: spanOf(state, open), related }, edits, false);
  state.broken = true;
  return current.start;
}

function giveUp(state: ParseState, open: Token): number {
  const params = bracketsOf(open);
  const edits = [{ at: closingPlace(state, open), cut: 0, put: params.close }];
  reportMended(state, 'yaml/unclosed-bracket', { params, span: spanOf(state, open) }, edits, false);
  if (state.current.kind === 'flow-break') advance(state);
  state.broken = true;
  return state.previous?.end ?? open.end;
}

/** The end of the line with the bracket; behind the last item where that line goes on on the next. */
function closingPlace(state: ParseState, open: Token): number {
  const { end } = restOfLine(state.text, open.start);
  return /[,{[]$/u.test(state.text.slice(open.start, end)) ? (state.previous?.end ?? open.end) : end;
}

function flowEntry(state: ParseState, list: EntryList): void {
  const key = state.current;
  if (!isScalar(key)) {
    refuseKey(state);
    return;
  }
  advance(state);
  if (state.current.kind !== 'colon') {
    reportKeyWithoutColon(state, key);
    return;
  }
  const colon = advance(state);
  if (colon.line !== key.endLine) reportColonBelow(state, colon);
  addEntry(state, list, key, flowValue(state, colon));
}

function reportColonBelow(state: ParseState, colon: Token): void {
  report(state, 'yaml/long-key', { span: spanOf(state, colon), help: 'write the colon on the line of its key' });
}

function reportKeyWithoutColon(state: ParseState, key: Token): void {
  const text = textAt(state, key);
  const glued = /^([\w-]+):\S/u.exec(text)?.[1];
  if (isAfterDecimalComma(state, key)) {
    reportDecimalComma(state, key);
    return;
  }
  scalarNode(state, key);
  if (state.broken) return;
  const span = spanOf(state, firstLineOf(key));
  if (glued !== undefined && key.kind === 'plain') {
    const space = { at: key.start + glued.length + 1, cut: 0, put: ' ' };
    reportMended(state, 'yaml/missing-space', { params: { key: glued }, span }, [space], true);
  } else {
    const help = 'in { } write `key: value`; a list is written in [ ]';
    const word = key.kind === 'plain' ? (/^\S+/u.exec(text)?.[0] ?? text) : text;
    const colon = { at: key.start + word.length, cut: 0, put: ':' };
    reportMended(state, 'yaml/missing-colon', { span, help }, [colon], false);
  }
}

/** `5 kg` of `68,5 kg`: digits right behind a comma that is right behind a digit. */
const isAfterDecimalComma = ({ text }: ParseState, { kind, start, end }: Token): boolean =>
  kind === 'plain' &&
  /^\d,$/u.test(text.slice(start - 2, start)) &&
  /^\d+(?:\s*[^\d\s]+)?$/u.test(text.slice(start, end));

function reportDecimalComma(state: ParseState, decimals: Token): void {
  const before = /\d+$/u.exec(state.text.slice(Math.max(0, decimals.start - 20), decimals.start - 1))?.[0] ?? '';
  const comma = decimals.start - 1;
  const range = { start: comma - before.length, end: decimals.end };
  const found = textAt(state, range);
  const params = { found, wanted: found.replace(',', '.') };
  const point = [{ at: comma, cut: 1, put: '.' }];
  reportMended(state, 'yaml/decimal-comma', { params, span: spanOf(state, range) }, point, true);
}

function refuseKey(state: ParseState): void {
  const { current } = state;
  const found = NO_FLOW_KEYS[current.kind];
  if (current.kind === 'item') {
    reportBlockForm(state, current);
  } else if (found === undefined) {
    unexpected(state, current);
  } else {
    report(state, 'yaml/key-not-text', { params: { found }, span: spanOf(state, current) });
  }
  if (current.kind === 'open-list' || current.kind === 'open-map') flowCollection(state);
  else advance(state);
  if (state.current.kind === 'colon') flowValue(state, advance(state));
}

const NO_FLOW_KEYS: Readonly<Record<string, string>> = { ...NO_KEYS, anchor: 'an anchor', tag: 'a tag' };

function reportBlockForm(state: ParseState, token: Token): void {
  report(state, 'yaml/block-in-brackets', { span: spanOf(state, token) });
}

/** What stands behind a colon; nothing at all is a value too. */
function flowValue(state: ParseState, colon: Token): Node {
  const { kind } = state.current;
  if (kind === 'comma' || kind === 'close-map' || kind === 'close-list' || kind === 'flow-break' || isAtEnd(state)) {
    return emptyNode(state, colon.end);
  }
  const token = state.current;
  const node = flowNode(state);
  if (state.current.kind === 'colon' && !state.broken) reportSecondColon(state, token);
  return node;
}

/** `{ day: tuesday minutes: 75 }` reads as a value "tuesday minutes" with a colon behind it. */
function reportSecondColon(state: ParseState, value: Token): void {
  const lastWord = /\s(\S+)$/u.exec(textAt(state, value))?.[1];
  if (value.kind === 'plain' && lastWord !== undefined) {
    const start = value.end - lastWord.length;
    const before = textAt(state, { start: value.start, end: start }).trimEnd();
    const comma = { at: value.start + before.length, cut: 0, put: ',' };
    const span = spanOf(state, { start, end: value.end });
    reportMended(state, 'yaml/missing-comma', { span }, [comma], true);
  } else {
    report(state, 'yaml/colon-in-text', { span: spanOf(state, firstLineOf(value)) });
  }
  flowValue(state, advance(state));
}

/** An item of a list; `key: value` without braces is a group of one. */
function flowItem(state: ParseState): Node {
  const token = state.current;
  if (token.kind === 'colon' || token.kind === 'explicit-key') {
    refuseKey(state);
    return emptyNode(state, token.start);
  }
  if (!isScalar(token)) {
    const node = flowNode(state);
    if (state.current.kind === 'colon' && !state.broken) {
      const found = NO_FLOW_KEYS[token.kind] ?? 'no word';
      report(state, 'yaml/key-not-text', { params: { found }, span: node.span });
      flowValue(state, advance(state));
    }
    return node;
  }
  advance(state);
  if (state.current.kind !== 'colon') {
    // 17,5 kg is one number: two would both have their unit.
    if (isAfterDecimalComma(state, token) && /\D$/u.test(textAt(state, token))) reportDecimalComma(state, token);
    return scalarNode(state, token);
  }
  if (!enterLevel(state, token)) return emptyNode(state, token.start);
  const list: EntryList = { entries: [], seen: new Map() };
  if (state.current.line !== token.endLine) reportColonBelow(state, state.current);
  addEntry(state, list, token, flowValue(state, advance(state)));
  leaveLevel(state);
  const end = list.entries.at(-1)?.value.span.end ?? token.end;
  return { kind: 'map', span: spanOf(state, { start: token.start, end }), entries: list.entries };
}

function flowNode(state: ParseState): Node {
  const anchor = takeProperties(state);
  const node = bareNode(state);
  keepAnchor(state, anchor, node);
  return node;
}

function bareNode(state: ParseState): Node {
  const token = state.current;
  if (isScalar(token)) return scalarNode(state, advance(state));
  if (token.kind === 'alias') return aliasedNode(state, advance(state));
  if (token.kind === 'open-list' || token.kind === 'open-map') return flowCollection(state);
  const valueEnds = token.kind === 'comma' || token.kind === 'close-list' || token.kind === 'close-map';
  if (valueEnds || token.kind === 'flow-break' || isAtEnd(state)) return emptyNode(state, token.start);
  advance(state);
  if (token.kind === 'item') {
    reportBlockForm(state, token);
    return flowNode(state);
  }
  unexpected(state, token);
  return emptyNode(state, token.start);
}
