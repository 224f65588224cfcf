// Items put together by what they have in common. Used wherever a list falls into groups; groups and the items in them
// stay in the order in which they came.

/** The groups of items with one key, each where its first item stands. */
export function grouped<T>(items: Iterable<T>, keyOf: (item: T) => unknown): readonly (readonly T[])[] {
  return [...groupsByKey(items, keyOf).values()];
}

/** The same by their keys. */
export function groupsByKey<T, K>(items: Iterable<T>, keyOf: (item: T) => K): Map<K, T[]> {
  const groups = new Map<K, T[]>();
  for (const item of items) addTo(groups, keyOf(item), item);
  return groups;
}

/** Puts an item into the group of a key, which is made where there is none. */
export function addTo<T, K>(groups: Map<K, T[]>, key: K, item: T): void {
  const group = groups.get(key);
  if (group === undefined) groups.set(key, [item]);
  else group.push(item);
}
