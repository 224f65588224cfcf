// Chance that can be repeated: the same seed gives the same numbers.

export interface Chance {
  /** A whole number from 0 up to, not including, `below`. */
  readonly below: (below: number) => number;
  /** One of the items, of which there is at least one. */
  readonly of: <T>(items: readonly T[]) => T;
}

/** Mulberry32, a small generator in the public domain: even enough to choose mutations. */
export function chanceOf(seed: number): Chance {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 0x1_0000_0000;
  };
  const below = (limit: number): number => Math.floor(next() * limit);
  const of = <T>(items: readonly T[]): T => {
    const item = items[below(items.length)];
    if (item === undefined) throw new Error('nothing to choose from');
    return item;
  };
  return { below, of };
}
