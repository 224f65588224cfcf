// Small plans for the tests of the scheduler's stages, with everything that a test doesn't speak of left at its plainest.

import type { Athlete, Competition, Plan, Slot, TrainingPlace } from '../../../src/plan/types.ts';
import type { Level } from '../../../src/library/types.ts';
import type { Weekday } from '../../../src/util/days.ts';
import { ALWAYS, bareAthlete, barePlan, bareSlot, EVERYBODY, HERE, NO_KIT } from '../bare-plan.ts';
import { day } from '../date.ts';

export { HERE, EVERYBODY, ALWAYS };

export const HALL: TrainingPlace = { id: 'hall', kit: NO_KIT, span: HERE };

export const slot = (weekday: Weekday, change: Partial<Slot> = {}): Slot =>
  bareSlot(HALL, { id: `slot-${weekday}`, day: weekday, ...change });

export function peak(date: string, change: Partial<Competition> = {}): Competition {
  return {
    name: `Peak of ${date}`,
    range: { from: day(date), until: day(date) },
    prepare: 'peak',
    jumps: 0,
    who: EVERYBODY,
    span: HERE,
    ...change,
  };
}

export const athlete = (level: Level, contactsASession: number, change: Partial<Athlete> = {}): Athlete =>
  bareAthlete({
    levels: [{ is: level, span: HERE }],
    now: { value: { contactsASession, sessionsAWeek: 2 }, origin: { kind: 'written', span: HERE } },
    ...change,
  });

export interface Season {
  readonly starts: string;
  readonly ends: string;
}

/** A season with slots on Tuesday, Thursday and Saturday. */
export function plan(season: Season, change: Partial<Plan> = {}): Plan {
  return barePlan({ from: day(season.starts), until: day(season.ends) }, HERE, {
    places: new Map([['hall', HALL]]),
    slots: [slot(1), slot(3), slot(5)],
    ...change,
  });
}
