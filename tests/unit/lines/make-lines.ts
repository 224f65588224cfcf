// Seasons written out by hand for the tests of the lines: every week's phase, kind and sessions as the test says them,
// so that nothing here hangs on the stages before.

import { BUILT_IN } from '../../../src/library/index.ts';
import type { Drill, KitId, Level, Lift, PhaseId, WeekKind } from '../../../src/library/types.ts';
import type {
  Athlete,
  Avoid,
  Kit,
  Limit,
  LiftMax,
  Pin,
  PinEffect,
  Plan,
  Slot,
  TrainingPlace,
  WrittenLine,
} from '../../../src/plan/types.ts';
import { PHASES } from '../../../src/library/phases.ts';
import { ruleBook } from '../../../src/plan/rule-book.ts';
import { gateValues, standingOn } from '../../../src/schedule/lines/standing.ts';
import type { Standing } from '../../../src/schedule/lines/standing.ts';
import { chooseGroups, scheduleLines } from '../../../src/schedule/lines.ts';
import type {
  AthleteSchedule,
  ContactsWeek,
  DaysWeek,
  KindWeek,
  ScheduledSession,
  WeekCells,
} from '../../../src/schedule/types.ts';
import type { Day } from '../../../src/util/days.ts';
import { ALWAYS, bareAthlete, barePlan, bareSlot, EVERYBODY, HERE, NO_KIT } from '../bare-plan.ts';
import { day } from '../date.ts';

export { HERE, EVERYBODY, ALWAYS, NO_KIT };

/** A monday. */
export const START = day('2027-01-04');

const FULL_COUNTS: readonly [KitId, number][] = [
  ['boxes', 5],
  ['hurdles', 8],
  ['racks', 8],
  ['bars', 8],
  ['dumbbells', 20],
  ['benches', 8],
  ['mats', 10],
  ['bands', 10],
  ['pull-up-bars', 4],
  ['medicine-balls', 8],
];

export const FULL_KIT: Kit = {
  ...NO_KIT,
  counts: new Map(FULL_COUNTS),
  boxesCm: [20, 30, 40, 45, 60],
  barsGrams: [15_000, 20_000],
};

export const HALL: TrainingPlace = { id: 'hall', kit: FULL_KIT, span: HERE };
export const FIELD: TrainingPlace = { id: 'field', kit: NO_KIT, span: HERE };

export const slot = (change: Partial<Slot> = {}): Slot => bareSlot(HALL, change);

export const athlete = (level: Level, change: Partial<Athlete> = {}): Athlete =>
  bareAthlete({ levels: [{ is: level, span: HERE }], ...change });

export const bornOn = (iso: string): NonNullable<Athlete['born']> => ({ earliest: day(iso), latest: day(iso) });

export function max(lift: string, kilos: number, change: Partial<LiftMax> = {}): [string, LiftMax] {
  return [lift, { lift, grams: kilos * 1000, estimated: false, on: START - 14, span: HERE, ...change }];
}

export const JUMPING_PHASES = PHASES.filter((row) => row.directions !== undefined).map((row) => row.id);

/** Cleared for drops, with a squat that goes with it. */
export const strong = (level: Level, change: Partial<Athlete> = {}): Athlete =>
  athlete(level, {
    massGrams: 70_000,
    lifts: new Map([max('back-squat', 120)]),
    cleared: new Set(['drops', 'single-leg-high']),
    ...change,
  });

export function limit(avoid: readonly Avoid[], change: Partial<Limit> = {}): Limit {
  return { range: ALWAYS, avoid, because: 'physio', span: HERE, ...change };
}

export function pin(effects: readonly PinEffect[], change: Partial<Pin> = {}): Pin {
  return { range: ALWAYS, who: EVERYBODY, effects, because: 'the coach says so', span: HERE, ...change };
}

export function line(
  kind: 'drill' | 'lift',
  id: string,
  sets: number,
  reps: number,
  change: Partial<WrittenLine> = {},
): WrittenLine {
  return { exercise: { kind, id }, sets, reps, span: HERE, ...change };
}

export function makePlan(change: Partial<Plan> = {}): Plan {
  const places = new Map([
    ['hall', HALL],
    ['field', FIELD],
  ]);
  return barePlan({ from: START, until: START + 7 * 30 - 1 }, HERE, { places, slots: [slot()], ...change });
}

export interface SessionSpec extends Partial<Omit<ScheduledSession, 'day' | 'slot'>> {
  /** Days after the week's first. */
  readonly on?: number;
  readonly slot?: Slot;
}

export interface WeekSpec {
  readonly phase: PhaseId;
  readonly kind?: WeekKind;
  readonly step?: number;
  readonly trained?: 'none' | 'some' | 'full';
  readonly bounds?: ContactsWeek['bounds'];
  readonly sessions: readonly SessionSpec[];
}

export function makeSchedule(plan: Plan, who: Athlete, weeks: readonly WeekSpec[]): AthleteSchedule {
  return {
    grid: {
      athlete: who,
      range: { from: plan.season.starts, until: plan.season.ends },
      weeks: weeks.map((week, index) => cells(week, index)),
    },
    phases: { weeks: weeks.map(({ phase }) => ({ phase, segment: 0 })), segments: [] },
    kinds: weeks.map(({ kind, step }): KindWeek => ({ kind: kind ?? 'load', ...(step === undefined ? {} : { step }) })),
    contacts: weeks.map((week) => contactsWeek(week)),
    days: weeks.map((week, index) => daysWeek(week, START + 7 * index)),
  };
}

function cells({ sessions, trained }: WeekSpec, index: number): WeekCells {
  return {
    index,
    starts: START + 7 * index,
    cells: [],
    empty: sessions.length === 0,
    trained: trained ?? 'none',
    closedBy: [],
    otherJumps: 0,
  };
}

function contactsWeek({ sessions, bounds }: WeekSpec): ContactsWeek {
  const contacts = sessions.reduce((sum, session) => sum + (session.contacts ?? 0), 0);
  return {
    contacts,
    target: contacts,
    most: contacts,
    adaptedBefore: contacts,
    adapted: contacts,
    boundBy: 'target',
    bounds: bounds ?? [],
    possible: sessions.length,
    sessions: sessions.map((session) => session.contacts ?? 0),
    sessionCeiling: 140,
    primer: false,
    level: 'beginner',
    reasons: [],
  };
}

function daysWeek({ sessions }: WeekSpec, starts: Day): DaysWeek {
  return {
    sessions: sessions.map((spec, index): ScheduledSession => {
      const { on, slot: at, ...rest } = spec;
      return {
        day: starts + (on ?? index * 2),
        slot: at ?? slot(),
        contacts: 0,
        lifts: false,
        heavyAllowed: true,
        dropsAllowed: true,
        primer: false,
        reasons: [],
        ...rest,
      };
    }),
    liftSessionsWanted: sessions.filter((session) => session.lifts === true).length,
    reasons: [],
  };
}

/** The lines of one athlete, who is the whole plan unless it names others. */
export function makeLines(who: Athlete, weeks: readonly WeekSpec[], change: Partial<Plan> = {}) {
  const plan = makePlan({ athletes: [who], ...change });
  return scheduleLines(plan, chooseGroups(plan), makeSchedule(plan, who, weeks));
}

/** Where an athlete stands on a day, by the library's own rules. */
export function standing(who: Athlete, on: Day = START): Standing {
  const plan = makePlan();
  return standingOn(who, on, gateValues(ruleBook(plan, who), { from: on, until: on }));
}

export function getDrill(id: string): Drill {
  const drill = BUILT_IN.drills.get(id);
  if (drill === undefined) throw new Error(`no drill ${id}`);
  return drill;
}

export function getLift(id: string): Lift {
  const lift = BUILT_IN.lifts.get(id);
  if (lift === undefined) throw new Error(`no lift ${id}`);
  return lift;
}
