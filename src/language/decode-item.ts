// Reads one item by its shape. Called by decoding for each athlete, slot, pin and so on, one at a time, so that ten
// thousand athletes are ten thousand small jobs. What is wrong in one key leaves the others readable, and a key that is
// misspelt is told and read as the one that was meant.

import type { Diagnostic } from '../diagnostics/types.ts';
import type { MapEntry, Node } from '../read/types.ts';
import type { Item, Located } from './authored.ts';
import { keysOf } from './groups.ts';
import { diagnose, misspeltKeys } from './issues.ts';
import type { MisspeltKey } from './issues.ts';
import { plainOf } from './nodes.ts';
import type { Plain, Step } from './nodes.ts';
import { parse } from './shape.ts';
import type { Shape } from './shape.ts';

/** Times an item is read once more as it was meant: below a misspelt key there may be another. */
const MOST_READINGS = 3;
/** Keys of one item that are read as they were meant each time. */
const MOST_MISSPELT = 100;

/** The item, whole or broken; problems are added to `diagnostics`. */
export function decodeItem<T>(shape: Shape<T>, written: Located, diagnostics: Diagnostic[]): Item<T> {
  let located = written;
  for (let reading = 1; ; reading += 1) {
    const plain = inputOf(shape, located.node);
    const parsed = parse(shape, plain);
    if ('value' in parsed) {
      const { node, path, span } = located;
      return { node, path, span, kind: reading === 1 ? 'whole' : 'broken', value: parsed.value };
    }
    const { issues } = parsed;
    const misspelt = reading > MOST_READINGS ? [] : misspeltKeys(located, issues, MOST_MISSPELT);
    if (misspelt.length === 0) {
      for (const found of diagnose(located, issues)) diagnostics.push(found);
      return { ...located, kind: 'broken', value: located.node.kind === 'map' ? salvage(shape, plain) : {} };
    }
    for (const { told } of misspelt) diagnostics.push(told);
    located = { ...located, node: misspelt.reduce(renamed, located.node) };
  }
}

/** A tree with one key under the name that was meant. */
function renamed(root: Node, { steps, key, meant }: MisspeltKey): Node {
  return within(root, steps, (node) =>
    node.kind === 'map'
      ? { ...node, entries: node.entries.map((entry) => (entry.key === key ? named(entry, meant) : entry)) }
      : node,
  );
}

const named = (entry: MapEntry, key: string): MapEntry => ({ ...entry, key });

/** A tree with what stands at a path changed; as `follow`, an index into what is no list stays where it is. */
function within(node: Node, [step, ...rest]: readonly Step[], change: (node: Node) => Node): Node {
  if (step === undefined) return change(node);
  if (typeof step === 'number') {
    if (node.kind !== 'sequence') return within(node, rest, change);
    return { ...node, items: node.items.map((item, index) => (index === step ? within(item, rest, change) : item)) };
  }
  if (node.kind !== 'map') return node;
  const entries = node.entries.map((entry) =>
    entry.key === step ? { ...entry, value: within(entry.value, rest, change) } : entry,
  );
  return { ...node, entries };
}

/** An item with nothing written is one that leaves all to the defaults: `seniors:` with no line below it. */
function inputOf(shape: Shape<unknown>, node: Node): Plain {
  return node.kind === 'scalar' && node.value === null && keysOf(shape) !== undefined ? {} : plainOf(node);
}

/** The keys that can be read by themselves. */
function salvage<T>(shape: Shape<T>, plain: Plain): Partial<T> {
  const keys = keysOf(shape);
  if (keys === undefined || Array.isArray(plain)) return {};
  const read: Record<string, unknown> = {};
  for (const [key, keyShape] of Object.entries(keys)) {
    const written = plain[key as keyof typeof plain];
    const parsed = written === undefined ? undefined : parse(keyShape, written);
    if (parsed !== undefined && 'value' in parsed) read[key] = parsed.value;
  }
  return read as Partial<T>;
}
