// Small compiled seasons for the tests of the audit, put together by hand: weeks of sessions of lines, with everything
// that a test doesn't speak of left at its plainest. Nothing here is worked out by the scheduler.

import type { Athlete, Competition, Kit, Plan, Slot, TestDay, TrainingPlace, Waiver } from '../../../src/plan/types.ts';
import type {
  BuildWeek,
  BuiltAthlete,
  BuiltDay,
  BuiltLine,
  BuiltSession,
  BuiltWeek,
} from '../../../src/build/types.ts';
import { BUILT_IN } from '../../../src/library/index.ts';
import { contactsOfSets } from '../../../src/library/drill-facts.ts';
import type { RuleId } from '../../../src/library/rules.ts';
import { liftContacts } from '../../../src/plan/line-contacts.ts';
import type { Span } from '../../../src/source/types.ts';
import type { Day, Weekday } from '../../../src/util/days.ts';
import { ALWAYS, bareAthlete, barePlan, bareSlot, EVERYBODY, HERE, NO_KIT } from '../bare-plan.ts';
import { day as dayOf } from '../date.ts';
import { NOTHING_SAID } from '../empty-line.ts';

/** A place in the plan that tests can tell from others. */
export function place(start: number): Span {
  return { file: 'season.yaml', start, end: start + 1 };
}

export { ALWAYS, dayOf, EVERYBODY };

export const ATHLETE_PLACE = place(1);
export const WRITTEN = { kind: 'written', span: HERE } as const;

/** A Monday. */
export const START = dayOf('2027-01-04');

/** A day of a week from 1; monday is 0. */
export function day(week: number, weekday: Weekday): Day {
  return START + (week - 1) * 7 + weekday;
}

export const KIT: Kit = {
  ...NO_KIT,
  counts: new Map([
    ['racks', 4],
    ['bars', 4],
    ['boxes', 3],
    ['hurdles', 8],
    ['trap-bars', 1],
    ['dumbbells', 12],
    ['balance-pads', 4],
    ['pull-up-bars', 2],
    ['benches', 2],
  ]),
  boxesCm: [20, 30, 40, 45, 50, 60],
  barsGrams: [15_000, 20_000],
};

export const HALL: TrainingPlace = { id: 'hall', kit: KIT, span: place(2) };

export const slot = (weekday: Weekday, change: Partial<Slot> = {}): Slot =>
  bareSlot(HALL, { id: `slot-${weekday}`, day: weekday, span: place(3), ...change });

export function competition(
  from: Day,
  prepare: Competition['prepare'],
  change: Partial<Competition> = {},
): Competition {
  const range = { from, until: from };
  return { name: 'Cup', range, prepare, jumps: 0, who: EVERYBODY, span: place(4), ...change };
}

/** The contacts of one line are counted from its sets and reps, unless a test says otherwise. */
export function drill(exercise: string, sets: number, reps: number, change: Partial<BuiltLine> = {}): BuiltLine {
  const row = BUILT_IN.drills.get(exercise);
  if (row === undefined) throw new Error(`no drill ${exercise}`);
  return {
    ...line(exercise, sets, reps),
    kind: 'drill',
    part: 'jumps',
    contacts: contactsOfSets(row, sets, reps),
    restSeconds: row.restSeconds,
    family: row.family,
    ...change,
  };
}

export function lift(exercise: string, sets: number, reps: number, change: Partial<BuiltLine> = {}): BuiltLine {
  const row = BUILT_IN.lifts.get(exercise);
  if (row === undefined) throw new Error(`no lift ${exercise}`);
  const contacts = liftContacts(row, sets, reps);
  return { ...line(exercise, sets, reps), kind: 'lift', part: 'lifts', contacts, restSeconds: 180, ...change };
}

function line(exercise: string, sets: number, reps: number) {
  return {
    ...NOTHING_SAID,
    order: 1,
    exercise,
    sets,
    reps,
    own: false,
    estimated: false,
    origin: { kind: 'derived', rule: 'test' },
    reasons: [],
  } as const;
}

export interface SessionSpec extends Partial<Omit<BuiltSession, 'day' | 'lines'>> {
  readonly on: Weekday;
  readonly lines?: readonly BuiltLine[];
}

/** A session of so many contacts in small jumps, which no rule on drills minds. */
export function jumps(on: Weekday, contacts: number, change: Partial<SessionSpec> = {}): SessionSpec {
  const lines = contacts === 0 ? [] : [drill('small-jump', 1, contacts)];
  return { on, lines, ...change };
}

/** A session of one heavy set of squats. */
export function heavy(on: Weekday, change: Partial<SessionSpec> = {}): SessionSpec {
  return { on, lines: [lift('back-squat', 1, 2, { percent: 85 })], ...change };
}

export interface WeekSpec extends Partial<Omit<BuiltWeek, 'week' | 'starts' | 'sessions'>> {
  readonly sessions?: readonly SessionSpec[];
}

/** A loading week with its contacts in one session. */
export function loading(contacts: number, change: Partial<WeekSpec> = {}): WeekSpec {
  return { sessions: [jumps(1, contacts)], ...change };
}

export interface SeasonSpec {
  readonly weeks: readonly WeekSpec[];
  readonly athlete?: Partial<Athlete>;
  /** Contacts a session and sessions a week before the season; 100 in 2 unless said. */
  readonly now?: readonly [contactsASession: number, sessionsAWeek: number];
  readonly plan?: Partial<Plan>;
  readonly days?: readonly (Partial<BuiltDay> & { readonly day: Day })[];
}

export interface MadeBuild {
  readonly plan: Plan;
  readonly built: BuiltAthlete;
  readonly weeks: readonly BuildWeek[];
}

export function makeBuild(spec: SeasonSpec): MadeBuild {
  const athlete = makeAthlete(spec);
  const plan = makePlan(spec, athlete);
  const weeks = spec.weeks.map((week, index) => makeWeek(week, index));
  const built: BuiltAthlete = {
    athlete,
    weeks,
    days: (spec.days ?? []).map((one) => ({ practiceJumps: 0, matchJumps: 0, testContacts: 0, ...one })),
    freed: new Set(),
    blocked: new Set(),
    diagnostics: [],
  };
  return { plan, built, weeks: weeks.map(({ week, starts }) => ({ week, starts })) };
}

export const makeAthlete = ({ athlete = {}, now = [100, 2] }: Pick<SeasonSpec, 'athlete' | 'now'>): Athlete =>
  bareAthlete({
    levels: [{ is: 'intermediate', span: HERE }],
    now: { value: { contactsASession: now[0], sessionsAWeek: now[1] }, origin: WRITTEN },
    span: ATHLETE_PLACE,
    ...athlete,
  });

function makePlan({ weeks, plan = {} }: SeasonSpec, athlete: Athlete): Plan {
  return barePlan({ from: START, until: day(weeks.length, 6) }, HERE, {
    places: new Map([['hall', HALL]]),
    slots: [slot(1), slot(3), slot(5)],
    athletes: [athlete],
    ...plan,
  });
}

function makeWeek({ sessions = [], ...change }: WeekSpec, index: number): BuiltWeek {
  const made = sessions.map((session) => makeSession(session, index));
  const contacts = made.reduce((sum, session) => sum + session.contacts, 0);
  return {
    week: index + 1,
    starts: day(index + 1, 0),
    phase: 'strength',
    kind: 'load',
    block: 1,
    weekOfBlock: index + 1,
    contacts,
    target: contacts,
    mostContacts: contacts,
    adaptedBefore: 0,
    adapted: 0,
    otherJumps: 0,
    boundBy: 'target',
    bounds: [],
    possible: 2,
    liftSessionsWanted: 1,
    reasons: [],
    done: false,
    sessions: made,
    ...change,
  };
}

function makeSession({ on, lines = [], ...change }: SessionSpec, index: number): BuiltSession {
  const numbered = lines.map((one, at) => ({ ...one, order: at + 1 }));
  const contacts = numbered.reduce((sum, one) => sum + one.contacts, 0);
  return {
    day: day(index + 1, on),
    slot: slot(on),
    kind: 'load',
    contacts,
    jumps: contacts > 0,
    lifts: numbered.some((one) => one.part === 'lifts'),
    heavy: false,
    minutes: 60,
    shortOnTime: [],
    leftOut: [],
    reasons: [],
    ...change,
    lines: numbered,
  };
}

/** A waiver for the weeks from one to another, both from 1. */
export function waiver(rule: RuleId, from: number, until = from): Waiver {
  const range = { from: day(from, 0), until: day(until, 6) };
  return { rule, range, who: EVERYBODY, because: 'test', span: place(5) };
}

export function testOn(on: Day, what: readonly string[]): TestDay {
  return { day: on, what, contacts: 0, who: EVERYBODY, span: place(6) };
}

/** A rule's parameters changed for the whole season. */
export function changed(rule: RuleId, parameters: Readonly<Record<string, number>>): Pick<Plan, 'ruleChanges'> {
  const change = { rule, parameters: new Map(Object.entries(parameters)), range: ALWAYS, who: EVERYBODY };
  return { ruleChanges: [{ ...change, because: 'test', span: place(7) }] };
}

export function squatMax(grams: number, change: Partial<{ on: Day; lift: string }> = {}): Pick<Athlete, 'lifts'> {
  const id = change.lift ?? 'back-squat';
  return { lifts: new Map([[id, { lift: id, grams, estimated: false, span: place(8), ...change }]]) };
}

/** Born on a day so many whole years before the season. */
export function aged(years: number): Pick<Athlete, 'born'> {
  const born = dayOf(`${2027 - years}-01-02`);
  return { born: { earliest: born, latest: born } };
}
