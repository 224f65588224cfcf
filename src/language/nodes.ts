// Ways into the located nodes of a file: the plain value the shapes check, and the place of a path inside it. Used by
// decoding and, through placeOf, by every later stage that reports something. Scalars stay nodes in the plain value, so
// that a shape can tell `68` from "68" and knows the text as it was written.

import type { MapEntry, MapNode, Node, ScalarNode } from '../read/types.ts';
import type { Span } from '../source/types.ts';

/** A node without its places: maps are objects without a prototype, sequences arrays, scalars the nodes themselves. */
export type Plain = ScalarNode | readonly Plain[] | { readonly [key: string]: Plain };

/** Lists and groups as plain data; scalars stay the nodes they are. */
export function plainOf(node: Node): Plain {
  if (node.kind === 'scalar') return node;
  if (node.kind === 'sequence') return node.items.map(plainOf);
  return plainMap(node);
}

/** A group is read into an ordinary object; under this name the key is one that nobody knows. */
const HARMLESS = '(__proto__)';

/** A group as an object without a prototype, so that no key of a plan means anything to us but itself. */
export function plainMap(node: MapNode): { [key: string]: Plain } {
  const plain: { [key: string]: Plain } = Object.create(null);
  for (const { key, value } of node.entries) plain[key === '__proto__' ? HARMLESS : key] = plainOf(value);
  return plain;
}

/** Whether a part of a plain value is a scalar's node. */
export function isScalar(value: unknown): value is ScalarNode {
  return typeof value === 'object' && value !== null && 'kind' in value && value.kind === 'scalar';
}

/** The entry of a key; undefined where the node isn't a group or has no such key. */
export function findEntry(node: Node, key: string): MapEntry | undefined {
  return node.kind === 'map' ? node.entries.find((entry) => entry.key === key) : undefined;
}

/** A step into a node: a key of a map or an index of a sequence. */
export type Step = string | number;

export interface Found {
  readonly node: Node;
  /** Of the last key on the way, if there was one. */
  readonly keySpan?: Span;
  /** Whether all of the path was there. */
  readonly whole: boolean;
}

/**
 * Follows a path as far as it goes. An index into something that isn't a sequence stays where it is, because one thing
 * may be written where a list of things is meant.
 */
export function follow(root: Node, path: readonly Step[]): Found {
  let node = root;
  let keySpan: Span | undefined;
  for (const step of path) {
    if (typeof step === 'number') {
      if (node.kind !== 'sequence') continue;
      const item = node.items[step];
      if (item === undefined) return found(node, keySpan, false);
      node = item;
      keySpan = undefined;
    } else {
      const entry = findEntry(node, step);
      if (entry === undefined) return found(node, keySpan, false);
      node = entry.value;
      keySpan = entry.keySpan;
    }
  }
  return found(node, keySpan, true);
}

function found(node: Node, keySpan: Span | undefined, whole: boolean): Found {
  return { node, whole, ...(keySpan !== undefined && { keySpan }) };
}

/** `athletes.mira` and ['limits', 0, 'until'] make `athletes.mira.limits[0].until`. */
export function pathText(base: string, steps: readonly Step[]): string {
  return steps.reduce<string>(
    (path, step) => (typeof step === 'number' ? `${path}[${String(step)}]` : path === '' ? step : `${path}.${step}`),
    base,
  );
}

/** Where to mark a node: a scalar whole, a map or sequence by its first line's worth, as its end lies far below. */
export function markOf({ node, keySpan }: Found): Span {
  if (node.kind === 'scalar' && node.text !== '') return node.span;
  return keySpan ?? firstOf(node) ?? node.span;
}

function firstOf(node: Node): Span | undefined {
  if (node.kind === 'map') return node.entries[0]?.keySpan;
  if (node.kind === 'sequence') return node.items[0] === undefined ? undefined : firstOf(node.items[0]);
  return undefined;
}
