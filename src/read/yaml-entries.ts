// Keys and their values put into a group: every key a word on one line, and each once. Doubles are found by a lookup,
// so that ten thousand keys take no longer than they must.

import { report, spanOf, textAt } from './yaml-parse-state.ts';
import type { ParseState } from './yaml-parse-state.ts';
import { keyText } from './yaml-scalar.ts';
import type { Token } from './yaml-tokens.ts';
import type { Span } from '../source/types.ts';
import type { MapEntry, Node } from './types.ts';

/** Characters of a key; YAML itself ends at 1024. */
const longestKey = 1024;

export interface EntryList {
  readonly entries: MapEntry[];
  readonly seen: Map<string, Span>;
}

/** Adds an entry, unless its key is one that can't be; the first of two equal keys stays. */
export const addEntry = (state: ParseState, list: EntryList, key: Token, value: Node): void => {
  if (key.line !== key.endLine || key.end - key.start > longestKey) {
    report(state, 'yaml/long-key', { span: spanOf(state, { start: key.start, end: key.start + 1 }) });
    return;
  }
  const span = spanOf(state, key);
  if (key.kind === 'plain' && textAt(state, key) === '<<') {
    report(state, 'yaml/merge-key', { span });
    return;
  }
  const text = keyText(state, key);
  const first = list.seen.get(text);
  if (first !== undefined) {
    const related = [{ span: first, message: 'the first one is here' }];
    report(state, 'yaml/duplicate-key', { params: { key: text }, span, related });
    return;
  }
  list.seen.set(text, span);
  list.entries.push({ key: text, keySpan: span, value });
};
