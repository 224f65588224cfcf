// The path of phases by trying all of them, and what a path is worth. Nothing is shared with the scheduler but the tables
// of lengths, weights and steps.

import { PATH_PHASES, PATH_STEPS } from '../../../src/library/phases.ts';

export type PathWeek = (typeof PATH_PHASES)[number]['id'];

export interface PathRun {
  readonly phase: PathWeek;
  readonly length: number;
}

export const ROWS: readonly PathWeek[] = PATH_PHASES.map(({ id }) => id);

export const rowOf = (phase: PathWeek): number => ROWS.indexOf(phase);

/** Undefined: there is no such step. In tenths. */
export function costOfStep(from: string, to: string): number | undefined {
  return PATH_STEPS.find((step) => step.from === from && step.to === to)?.costTenths;
}

/** Undefined where the phase may not be so long. In tenths. */
export function costOfRun({ phase, length }: PathRun): number | undefined {
  const row = PATH_PHASES[rowOf(phase)];
  if (row === undefined || length < row.least || length > row.most) return undefined;
  return row.weightTenths * (length - row.ideal) * (length - row.ideal);
}

/** What a path costs, in tenths; undefined where it is none. */
export function costOfPath(runs: readonly PathRun[]): number | undefined {
  let sum = 0;
  for (const [at, run] of runs.entries()) {
    const step = costOfStep(runs[at - 1]?.phase ?? 'start', run.phase);
    const own = costOfRun(run);
    if (step === undefined || own === undefined) return undefined;
    sum += step + own;
  }
  const last = runs.at(-1);
  const end = last === undefined ? undefined : costOfStep(last.phase, 'end');
  return end === undefined ? undefined : sum + end;
}

/** Weeks of one phase in a row. Two runs of one phase never follow each other: there is no such step. */
export function runsOf(weeks: readonly PathWeek[]): readonly PathRun[] {
  const runs: { phase: PathWeek; length: number }[] = [];
  for (const phase of weeks) {
    const last = runs.at(-1);
    if (last?.phase === phase) last.length += 1;
    else runs.push({ phase, length: 1 });
  }
  return runs;
}

/** Negative where `a` is better: it costs less, or its later phases are longer, or come earlier in the table. */
export function comparePaths(a: readonly PathRun[], b: readonly PathRun[]): number {
  const cost = (costOfPath(a) ?? Infinity) - (costOfPath(b) ?? Infinity);
  if (cost !== 0) return cost;
  const [back, other] = [a.toReversed(), b.toReversed()];
  const longer = back.map(({ length }, at) => (other[at]?.length ?? 0) - length).find((difference) => difference !== 0);
  const earlier = back
    .map(({ phase }, at) => rowOf(phase) - rowOf(other[at]?.phase ?? phase))
    .find((difference) => difference !== 0);
  return longer ?? earlier ?? 0;
}

/** The best of all paths over so many weeks that keep the fixed ones; undefined where there is none. */
export function bestOfAllPaths(fixed: readonly (PathWeek | undefined)[]): readonly PathRun[] | undefined {
  let best: readonly PathRun[] | undefined;
  const walk = (runs: readonly PathRun[], from: number): void => {
    if (from === fixed.length) {
      if (costOfPath(runs) !== undefined && (best === undefined || comparePaths(runs, best) < 0)) best = runs;
      return;
    }
    for (const phase of ROWS) {
      if (costOfStep(runs.at(-1)?.phase ?? 'start', phase) === undefined) continue;
      for (let length = 1; from + length <= fixed.length; length += 1) {
        const pinned = fixed[from + length - 1];
        if (pinned !== undefined && pinned !== phase) break;
        if (costOfRun({ phase, length }) !== undefined) walk([...runs, { phase, length }], from + length);
      }
    }
  };
  walk([], 0);
  return best;
}
