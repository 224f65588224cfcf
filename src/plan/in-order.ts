// Items and names in an order that files and keys can't change. Called by every file that resolves a list.

import { byCodeUnit } from '../util/by-code-unit.ts';

/** Each name once, in order of code units. */
export function sortedUnique(names: readonly string[]): readonly string[] {
  return [...new Set(names)].toSorted(byCodeUnit);
}

/** Sorted by a text that says all of an item's meaning, so that the order of files can't matter. */
export function inOrder<T extends object>(
  items: readonly T[],
  first: (item: T) => string | number = () => 0,
): readonly T[] {
  if (items.length < 2) return items;
  const keyed = items.map((item) => ({ item, first: first(item), rest: meaningOf(item) }));
  keyed.sort((a, b) => compare(a.first, b.first) || compare(a.rest, b.rest));
  return keyed.map(({ item }) => item);
}

const compare = <T extends string | number>(a: T, b: T): number => (a < b ? -1 : a > b ? 1 : 0);

/** An item as text, its places left out. */
function meaningOf(item: object): string {
  return JSON.stringify(item, (key, value: unknown) => {
    if (key === 'span' || key === 'origin') return undefined;
    return value instanceof Map || value instanceof Set ? [...value] : value;
  });
}
