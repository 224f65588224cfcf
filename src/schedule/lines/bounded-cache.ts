// Remembers what was worked out under a key, up to a number of keys; then it forgets everything and starts again. Used
// where the same work repeats over athletes and weeks. What it returns never depends on what it remembers.

/** A memory of `most` keys. `make` is called where the key isn't known, and must give the same for the same key. */
export function boundedCache<T>(most: number): (key: string, make: () => T) => T {
  const { find, keep } = boundedMemory<T>(most);
  return (key, make) => find(key) ?? keep(key, make());
}

/** The same for whoever doesn't keep all that is made. */
export interface BoundedMemory<T> {
  readonly find: (key: string) => T | undefined;
  /** Gives back what it keeps. */
  readonly keep: (key: string, value: T) => T;
}

/** A memory of `most` keys with nothing in it. */
export function boundedMemory<T>(most: number): BoundedMemory<T> {
  const values = new Map<string, T>();
  return {
    find: (key) => values.get(key),
    keep: (key, value) => {
      if (values.size >= most) values.clear();
      values.set(key, value);
      return value;
    },
  };
}
