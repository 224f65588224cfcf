// Names inside the parts of a broken item that couldn't be read as a whole: a limit without its reason may still name a
// drill that doesn't exist, and both are told in one run. Called where items that hold others are resolved.

import { entriesOf, nodeOf } from '../language/authored.ts';
import type { Item } from '../language/authored.ts';
import type { Step } from '../language/nodes.ts';
import { isBound } from './bind-names.ts';
import type { KnownNames } from './bind-names.ts';
import type { Scope } from './scope.ts';

/** Reports unknown names under these keys, anywhere within the fields of an item that couldn't be read. */
export function reportBrokenNames(scope: Scope, item: Item<object>, known: ReadonlyMap<string, KnownNames>): void {
  if (item.kind === 'whole') return;
  const read = new Set(Object.keys(item.value));
  const isWhole = entriesOf(item).length === 0;
  if (isWhole) walk(scope, item, [], undefined, known);
  for (const { key } of entriesOf(item)) if (!read.has(key)) walk(scope, item, [key], known.get(key), known);
}

function walk(
  scope: Scope,
  item: Item<object>,
  steps: readonly Step[],
  wanted: KnownNames | undefined,
  known: ReadonlyMap<string, KnownNames>,
): void {
  const node = nodeOf(item, ...steps);
  if (node.kind === 'scalar') {
    if (wanted !== undefined && node.text !== '') isBound(scope, wanted, node.text, item, ...steps);
  } else if (node.kind === 'sequence') {
    for (const index of node.items.keys()) walk(scope, item, [...steps, index], wanted, known);
  } else {
    for (const { key } of node.entries) walk(scope, item, [...steps, key], known.get(key), known);
  }
}
