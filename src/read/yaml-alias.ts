// Anchors and aliases. An alias stands for what was marked further up; each use is counted by all it repeats, so that
// aliases of aliases end in a diagnostic long before they end in a full memory. An anchor is known only once its value
// is complete, so nothing can stand for itself.

import { nearest } from '../util/did-you-mean.ts';
import { emptyNode, MOST_LEVELS, report, spanOf, stop, textAt } from './yaml-parse-state.ts';
import type { Anchor, ParseState } from './yaml-parse-state.ts';
import type { Token } from './yaml-tokens.ts';
import type { Node } from './types.ts';

/** Values that all aliases of one file may repeat. */
export const MOST_REPEATED = 10_000;

/** Remembers a value under the name of its anchor; a later anchor of the same name takes its place. */
export function keepAnchor(state: ParseState, anchor: Token | undefined, node: Node): void {
  if (anchor === undefined) return;
  state.anchors.set(textAt(state, anchor).slice(1), { node, ...measured(node) });
}

function measured(node: Node): Omit<Anchor, 'node'> {
  const children =
    node.kind === 'map' ? node.entries.map(({ value }) => value) : node.kind === 'sequence' ? node.items : [];
  let weight = 1;
  let height = 0;
  for (const child of children) {
    const part = measured(child);
    weight += part.weight;
    height = Math.max(height, part.height + 1);
  }
  return { weight, height };
}

/** What an alias stands for, at the alias's own place. */
export function aliasedNode(state: ParseState, alias: Token): Node {
  const name = textAt(state, alias).slice(1);
  const span = spanOf(state, alias);
  const anchor = state.anchors.get(name);
  if (anchor === undefined) {
    report(state, 'yaml/unknown-alias', { params: { name }, span, help: helpForUnknown(state, name) });
    return emptyNode(state, alias.start);
  }
  state.repeated += anchor.weight;
  if (state.repeated > MOST_REPEATED) {
    report(state, 'yaml/alias-too-large', { params: { most: MOST_REPEATED }, span });
    stop(state);
  } else if (state.level + anchor.height > MOST_LEVELS) {
    report(state, 'yaml/too-deep', { params: { most: MOST_LEVELS }, span });
    stop(state);
  }
  return { ...anchor.node, span };
}

function helpForUnknown(state: ParseState, name: string): string {
  const near = nearest(name, state.anchors.keys());
  if (near !== undefined) return `did you mean *${near}?`;
  return `if this is a text that begins with a star, put it in quotes: "*${name}"`;
}
