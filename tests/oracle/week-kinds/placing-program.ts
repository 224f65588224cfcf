// Easy weeks as an integer program: a variable a week, and one for each way a week may break the rhythm, read off the weeks
// before it. Asked level by level.

import { atLeast, atMost, copied, emptyProgram, exactly, whole } from '../contacts/integer-program.ts';
import type { IntegerProgram, Part, Solve } from '../contacts/integer-program.ts';
import type { RunWeek, Worth } from './every-placing.ts';

const easyName = (at: number): string => `e${at}`;

interface PlacingProgram {
  readonly program: IntegerProgram;
  /** Breaches, easy weeks, those on no test, those on no last week of a phase. */
  readonly levels: readonly (readonly Part[])[];
}

function placingProgram(run: readonly RunWeek[]): PlacingProgram {
  const program = emptyProgram();
  const breaches: Part[] = [];
  for (const at of run.keys()) whole(program, easyName(at), 1);
  for (const [at, { most, least, pinned }] of run.entries()) {
    if (pinned !== undefined) exactly(program, [[1, easyName(at)]], pinned === 'easy' ? 1 : 0);
    breaches.push(...tooLong(program, at, most), ...tooSoon(program, at, least));
  }
  const easyWhere = (test: (week: RunWeek) => boolean): readonly Part[] =>
    run.flatMap((week, at): readonly Part[] => (test(week) ? [[1, easyName(at)]] : []));
  const levels = [breaches, easyWhere(() => true), easyWhere(({ test }) => !test), easyWhere(({ last }) => !last)];
  return { program, levels };
}

/** A week that is loading as are so many before it is one too many. */
function tooLong(program: IntegerProgram, at: number, most: number): readonly Part[] {
  if (at < most) return [];
  const name = whole(program, `long${at}`, 1);
  const window = Array.from({ length: most + 1 }, (_, back): Part => [1, easyName(at - back)]);
  atLeast(program, [[1, name], ...window], 1);
  return [[1, name]];
}

/** An easy week with another, or the beginning, among so many before it is too soon. */
function tooSoon(program: IntegerProgram, at: number, least: number): readonly Part[] {
  if (least === 0) return [];
  const name = whole(program, `soon${at}`, 1);
  if (at < least)
    atLeast(
      program,
      [
        [1, name],
        [-1, easyName(at)],
      ],
      0,
    );
  for (let back = 1; back <= Math.min(least, at); back += 1) {
    atLeast(
      program,
      [
        [1, name],
        [-1, easyName(at)],
        [-1, easyName(at - back)],
      ],
      -1,
    );
  }
  return [[1, name]];
}

export interface SolvedPlacing {
  readonly worth: Worth;
  /** Worth the same as `found` and later in the first easy week that differs; undefined where there is none. */
  readonly later: readonly number[] | undefined;
}

/** Level after level, each held while the next is asked. */
export function solvePlacing(solve: Solve, run: readonly RunWeek[], found: readonly number[]): SolvedPlacing {
  const { program, levels } = placingProgram(run);
  const worth: number[] = [];
  for (const level of levels) {
    const answer = solve(program, level);
    if (answer.status === 'none') throw new Error('the solver found no placing at all');
    const least = level.reduce((sum, [times, name]) => sum + times * (answer.values.get(name) ?? Number.NaN), 0);
    worth.push(least);
    if (level.length > 0) atMost(program, level, least);
  }
  const answer = solve(laterProgram(program, run.length, found), []);
  const [breaches = 0, easy = 0, offTests = 0, offLast = 0] = worth;
  const later =
    answer.status === 'none' ? undefined : [...run.keys()].filter((at) => answer.values.get(easyName(at)) === 1);
  return { worth: [breaches, easy, offTests, offLast], later };
}

/** The first week in which the two differ is easy in `found` and loading here. */
function laterProgram(program: IntegerProgram, weeks: number, found: readonly number[]): IntegerProgram {
  const later = copied(program);
  const first = found.map((at) => whole(later, `first${at}`, 1));
  exactly(
    later,
    first.map((name): Part => [1, name]),
    1,
  );
  for (const [index, at] of found.entries()) {
    const here = first[index] ?? '';
    atMost(
      later,
      [
        [1, here],
        [1, easyName(at)],
      ],
      1,
    );
    for (let before = 0; before < at; before += 1) {
      const sum: readonly Part[] = [[1, easyName(before)]];
      if (found.includes(before)) atLeast(later, [...sum, [-1, here]], 0);
      else atMost(later, [...sum, [1, here]], 1);
    }
  }
  // Without an easy week there is nothing that could be later.
  if (found.length === 0) exactly(later, [[1, whole(later, 'never', weeks > 0 ? 0 : 1)]], 1);
  return later;
}
