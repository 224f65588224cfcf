// What decoding makes of a plan's files: every item with its values read and its nodes at hand, names not yet bound and
// nothing filled in. Read by plan/resolve. An item with a mistake keeps the values that could be read, so that its other
// mistakes are found in the same run, and is marked broken, so that nothing is planned from it.

import type { MapEntry, Node } from '../read/types.ts';
import type { SourceFile, Span } from '../source/types.ts';
import { follow, markOf, pathText } from './nodes.ts';
import type { Step } from './nodes.ts';
import type { GroupFields, ListFields, ListKey, MapFields, MapKey } from './sections.ts';
import type { DoneFields, TestRowFields } from './shapes/record.ts';
import type { RuleFields } from './shapes/rules.ts';

/** Where an item stands. */
export interface Located {
  readonly node: Node;
  /** `athletes.mira`, `competitions[0]`; of a list the position within its file. */
  readonly path: string;
  /** What to mark when something is missing from it. */
  readonly span: Span;
}

export type Item<T> = Located &
  ({ readonly kind: 'whole'; readonly value: T } | { readonly kind: 'broken'; readonly value: Partial<T> });

export interface RuleItem {
  readonly rule: string;
  /** The rule's key. */
  readonly keySpan: Span;
  readonly item: Item<RuleFields>;
}

type Lists = { readonly [K in ListKey]: readonly Item<ListFields<K>>[] };
type Maps = { readonly [K in MapKey]: ReadonlyMap<string, Item<MapFields<K>>> };

export interface Authored extends Lists, Maps {
  readonly files: readonly SourceFile[];
  /** Paths of what is a list, a group or a single value in the place of another. */
  readonly misshapen: ReadonlySet<string>;
  /** The start of the entry file: what to mark when the plan as a whole lacks something. */
  readonly start: Span;
  /** Absent when no file has one. */
  readonly season?: Item<GroupFields<'season'>>;
  readonly rules: readonly RuleItem[];
  readonly record?: Item<GroupFields<'record'>>;
  /** Rows of the record files, in the order of the files. */
  readonly done: readonly Item<DoneFields>[];
  readonly testRows: readonly Item<TestRowFields>[];
}

/** The place of a value within an item, or of the last key on the way that is there. */
export function placeOf(item: Located, ...steps: readonly Step[]): Span {
  if (steps.length === 0) return item.span;
  const found = follow(item.node, steps);
  return found.node === item.node ? item.span : markOf(found);
}

/** Place and logical path, as a diagnostic wants them. */
export function at(item: Located, ...steps: readonly Step[]): { readonly span: Span; readonly path: string } {
  return { span: placeOf(item, ...steps), path: pathText(item.path, steps) };
}

/** The place of a key of an item, or of the item where the key isn't there. */
export function keyPlaceOf(item: Located, ...steps: readonly Step[]): Span {
  const found = follow(item.node, steps);
  return found.whole ? (found.keySpan ?? item.span) : item.span;
}

/** The key and value of each entry of a group within an item; none where there is no group. */
export function entriesOf(item: Located, ...steps: readonly Step[]): readonly MapEntry[] {
  const found = follow(item.node, steps);
  return found.whole && found.node.kind === 'map' ? found.node.entries : [];
}

/** A part of an item as an item of its own, such as one limit of an athlete. */
export function within(item: Located, ...steps: readonly Step[]): Located {
  return { ...at(item, ...steps), node: follow(item.node, steps).node };
}

/** The node at a path within an item, or the last on the way that is there. */
export function nodeOf(item: Located, ...steps: readonly Step[]): Node {
  return follow(item.node, steps).node;
}
