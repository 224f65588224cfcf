// The path of phases over the weeks of one segment, of least cost: how far each length is from its ideal, plus what each
// step from phase to phase costs. Exact, by dynamic programming over the weeks; called by ../phases.ts.

import { PATH_PHASES, PATH_STEPS, SINGLE_WEEK_PHASE } from '../../library/phases.ts';
import type { PathPhase } from '../../library/types.ts';

export type PathPhaseId = PathPhase['id'];

interface Run {
  readonly row: number;
  readonly length: number;
}

interface Path {
  readonly cost: number;
  readonly runs: readonly Run[];
}

/** A phase fixed for a week, or undefined where the path may choose. */
export type FixedPhase = PathPhaseId | undefined;

/**
 * The phase of each week, for as many weeks as `fixed` has (weeks that aren't empty, in order); undefined when the
 * fixed weeks allow no path. Cost of a phase = weight x (length - ideal)²; ties go to the path whose later phases are
 * longer, compared from the last back, then to the earlier row of the table. Lengths and order: P1, P2, P9, R9.
 */
export function choosePath(fixed: readonly FixedPhase[]): readonly PathPhaseId[] | undefined {
  if (fixed.some((phase) => phase !== undefined)) return searchPath(fixed);
  const known = freePaths.get(fixed.length) ?? searchPath(fixed);
  freePaths.set(fixed.length, known);
  return known;
}

/** Paths without a pinned week, by their length: a squad shares them. */
const freePaths = new Map<number, readonly PathPhaseId[] | undefined>();

function searchPath(fixed: readonly FixedPhase[]): readonly PathPhaseId[] | undefined {
  if (fixed.length === 0) return [];
  if (fixed.length === 1) return [fixed[0] ?? SINGLE_WEEK_PHASE];
  const whole = bestWhole(bestPaths(fixed)[fixed.length] ?? []);
  return whole?.runs.flatMap((run) => Array.from({ length: run.length }, () => getRow(run.row).id));
}

/** Of the paths over all weeks, the best that ends in a phase from which there is a step to the end. */
function bestWhole(paths: readonly (Path | undefined)[]): Path | undefined {
  let chosen: Path | undefined;
  paths.forEach((path, row) => {
    if (path === undefined || stepCost(getRow(row).id, 'end') === undefined) return;
    if (chosen === undefined || compare(path, chosen) < 0) chosen = path;
  });
  return chosen;
}

function stepCost(from: PathPhaseId | 'start', to: PathPhaseId | 'end'): number | undefined {
  return PATH_STEPS.find((step) => step.from === from && step.to === to)?.costTenths;
}

/** best[n][row]: the best path over the first n weeks that ends in that row's phase. */
function bestPaths(fixed: readonly FixedPhase[]): (Path | undefined)[][] {
  const best: (Path | undefined)[][] = [[]];
  for (let weeks = 1; weeks <= fixed.length; weeks += 1) {
    best.push(PATH_PHASES.map((_, row) => bestEndingIn(row, weeks, fixed, best)));
  }
  return best;
}

function bestEndingIn(
  row: number,
  weeks: number,
  fixed: readonly FixedPhase[],
  best: readonly (readonly (Path | undefined)[])[],
): Path | undefined {
  const phase = getRow(row);
  let chosen: Path | undefined;
  for (let length = phase.least; length <= Math.min(phase.most, weeks); length += 1) {
    if (!agrees(fixed, weeks - length, weeks, phase.id)) continue;
    const before = weeks - length;
    const cost = phase.weightTenths * (length - phase.ideal) ** 2;
    for (const path of pathsBefore(before, phase.id, best)) {
      const candidate = { cost: path.cost + cost, runs: [...path.runs, { row, length }] };
      if (chosen === undefined || compare(candidate, chosen) < 0) chosen = candidate;
    }
  }
  return chosen;
}

/** Paths over the weeks before a phase begins, with the cost of the step into it. */
function pathsBefore(
  weeks: number,
  next: PathPhaseId,
  best: readonly (readonly (Path | undefined)[])[],
): readonly Path[] {
  if (weeks === 0) {
    const step = stepCost('start', next);
    return step === undefined ? [] : [{ cost: step, runs: [] }];
  }
  return PATH_PHASES.flatMap((from, row) => {
    const path = best[weeks]?.[row];
    const step = stepCost(from.id, next);
    return path === undefined || step === undefined ? [] : [{ cost: path.cost + step, runs: path.runs }];
  });
}

function agrees(fixed: readonly FixedPhase[], from: number, until: number, phase: PathPhaseId): boolean {
  for (let week = from; week < until; week += 1) {
    const pinned = fixed[week];
    if (pinned !== undefined && pinned !== phase) return false;
  }
  return true;
}

function compare(a: Path, b: Path): number {
  if (a.cost !== b.cost) return a.cost - b.cost;
  return compareLengths(a.runs, b.runs) || compareRows(a.runs, b.runs);
}

function compareLengths(a: readonly Run[], b: readonly Run[]): number {
  for (let back = 1; back <= Math.min(a.length, b.length); back += 1) {
    const difference = (b.at(-back)?.length ?? 0) - (a.at(-back)?.length ?? 0);
    if (difference !== 0) return difference;
  }
  return 0;
}

function compareRows(a: readonly Run[], b: readonly Run[]): number {
  for (let back = 1; back <= Math.min(a.length, b.length); back += 1) {
    const difference = (a.at(-back)?.row ?? 0) - (b.at(-back)?.row ?? 0);
    if (difference !== 0) return difference;
  }
  return a.length - b.length;
}

function getRow(row: number): PathPhase {
  const phase = PATH_PHASES[row];
  if (phase === undefined) throw new Error(`no phase in row ${row}`);
  return phase;
}
