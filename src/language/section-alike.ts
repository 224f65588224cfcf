// Which section was meant by a key at the left edge that is like none of them, by what stands below it. Called by gather:
// what can be told apart is read as that section; of the rest it isn't told as well that the plan lacks it.

import type { MapNode, Node } from '../read/types.ts';
import { keysOf } from './groups.ts';
import type { Keys } from './groups.ts';
import { listShapes, mapShapes } from './sections.ts';
import type { Shape } from './shape.ts';

/** Sections whose items are told by their keys; those of the others hold little but days, names and a reason. */
const TELLING = {
  list: { slots: listShapes.slots, competitions: listShapes.competitions, practice: listShapes.practice },
  group: { places: mapShapes.places, squads: mapShapes.squads, athletes: mapShapes.athletes },
} as const;

/** Items looked at. */
const MOST_LOOKED_AT = 20;

/** The sections that it may be, one where it is clear; none where no section has such keys. */
export function sectionsAlike(value: Node): readonly string[] {
  const items = itemsOf(value).slice(0, MOST_LOOKED_AT);
  if (items.length === 0) return [];
  const shapes: Readonly<Record<string, Shape<unknown>>> = value.kind === 'sequence' ? TELLING.list : TELLING.group;
  const alike = Object.entries(shapes).flatMap(([section, shape]) => {
    const known = keysKnown(keysOf(shape) ?? {}, items);
    return known === 0 ? [] : [{ section, known }];
  });
  const most = Math.max(...alike.map(({ known }) => known));
  return alike.filter(({ known }) => known === most).map(({ section }) => section);
}

/** Of a section that groups or lists items alone. */
function itemsOf(value: Node): readonly MapNode[] {
  if (value.kind === 'scalar') return [];
  const nodes = value.kind === 'sequence' ? value.items : value.entries.map((entry) => entry.value);
  const items = nodes.filter((node) => node.kind === 'map');
  return items.length === nodes.length ? items : [];
}

/** How many of the items' keys the shape has; 0 where those are few, or where the items mostly lack what it asks for. */
function keysKnown(shape: Keys, items: readonly MapNode[]): number {
  const keys = items.map(({ entries }) => entries.map(({ key }) => key));
  const known = keys.flat().filter((key) => Object.hasOwn(shape, key)).length;
  const wanted = Object.entries(shape).flatMap(([key, { isOptional }]) => (isOptional ? [] : key));
  const complete = keys.filter((those) => wanted.every((key) => those.includes(key))).length;
  return 2 * known > keys.flat().length && 2 * complete > keys.length ? known : 0;
}
