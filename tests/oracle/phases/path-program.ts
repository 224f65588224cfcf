// The path of phases as an integer program: a variable for each phase, week it begins in and length, one for each step from
// phase to phase, and as many runs of a phase ending before a week as steps out of it there. Read by compare.ts.

import { atLeast, atMost, copied, emptyProgram, exactly, whole } from '../contacts/integer-program.ts';
import type { IntegerProgram, Part } from '../contacts/integer-program.ts';
import { costOfRun, costOfStep, rowOf, ROWS } from './every-path.ts';
import type { PathRun, PathWeek } from './every-path.ts';

interface Placed extends PathRun {
  readonly name: string;
  /** First week, from 0. */
  readonly from: number;
}

export interface PathProgram {
  readonly program: IntegerProgram;
  readonly runs: readonly Placed[];
  /** In tenths. */
  readonly cost: readonly Part[];
}

const names = (placed: readonly Placed[], times = 1): readonly Part[] => placed.map(({ name }): Part => [times, name]);

/** The program of so many weeks, some of them fixed. */
export function pathProgram(fixed: readonly (PathWeek | undefined)[]): PathProgram {
  const program = emptyProgram();
  const runs = placedRuns(program, fixed);
  exactly(program, names(runs.filter(({ from }) => from === 0)), 1);
  // A name stands once in a sum: the solver doesn't add up the same one twice.
  const cost: Part[] = runs.map((run) => {
    const starts = run.from === 0 ? (costOfStep('start', run.phase) ?? 0) : 0;
    const ends = run.from + run.length === fixed.length ? (costOfStep(run.phase, 'end') ?? 0) : 0;
    return [(costOfRun(run) ?? 0) + starts + ends, run.name];
  });
  for (let week = 1; week < fixed.length; week += 1) cost.push(...joinRuns(program, runs, week));
  return { program, runs, cost };
}

function placedRuns(program: IntegerProgram, fixed: readonly (PathWeek | undefined)[]): readonly Placed[] {
  const runs: Placed[] = [];
  for (const phase of ROWS) {
    for (let from = 0; from < fixed.length; from += 1) {
      for (let length = 1; from + length <= fixed.length; length += 1) {
        const weeks = fixed.slice(from, from + length);
        const fits = weeks.every((one) => one === undefined || one === phase);
        const begins = from > 0 || costOfStep('start', phase) !== undefined;
        const ends = from + length < fixed.length || costOfStep(phase, 'end') !== undefined;
        if (!fits || !begins || !ends || costOfRun({ phase, length }) === undefined) continue;
        runs.push({ phase, from, length, name: whole(program, `x${rowOf(phase)}_${from}_${length}`, 1) });
      }
    }
  }
  return runs;
}

/** Steps at the beginning of a week, with what they cost. */
function joinRuns(program: IntegerProgram, runs: readonly Placed[], week: number): readonly Part[] {
  const cost: Part[] = [];
  const out = new Map<PathWeek, Part[]>(ROWS.map((phase) => [phase, []]));
  const into = new Map<PathWeek, Part[]>(ROWS.map((phase) => [phase, []]));
  for (const from of ROWS) {
    for (const to of ROWS) {
      const step = costOfStep(from, to);
      if (step === undefined) continue;
      const name = whole(program, `y${rowOf(from)}_${rowOf(to)}_${week}`, 1);
      cost.push([step, name]);
      out.get(from)?.push([-1, name]);
      into.get(to)?.push([-1, name]);
    }
  }
  for (const phase of ROWS) {
    const ending = names(runs.filter((run) => run.phase === phase && run.from + run.length === week));
    const beginning = names(runs.filter((run) => run.phase === phase && run.from === week));
    const [left, entered] = [out.get(phase) ?? [], into.get(phase) ?? []];
    if (ending.length + left.length > 0) exactly(program, [...ending, ...left], 0);
    if (beginning.length + entered.length > 0) exactly(program, [...beginning, ...entered], 0);
  }
  return cost;
}

/** The runs that a solution takes, in order. */
export function readPath({ runs }: PathProgram, values: ReadonlyMap<string, number>): readonly PathRun[] {
  return runs
    .filter(({ name }) => values.get(name) === 1)
    .toSorted((a, b) => a.from - b.from)
    .map(({ phase, length }) => ({ phase, length }));
}

/**
 * A path that costs no more than `found` and is better by the ties: from the back all lengths the same up to a longer one,
 * or all lengths the same, and from the back all phases the same up to one earlier in the table.
 */
export function betterPath(
  { program, runs, cost }: PathProgram,
  found: readonly PathRun[],
  most: number,
): IntegerProgram {
  const better = copied(program);
  atMost(better, cost, most);
  let ends = found.reduce((sum, { length }) => sum + length, 0);
  const back = found.toReversed().map((run) => ({ ...run, from: (ends -= run.length) }));
  const longer = back.map((_, at) => whole(better, `longer${at}`, 1));
  const earlier = back.map((_, at) => whole(better, `earlier${at}`, 1));
  exactly(
    better,
    [...longer, ...earlier].map((name): Part => [1, name]),
    1,
  );
  const needs = (choice: string, placed: readonly Placed[]): void => {
    atLeast(better, [...names(placed), [-1, choice]], 0);
  };
  for (const [at, run] of back.entries()) {
    const sameLength = runs.filter(({ from, length }) => from === run.from && length === run.length);
    const ending = runs.filter(({ from, length }) => from + length === run.from + run.length);
    needs(
      longer[at] ?? '',
      ending.filter(({ length }) => length > run.length),
    );
    needs(
      earlier[at] ?? '',
      sameLength.filter(({ phase }) => rowOf(phase) < rowOf(run.phase)),
    );
    for (const choice of [...longer.slice(at + 1), ...earlier]) needs(choice, sameLength);
    for (const choice of earlier.slice(at + 1))
      needs(
        choice,
        sameLength.filter(({ phase }) => phase === run.phase),
      );
  }
  return better;
}
