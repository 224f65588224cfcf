// Easy weeks by trying all placings, and what a placing is worth. A run is the loading and easy weeks between two weeks of
// another kind; its numbers stand in its weeks.

export interface RunWeek {
  readonly test: boolean;
  /** The last week of its phase. */
  readonly last: boolean;
  /** The coach's own choice. */
  readonly pinned?: 'easy' | 'load';
  /** Most loading weeks in a row up to here, and fewest before an easy one here. */
  readonly most: number;
  readonly least: number;
}

/** Lower is better, the first number first: weeks that break the rhythm, easy weeks, those on no test, on no last week. */
export type Worth = readonly [breaches: number, easy: number, offTests: number, offLast: number];

/** Of the easy weeks of a run, by their places. */
export function worthOf(run: readonly RunWeek[], easy: readonly number[]): Worth {
  let breaches = 0;
  let inRow = 0;
  for (const [at, { most, least }] of run.entries()) {
    if (easy.includes(at)) {
      if (inRow < least) breaches += 1;
      inRow = 0;
    } else {
      inRow += 1;
      if (inRow > most) breaches += 1;
    }
  }
  const off = (test: (week: RunWeek) => boolean): number =>
    easy.filter((at) => {
      const week = run[at];
      return week !== undefined && !test(week);
    }).length;
  return [breaches, easy.length, off(({ test }) => test), off(({ last }) => last)];
}

/** Negative where `a` is better; of placings worth the same the one whose first easy week is later, then the next. */
export function comparePlacings(run: readonly RunWeek[], a: readonly number[], b: readonly number[]): number {
  const [worth, other] = [worthOf(run, a), worthOf(run, b)];
  const worse = worth.map((part, at) => part - (other[at] ?? 0)).find((difference) => difference !== 0);
  const earlier = a.map((at, index) => (b[index] ?? 0) - at).find((difference) => difference !== 0);
  return worse ?? earlier ?? 0;
}

/** The best of all placings that keep the coach's own choices. */
export function bestOfAllPlacings(run: readonly RunWeek[]): readonly number[] {
  let best: readonly number[] | undefined;
  let least = Infinity;
  const place = (easy: readonly number[], at: number): void => {
    // What is broken so far stays broken: a branch is left once it breaks more than a whole placing that is known.
    if (worthOf(run.slice(0, at), easy)[0] > least) return;
    if (at === run.length) {
      if (best === undefined || comparePlacings(run, easy, best) < 0) best = easy;
      least = Math.min(least, worthOf(run, easy)[0]);
      return;
    }
    const pinned = run[at]?.pinned;
    if (pinned !== 'easy') place(easy, at + 1);
    if (pinned !== 'load') place([...easy, at], at + 1);
  };
  place([], 0);
  return best ?? [];
}
