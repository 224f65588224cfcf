// A document as the values a JSON Schema is checked against.

import type { Node } from '../../../src/read/types.ts';

export function plainValue(node: Node): unknown {
  if (node.kind === 'scalar') return node.value;
  if (node.kind === 'sequence') return node.items.map(plainValue);
  return Object.fromEntries(node.entries.map(({ key, value }) => [key, plainValue(value)]));
}
