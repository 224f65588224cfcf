// What the minutes of a session are made of: warm-up, work, rest, waiting at shared kit, set-up. Read by the stage that
// writes the lines. All of it is common practice (C) unless a line says otherwise; rests stand with drills and lifts.

import type { Cycle, KitId } from './types.ts';

export const MINUTES = {
  /** Before the first set of a session that only lifts; one with jumps takes the longer warm-up of the volume table. */
  liftWarmUp: 8,
  /** Of lighter sets before the first main lift. */
  lighterSetsMinutes: 3,
  /** Kit fetched and put out, in seconds a line: jumps, a lift with a bar, any other lift. */
  setUpSeconds: { jumps: 45, bar: 60, other: 30 },
  /** From one athlete to the next at a shared station, in seconds: jumps, lifts. */
  changeoverSeconds: { jumps: 8, lifts: 25 },
  /** Pace of contacts by cycle, in seconds; without a counter-movement each rep is set up anew. */
  contactSeconds: { fast: 1, slow: 3, none: 3 } satisfies Record<Cycle, number>,
  /** From one drop to the next, in seconds (S4: 5 to 10 s, from memory). */
  dropSeconds: 8,
  /** The way up and the breath between reps of a lift, in seconds; the way down is the lift's own. */
  liftUpSeconds: 2,
  /** Athletes who share the floor at one time, at most: a bigger squad trains in turns. */
  mostOnTheFloor: 24,
  /** Sets of a main lift that are left when all else has gone. */
  leastMainSets: 2,
} as const;

/** Kit that athletes queue for, and how many pieces make one station. */
export const STATION_PIECES: ReadonlyMap<KitId, number> = new Map<KitId, number>([
  ['racks', 1],
  ['trap-bars', 1],
  ['pull-up-bars', 1],
  ['cables', 1],
  ['leg-machines', 1],
  ['benches', 1],
  ['sled', 1],
  ['boxes', 1],
  ['hurdles', 4],
]);
