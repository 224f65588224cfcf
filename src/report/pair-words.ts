// How the two lines of a pair are done, in words: a set of the one, its rest, a set of the other, and again; or, where a
// note says cluster, the jumps inside the set. Called for every line that is put on paper or read out.

import type { BuiltLine } from '../build/types.ts';
import { isCluster } from '../library/pairs.ts';
import { exerciseName } from './exercise-words.ts';
import type { Plan } from '../plan/types.ts';

export interface Pair {
  /** Order of the other line, and its exercise: `back squat`. */
  readonly order: number;
  readonly name: string;
  /** `then back squat, after the rest`, of whatever the other line is called. */
  readonly words: (other: string) => string;
}

/** What a line of a session is paired with; undefined where it stands alone. */
export function pairOf(
  { library, season }: Pick<Plan, 'library' | 'season'>,
  line: BuiltLine,
  lines: readonly BuiltLine[],
): Pair | undefined {
  const other = line.pairedWith === undefined ? undefined : lines.find(({ order }) => order === line.pairedWith);
  if (other === undefined) return undefined;
  const { order, exercise } = other;
  const words = isCluster(line.note) || isCluster(other.note) ? CLUSTER : APART;
  return {
    order,
    name: exerciseName(library, exercise, season.units).toLowerCase(),
    words: line.order < order ? words.first : words.second,
  };
}

const APART = {
  first: (other: string) => `then ${other}, after the rest`,
  second: (other: string) => `after each set of ${other} and its rest`,
};
const CLUSTER = {
  first: (other: string) => `with ${other} inside each set`,
  second: (other: string) => `inside each set of ${other}`,
};
