// Remembers what was worked out under a key, up to a number of keys; then it forgets everything and starts again. Used
// where the same work repeats over athletes and weeks. What it returns never depends on what it remembers.

/** A memory of `most` keys. `make` is called where the key isn't known, and must give the same for the same key. */
export function boundedCache<T>(most: number): (key: string, make: () => T) => T {
  const values = new Map<string, T>();
  return (key, make) => {
    const known = values.get(key);
    if (known !== undefined) return known;
    const value = make();
    if (values.size >= most) values.clear();
    values.set(key, value);
    return value;
  };
}
