// Where the easy weeks fall among weeks that load. Exact: the fewest deloads that keep runs of loading weeks short, then
// the most on weeks with tests, then the most on a phase's last week, then the latest. Called by ../week-kinds.ts.

export interface LoadableWeek {
  readonly tests: number;
  readonly endsPhase: boolean;
  /** The coach's choice: true an easy week, false a loading one. */
  readonly pinned?: boolean;
  readonly mostInRow: number;
  readonly leastBetween: number;
}

interface Placing {
  /** Weeks where pins leave the rhythm no way out. */
  readonly breaches: number;
  readonly count: number;
  readonly onTests: number;
  readonly onPhaseEnds: number;
  readonly weeks: readonly number[];
}

const NONE: Placing = { breaches: 0, count: 0, onTests: 0, onPhaseEnds: 0, weeks: [] };

/**
 * Indices of the weeks that are deloads. A week that is undefined (another kind, or a phase without deloads) ends a run
 * of loading weeks. Rhythm: R4 (P) and jump coaching's three rising weeks and an easy one (C).
 */
export function placeDeloads(weeks: readonly (LoadableWeek | undefined)[]): ReadonlySet<number> {
  const found = new Set<number>();
  let run: LoadableWeek[] = [];
  for (const [at, week] of [...weeks, undefined].entries()) {
    if (week !== undefined) run.push(week);
    else {
      for (const place of placeInRun(run)) found.add(at - run.length + place);
      run = [];
    }
  }
  return found;
}

/** From the last week back: for each number of loading weeks already in a row, the best placing of what is left. */
function placeInRun(run: readonly LoadableWeek[]): readonly number[] {
  let after: Placing[] = Array.from({ length: run.length + 1 }, () => NONE);
  for (const [at, week] of [...run.entries()].toReversed()) {
    const later = after;
    after = Array.from({ length: at + 1 }, (_, inRow) => bestFrom(week, at, inRow, later));
  }
  return after[0]?.weeks ?? [];
}

function bestFrom(week: LoadableWeek, at: number, inRow: number, later: readonly Placing[]): Placing {
  const load = loading(later[inRow + 1] ?? NONE, inRow + 1 > week.mostInRow);
  if (week.pinned === false) return load;
  const easy = resting(later[0] ?? NONE, week, at, inRow < week.leastBetween);
  if (week.pinned === true) return easy;
  return better(easy, load) ? easy : load;
}

/** A loading week before the rest: mostly the very same placing. */
function loading(rest: Placing, isBreach: boolean): Placing {
  if (!isBreach) return rest;
  const { breaches, count, onTests, onPhaseEnds, weeks } = rest;
  return { breaches: breaches + 1, count, onTests, onPhaseEnds, weeks };
}

function resting(rest: Placing, deload: LoadableWeek, at: number, isBreach: boolean): Placing {
  return {
    breaches: rest.breaches + (isBreach ? 1 : 0),
    count: rest.count + 1,
    onTests: rest.onTests + (deload.tests > 0 ? 1 : 0),
    onPhaseEnds: rest.onPhaseEnds + (deload.endsPhase ? 1 : 0),
    weeks: [at, ...rest.weeks],
  };
}

function better(a: Placing, b: Placing): boolean {
  if (a.breaches !== b.breaches) return a.breaches < b.breaches;
  if (a.count !== b.count) return a.count < b.count;
  if (a.onTests !== b.onTests) return a.onTests > b.onTests;
  if (a.onPhaseEnds !== b.onPhaseEnds) return a.onPhaseEnds > b.onPhaseEnds;
  return later(a.weeks, b.weeks);
}

/** Whether the first deload of `a` is later than that of `b`, or else the next, and so on. */
function later(a: readonly number[], b: readonly number[]): boolean {
  for (let index = 0; index < Math.min(a.length, b.length); index += 1) {
    const difference = (a[index] ?? 0) - (b[index] ?? 0);
    if (difference !== 0) return difference > 0;
  }
  return false;
}
