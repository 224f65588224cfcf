// Builds written by hand, for the tests of reports and renderers: one athlete, a few weeks, sessions with the lines a test
// asks for. Everything a test doesn't speak of is at its plainest.

import type { Build, BuiltAthlete, BuiltLine, BuiltSession, BuiltWeek } from '../../../src/build/types.ts';
import { BUILT_IN } from '../../../src/library/index.ts';
import type { Plan } from '../../../src/plan/types.ts';
import { sourceFile } from '../../../src/source/source-file.ts';
import { day } from '../date.ts';
import { athlete, HERE, plan, slot } from '../schedule/make-plan.ts';
import { NOTHING_SAID } from '../empty-line.ts';

export const STARTS = day('2027-01-04');

export function madePlan(change: Partial<Plan> = {}): Plan {
  return {
    ...plan({ starts: '2027-01-04', ends: '2027-01-31' }),
    files: [sourceFile('season.yaml', 'footfall: 1\nseason: {}\n')],
    library: BUILT_IN,
    ...change,
  };
}

export function line(exercise: string, change: Partial<BuiltLine> = {}): BuiltLine {
  const isDrill = BUILT_IN.drills.has(exercise);
  return {
    ...NOTHING_SAID,
    order: 1,
    part: isDrill ? 'jumps' : 'lifts',
    exercise,
    kind: isDrill ? 'drill' : 'lift',
    sets: 3,
    reps: 5,
    contacts: isDrill ? 15 : 0,
    restSeconds: 90,
    own: false,
    estimated: false,
    origin: { kind: 'derived', rule: 'target' },
    reasons: [],
    ...change,
  };
}

/** Lines are numbered in their order; contacts, jumps and lifts follow from them. */
export function session(date: string, lines: readonly BuiltLine[], change: Partial<BuiltSession> = {}): BuiltSession {
  const contacts = lines.reduce((sum, one) => sum + one.contacts, 0);
  return {
    day: day(date),
    slot: slot(1, { at: 18 * 60, minutes: 75 }),
    kind: 'load',
    contacts,
    jumps: contacts > 0,
    lifts: lines.some((one) => one.kind === 'lift'),
    heavy: false,
    minutes: 60,
    lines: lines.map((one, index) => ({ ...one, order: index + 1 })),
    shortOnTime: [],
    leftOut: [],
    reasons: [],
    ...change,
  };
}

/** The week of that number, with the contacts of its sessions. */
export function week(number: number, sessions: readonly BuiltSession[], change: Partial<BuiltWeek> = {}): BuiltWeek {
  const contacts = sessions.reduce((sum, one) => sum + one.contacts, 0);
  return {
    week: number,
    starts: STARTS + 7 * (number - 1),
    phase: 'strength',
    kind: 'load',
    block: 1,
    weekOfBlock: number,
    contacts,
    target: contacts,
    mostContacts: contacts + 20,
    adaptedBefore: 100,
    adapted: 110,
    otherJumps: 60,
    boundBy: 'target',
    bounds: [{ by: 'weekly-rise', most: contacts }],
    possible: 2,
    liftSessionsWanted: 2,
    reasons: [],
    sessions,
    done: false,
    ...change,
  };
}

export function builtAthlete(weeks: readonly BuiltWeek[], change: Partial<BuiltAthlete> = {}): BuiltAthlete {
  return {
    athlete: athlete('intermediate', 50),
    weeks,
    days: [],
    blocked: new Set(),
    freed: new Set(),
    diagnostics: [],
    ...change,
  };
}

export function madeBuild(athletes: readonly BuiltAthlete[], planned: Plan = madePlan()): Build {
  return {
    plan: { ...planned, athletes: athletes.map((one) => one.athlete) },
    mark: 'abc1234',
    weeks: [1, 2, 3, 4].map((number) => ({ week: number, starts: STARTS + 7 * (number - 1) })),
    athletes,
    athlete: ({ id }) => {
      const found = athletes.find((one) => one.athlete.id === id);
      if (found === undefined) throw new Error(`${id} was not made`);
      return found;
    },
  };
}

export { athlete, day, HERE };
