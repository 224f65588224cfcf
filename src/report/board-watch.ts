// What whoever runs a session keeps in mind: whom to watch, what to set out, what goes first when time is short, and how
// each exercise looks when it is done well and when it is time to stop. Limits are told without their reasons.

import { kitWords } from '../library/kit.ts';
import type { KitId } from '../library/types.ts';
import { limitsOn, returnStageOn } from '../plan/athlete-facts.ts';
import type { Plan, TrainingPlace } from '../plan/types.ts';
import type { Day } from '../util/days.ts';
import type { Attendance } from './attendance.ts';
import { exerciseName } from './exercise-words.ts';
import { limitWords } from './limit-words.ts';
import { heightWords } from '../util/quantities.ts';
import { addTo } from '../util/grouped.ts';

export interface Cue {
  readonly name: string;
  readonly cue: string;
  readonly stop: string;
}

/** Limits, returns, loads that are estimates, and jumps somebody meets for the first time. */
export function watchList(plan: Plan, attendances: readonly Attendance[], day: Day): readonly string[] {
  const estimates = attendances
    .filter(({ session }) => session.lines.some(({ estimated, loadGrams }) => estimated && loadGrams !== undefined))
    .map(({ name }) => name);
  return [
    ...heldBack(plan, attendances, day),
    ...(estimates.length === 0 ? [] : [`loads are estimates, try lighter first: ${estimates.join(', ')}`]),
    ...newJumps(plan, attendances),
  ];
}

/** Who is held back on a day, and how: limits without their reasons, and returns. */
export function heldBack(
  plan: Plan,
  people: readonly Pick<Attendance, 'athlete' | 'name'>[],
  day: Day,
): readonly string[] {
  const limits = people.flatMap(({ athlete, name }) =>
    limitsOn(athlete, day).map((limit) => `${name}: ${limitWords(plan, limit)}`),
  );
  const returning = people
    .filter(({ athlete }) => returnStageOn(athlete, day) !== undefined)
    .map(({ name }) => `${name}: nothing harder than what is written`);
  return [...limits, ...returning];
}

function newJumps({ library, season }: Plan, attendances: readonly Attendance[]): readonly string[] {
  const byDrill = new Map<string, string[]>();
  for (const { name, firsts } of attendances) {
    for (const exercise of firsts) {
      if (!library.drills.has(exercise)) continue;
      const names = byDrill.get(exercise) ?? [];
      byDrill.set(exercise, names);
      names.push(name);
    }
  }
  return [...byDrill].map(
    ([exercise, names]) =>
      `first time, ${exerciseName(library, exercise, season.units).toLowerCase()}: ${whoWords(names, attendances)}`,
  );
}

const whoWords = (names: readonly string[], { length }: readonly Attendance[]): string =>
  names.length === length && length > 1 ? 'everybody' : names.join(', ');

/** Kit of the session, boxes with their heights. */
export function kitToSetOut(
  { library, season }: Plan,
  attendances: readonly Attendance[],
  { kit }: TrainingPlace,
): readonly string[] {
  const needed = new Set<KitId>();
  const heights = new Set<number>();
  for (const { session } of attendances) {
    for (const { exercise, dropCm } of session.lines) {
      const drill = library.drills.get(exercise);
      for (const item of (drill ?? library.lifts.get(exercise))?.kit ?? []) needed.add(item);
      const height = dropCm ?? (drill?.kit.includes('boxes') === true ? drill.boxCm : undefined);
      if (height !== undefined) heights.add(height);
    }
  }
  const boxes = [...heights].toSorted((a, b) => a - b).map((height) => heightWords(height, season.units));
  return [...needed].map((item) => {
    const words = kitWords(item, kit.counts.get(item) ?? 1);
    return item === 'boxes' && boxes.length > 0 ? `${words} ${boxes.join(', ')}` : words;
  });
}

/** Names of exercises, the first to leave out first: by how early those who have it would let it go. */
export function shortOnTime(attendances: readonly Attendance[]): readonly string[] {
  const ranks = new Map<string, number[]>();
  for (const { session, lines } of attendances) {
    session.shortOnTime.forEach((order, rank) => {
      const at = session.lines.findIndex((line) => line.order === order);
      const name = lines[at]?.name;
      if (name !== undefined) addTo(ranks, name, rank);
    });
  }
  const mean = (values: readonly number[]): number => values.reduce((sum, one) => sum + one, 0) / values.length;
  return [...ranks].toSorted(([, a], [, b]) => mean(a) - mean(b) || b.length - a.length).map(([name]) => name);
}

/** The jumps of a session, each once, in the order they come. */
export function cuesOf({ library }: Plan, attendances: readonly Attendance[]): readonly Cue[] {
  const cues = new Map<string, Cue>();
  for (const { session, lines } of attendances) {
    session.lines.forEach(({ exercise }, index) => {
      const drill = library.drills.get(exercise);
      const name = lines[index]?.name;
      if (drill !== undefined && name !== undefined && !cues.has(name)) {
        cues.set(name, { name, cue: drill.cue, stop: drill.stop });
      }
    });
  }
  return [...cues.values()];
}
