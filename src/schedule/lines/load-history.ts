// The heaviest load of each lift in the last loading week of the running block: what the next one steps up from. Kept
// while one athlete's season is written, block by block.

export interface LoadHistory {
  /** Grams in the loading week before this one, or undefined for a lift new to the block. */
  readonly before: (lift: string) => number | undefined;
  readonly note: (lift: string, grams: number) => void;
  /** Called when a week begins. Loads of weeks that don't load are not remembered. */
  readonly startWeek: (block: number, loading: boolean) => void;
}

/** A history with nothing in it. Loads in grams, by the lift's id; weeks are given in order. */
export function loadHistory(): LoadHistory {
  let block = 0;
  let loading = false;
  let last = new Map<string, number>();
  let now = new Map<string, number>();
  return {
    before: (lift) => last.get(lift),
    note: (lift, grams) => {
      if (loading) now.set(lift, Math.max(grams, now.get(lift) ?? 0));
    },
    startWeek: (nextBlock, nextLoading) => {
      for (const [lift, grams] of now) last.set(lift, grams);
      now = new Map();
      loading = nextLoading;
      if (nextBlock !== block) last = new Map();
      block = nextBlock;
    },
  };
}
