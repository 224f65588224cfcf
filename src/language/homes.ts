// Where a key is at home, in words, for a key that stands at the wrong level. Called when an unknown key is reported.
// Keys of several homes name the first in the order a coach reads a plan.

import { keysOf } from './groups.ts';
import { groupShapes, listShapes, mapShapes, SECTION_KEYS } from './sections.ts';
import type { Shape } from './shape.ts';

const HOMES: readonly (readonly [shape: Shape<unknown>, words: string])[] = [
  [groupShapes.season, 'below `season:`'],
  [mapShapes.athletes, 'to an athlete'],
  [mapShapes.places, 'to a place'],
  [listShapes.slots, 'to a slot'],
  [listShapes.competitions, 'to a competition'],
  [listShapes.closures, 'to a closure'],
  [listShapes.pins, 'to a pin'],
  [listShapes.waivers, 'to a waiver'],
  [listShapes.always, 'to an item of `always:`'],
  [mapShapes.drills, 'to a drill'],
  [mapShapes.lifts, 'to a lift'],
];

let homes: ReadonlyMap<string, string> | undefined;

function allHomes(): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  for (const key of SECTION_KEYS) found.set(key, 'at the left edge of a plan file');
  for (const [shape, words] of HOMES) {
    for (const key of Object.keys(keysOf(shape) ?? {})) if (!found.has(key)) found.set(key, words);
  }
  return found;
}

/** Where a key belongs, if it belongs anywhere: `to an athlete`. */
export function findHome(key: string): string | undefined {
  homes ??= allHomes();
  return homes.get(key);
}
