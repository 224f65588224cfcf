// A plan with a season and nothing in it, a slot and an athlete, for tests that make their own to build on: what they
// don't name is empty, or at its plainest.

import { BUILT_IN } from '../../src/library/index.ts';
import type { Athlete, DayRange, Kit, Plan, Slot, TrainingPlace } from '../../src/plan/types.ts';
import type { Span } from '../../src/source/types.ts';
import { day } from './date.ts';

/** Where all of it is said to be written. */
export const HERE: Span = { file: 'season.yaml', start: 0, end: 1 };

export const EVERYBODY = { kind: 'everybody' } as const;

export const ALWAYS = { from: day('2000-01-01'), until: day('2100-01-01') };

export const NO_KIT: Kit = {
  counts: new Map(),
  boxesCm: [],
  barsGrams: [],
  smallestPlateGrams: 1250,
  dumbbellsGrams: [],
  kettlebellsGrams: [],
};

/** Two hours for everybody, on Monday. */
export function bareSlot(place: TrainingPlace, change: Partial<Slot> = {}): Slot {
  return {
    id: 'monday',
    day: 0,
    minutes: 120,
    place,
    use: 'both',
    range: ALWAYS,
    who: EVERYBODY,
    span: HERE,
    ...change,
  };
}

/** A beginner used to 80 contacts twice a week. */
export function bareAthlete(change: Partial<Athlete> = {}): Athlete {
  return {
    id: 'ada',
    name: 'Ada',
    levels: [{ is: 'beginner', span: HERE }],
    levelOrigin: { kind: 'written', span: HERE },
    now: { value: { contactsASession: 80, sessionsAWeek: 2 }, origin: { kind: 'written', span: HERE } },
    lifts: new Map(),
    cleared: new Set(),
    limits: [],
    returning: [],
    away: [],
    span: HERE,
    ...change,
  };
}

/** The season's first and last day, and the place that everything written is said to stand at. */
export function barePlan({ from, until }: DayRange, span: Span, change: Partial<Plan> = {}): Plan {
  return {
    files: [],
    season: {
      title: 'Test',
      sport: 'general',
      sportOrigin: { kind: 'written', span },
      starts: from,
      ends: until,
      endsOrigin: { kind: 'written', span },
      weekStarts: 0,
      units: 'metric',
      inSeason: [],
      span,
    },
    library: BUILT_IN,
    places: new Map(),
    slots: [],
    competitions: [],
    closures: [],
    practice: [],
    tests: [],
    squads: new Map(),
    athletes: [],
    ruleChanges: [],
    pins: [],
    always: [],
    waivers: [],
    programmes: new Map(),
    uses: [],
    record: { done: [], tests: [] },
    ...change,
  };
}
