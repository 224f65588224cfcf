// A line of the page that is about somebody: what to decide, or what went otherwise. Lines that say the same of several
// athletes become one.

export interface ToldItem {
  readonly kind: string;
  /** Ids, in the order of the plan. */
  readonly athletes: readonly string[];
  /** As the page names them. */
  readonly names: readonly string[];
  readonly words: string;
  /** What it changes in the plan, or what happens until it is decided. */
  readonly changes?: string;
  /** `record/done.csv:12`. */
  readonly places: readonly string[];
}

/** Items that say the same as one, where the first of them stands. */
export function gathered<T extends ToldItem>(items: readonly T[]): readonly T[] {
  const found = new Map<string, T>();
  for (const item of items) {
    const key = JSON.stringify([item.kind, item.words, item.changes]);
    const before = found.get(key);
    found.set(
      key,
      before === undefined
        ? item
        : {
            ...before,
            athletes: [...before.athletes, ...item.athletes],
            names: [...before.names, ...item.names],
            places: [...new Set([...before.places, ...item.places])],
          },
    );
  }
  return [...found.values()];
}
