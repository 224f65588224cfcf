// Small plans for the tests of the scheduler's stages, with everything that a test doesn't speak of left at its plainest.

import type { Athlete, Competition, Kit, Plan, Slot, TrainingPlace } from '../../../src/plan/types.ts';
import type { Level } from '../../../src/library/types.ts';
import type { Span } from '../../../src/source/types.ts';
import type { Weekday } from '../../../src/util/days.ts';
import { barePlan } from '../bare-plan.ts';
import { day } from '../date.ts';

export const HERE: Span = { file: 'season.yaml', start: 0, end: 1 };

export const EVERYBODY = { kind: 'everybody' } as const;

const KIT: Kit = {
  counts: new Map(),
  boxesCm: [],
  barsGrams: [],
  smallestPlateGrams: 1250,
  dumbbellsGrams: [],
  kettlebellsGrams: [],
};

export const HALL: TrainingPlace = { id: 'hall', kit: KIT, span: HERE };

export const ALWAYS = { from: day('2000-01-01'), until: day('2100-01-01') };

export function slot(weekday: Weekday, change: Partial<Slot> = {}): Slot {
  return {
    id: `slot-${weekday}`,
    day: weekday,
    minutes: 120,
    place: HALL,
    use: 'both',
    range: ALWAYS,
    who: EVERYBODY,
    span: HERE,
    ...change,
  };
}

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

export function athlete(level: Level, contactsASession: number, change: Partial<Athlete> = {}): Athlete {
  return {
    id: 'ada',
    name: 'Ada',
    levels: [{ is: level, span: HERE }],
    levelOrigin: { kind: 'written', span: HERE },
    now: { value: { contactsASession, sessionsAWeek: 2 }, origin: { kind: 'written', span: HERE } },
    lifts: new Map(),
    cleared: new Set(),
    limits: [],
    returning: [],
    away: [],
    span: HERE,
    ...change,
  };
}

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
