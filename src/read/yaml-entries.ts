// Keys and their values put into a group: every key a word on one line, and each once. Doubles are found by a lookup,
// so that ten thousand keys take no longer than they must.

import { report, spanOf, textAt } from './yaml-parse-state.ts';
import type { ParseState } from './yaml-parse-state.ts';
import { keyText } from './yaml-scalar.ts';
import type { Token } from './yaml-tokens.ts';
import type { MapEntry, Node } from './types.ts';

/** Characters of a key; YAML itself ends at 1024. */
const LONGEST_KEY = 1024;

/** What stands in the place of a key and can't be one, by the token it begins with. */
export const NO_KEYS: Readonly<Record<string, string>> = {
  'explicit-key': 'marked with ?',
  colon: 'nothing',
  alias: 'an alias',
  'open-list': 'a list',
  'open-map': 'a group',
};

export interface EntryList {
  readonly entries: MapEntry[];
  /** Where each key stands among the entries. */
  readonly seen: Map<string, number>;
}

/** Adds an entry, unless its key is one that can't be. Of two equal keys the first stays, with what the other holds. */
export function addEntry(state: ParseState, list: EntryList, key: Token, value: Node): void {
  if (key.line !== key.endLine || key.end - key.start > LONGEST_KEY) {
    report(state, 'yaml/long-key', { span: spanOf(state, { start: key.start, end: key.start + 1 }) });
    return;
  }
  const span = spanOf(state, key);
  if (key.kind === 'plain' && textAt(state, key) === '<<') {
    report(state, 'yaml/merge-key', { span });
    return;
  }
  const text = keyText(state, key);
  const index = list.seen.get(text);
  const first = index === undefined ? undefined : list.entries[index];
  if (index === undefined || first === undefined) {
    list.seen.set(text, list.entries.length);
    list.entries.push({ key: text, keySpan: span, value });
    return;
  }
  const related = [{ span: first.keySpan, message: 'the first one is here' }];
  report(state, 'yaml/duplicate-key', { params: { key: text }, span, related });
  list.entries[index] = { ...first, value: joined(first.value, value) };
}

/** What two equal keys hold, so that a slip below the second is found too. */
function joined(first: Node, second: Node): Node {
  if (first.kind === 'map' && second.kind === 'map') {
    const known = new Set(first.entries.map(({ key }) => key));
    return { ...first, entries: [...first.entries, ...second.entries.filter(({ key }) => !known.has(key))] };
  }
  if (first.kind === 'sequence' && second.kind === 'sequence') {
    return { ...first, items: [...first.items, ...second.items] };
  }
  return first.kind === 'scalar' && first.value === null ? second : first;
}
