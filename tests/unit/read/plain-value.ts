// A node as a plain value for comparing: maps as lists of pairs, so that the order of keys counts too.

import type { Node } from '../../../src/read/types.ts';

export type PlainValue =
  | string
  | number
  | boolean
  | null
  | readonly PlainValue[]
  | { readonly map: readonly (readonly [string, PlainValue])[] };

export function plainValue(node: Node): PlainValue {
  if (node.kind === 'scalar') return node.value;
  if (node.kind === 'sequence') return node.items.map((item) => plainValue(item));
  return { map: node.entries.map(({ key, value }) => [key, plainValue(value)]) };
}

/** Every node below and with this one. */
export const allNodes = function* (node: Node): Generator<Node> {
  yield node;
  if (node.kind === 'sequence') for (const item of node.items) yield* allNodes(item);
  if (node.kind === 'map') for (const { value } of node.entries) yield* allNodes(value);
};
