// Stage 6: the lines of every session. Groups first, so that everybody in a session does the same families; then each
// athlete's own rungs, sets and kilos, week by week. Contacts of the lines make those of the session exactly. Called by
// build-athlete.ts, the groups by compile.ts once for a plan.

import type { Diagnostic, Staged } from '../diagnostics/types.ts';
import type { BuiltSession } from '../build/types.ts';
import { overlap } from '../plan/applies.ts';
import { directionsOf } from '../plan/sport-of.ts';
import { ruleBook } from '../plan/rule-book.ts';
import type { RuleBook } from '../plan/rule-book.ts';
import type { Athlete, Plan } from '../plan/types.ts';
import { getPhase, SEASON_SHAPE } from '../library/phases.ts';
import type { DirectionShares, PhaseId, PhaseRow } from '../library/types.ts';
import { DAYS_A_WEEK, weekdayOf } from '../util/days.ts';
import type { Day } from '../util/days.ts';
import { weekStart } from './grid.ts';
import type { Aim } from './lines/allot-target.ts';
import { linePins } from './lines/day-pins.ts';
import { knownDrills } from './lines/known-drills.ts';
import { lineRules } from './lines/line-rules.ts';
import type { LineRules } from './lines/line-rules.ts';
import { loadHistory } from './lines/load-history.ts';
import { plannedSession, writtenSession } from './lines/session.ts';
import type { MadeSession, Written } from './lines/session.ts';
import { standings } from './lines/standing.ts';
import { EMPTY_TALLY } from './lines/tally.ts';
import type { Trainee, TrainingWeek } from './lines/trainee.ts';
import { openWorkshop } from './lines/workshop.ts';
import type { Groups } from './lines/workshop.ts';
import type { WeekLoads } from './reload-season.ts';
import type { AthleteSchedule, KindWeek } from './types.ts';
import { daysWritten } from './contacts/week-programme.ts';
import { PERCENT } from '../util/units.ts';
import { itemsOf } from '../plan/items-of.ts';

export type { Groups } from './lines/workshop.ts';

/** The families that squads do side by side, worked out as sessions ask for them, and what all athletes share. */
export function chooseGroups(plan: Plan): Groups {
  return openWorkshop(plan);
}

export interface SeasonLines extends Staged<readonly (readonly BuiltSession[])[]> {
  /** What of each week hangs on maxima. */
  readonly loads: readonly WeekLoads[];
}

/** The sessions of each week, in order, with their lines. A session's contacts are the sum of its lines'. */
export function scheduleLines(plan: Plan, groups: Groups, schedule: AthleteSchedule): SeasonLines {
  const reports = new Map<string, Report>();
  const trainee = traineeOf(plan, groups, schedule, reports);
  const rulesFor = ruleLookup(trainee);
  const course: Course = { block: 0, loading: false, loadingWeek: 0, jumpWeeks: 0 };
  const value: (readonly BuiltSession[])[] = [];
  const loads: WeekLoads[] = [];
  for (const { index, starts } of schedule.grid.weeks) {
    const week = trainingWeek(trainee, schedule, index, starts, rulesFor(starts), course);
    const made = week === undefined ? [] : weekSessions(trainee, week);
    value.push(made.map(({ built }) => built));
    const { block, loading } = course;
    loads.push({ block, loading, sessions: made.map((one) => one.loads) });
  }
  return { value, loads, diagnostics: [...reports.values()].map(({ make, days }) => make(days)) };
}

/** What is told once, and the days on which it holds. */
interface Report {
  readonly make: (days: readonly Day[]) => Diagnostic;
  readonly days: Day[];
}

function traineeOf(plan: Plan, groups: Groups, schedule: AthleteSchedule, reports: Map<string, Report>): Trainee {
  const { athlete } = schedule.grid;
  const book = ruleBook(plan, athlete);
  const { always, uses } = itemsOf(plan, athlete);
  return {
    plan,
    groups,
    athlete,
    book,
    pins: linePins(plan, athlete),
    always,
    uses,
    returns: returnsOf(schedule, book),
    known: knownDrills(groups.numberOf),
    history: loadHistory(),
    people: groups.choice.people(athlete.squad),
    directions: directionsOf(plan, athlete),
    standingOn: standings(athlete, schedule.grid.range),
    report: (key, make, day) => {
      const report = reports.get(key) ?? { make, days: [] };
      reports.set(key, report);
      if (day !== undefined) report.days.push(day);
    },
  };
}

/** First days after absences so long that a maximum counts for less. */
function returnsOf(schedule: AthleteSchedule, book: RuleBook): readonly Day[] {
  const returns: Day[] = [];
  let away = 0;
  for (const { index, starts, trained } of schedule.grid.weeks) {
    if (schedule.kinds[index]?.kind === 'empty' && trained === 'none') {
      away += 1;
      continue;
    }
    if (away > 0) {
      const range = { from: starts, until: starts };
      if (away >= (book.value('test-stale', 'away', range) ?? Number.POSITIVE_INFINITY)) returns.push(starts);
    }
    away = 0;
  }
  return returns;
}

/** Rules by week; looked up once for each run of weeks in which the same changes of the plan are in force. */
function ruleLookup({ plan, athlete, book, groups }: Trainee): (starts: Day) => LineRules {
  const changes = itemsOf(plan, athlete).ruleChanges;
  const known = new Map<string, LineRules>();
  return (starts) => {
    const range = { from: starts, until: starts + DAYS_A_WEEK - 1 };
    const key = changes.map((change) => (overlap(change.range, range) ? 'x' : '-')).join('');
    if (!key.includes('x')) return groups.usualRules(() => lineRules(book, range));
    const rules = known.get(key) ?? lineRules(book, range);
    known.set(key, rules);
    return rules;
  };
}

/** How far the season has come, counted on as its weeks begin. */
interface Course {
  block: number;
  phase?: PhaseId;
  /** The running week's loads are what the next one steps up from. */
  loading: boolean;
  loadingWeek: number;
  jumpWeeks: number;
}

/** The week as the sessions need it; undefined where it has none. Counts the course on in either case. */
function trainingWeek(
  trainee: Trainee,
  schedule: AthleteSchedule,
  index: number,
  starts: Day,
  rules: LineRules,
  course: Course,
): TrainingWeek | undefined {
  const { phase, kind, contacts, days } = weekOf(schedule, index);
  beginWeek(trainee, course, phase, kind);
  if (days.sessions.length === 0) return undefined;
  const row = getPhase(phase);
  const novice = isNovice(trainee.athlete) && course.jumpWeeks < rules.noviceWeeks;
  if (days.sessions.some((session) => session.contacts > 0)) course.jumpWeeks += 1;
  // What is cut of a week under way leaves the sheets of its days so far as they were.
  const aim = aimOf(trainee.directions, row, rules, contacts.underWay?.planned ?? contacts.contacts);
  const loadingWeek = Math.max(1, course.loadingWeek);
  return { index, starts, phase, row, kind, contacts, days, rules, aim, loadingWeek, novice };
}

/** What the stages before say of a week. */
function weekOf(schedule: AthleteSchedule, index: number): Pick<TrainingWeek, 'phase' | 'kind' | 'contacts' | 'days'> {
  const phase = schedule.phases.weeks[index]?.phase ?? 'closed';
  const kind = schedule.kinds[index];
  const contacts = schedule.contacts[index];
  const days = schedule.days[index];
  if (kind === undefined || contacts === undefined || days === undefined) {
    throw new Error(`a stage left out week ${index + 1}`);
  }
  return { phase, kind, contacts, days };
}

/** Counts the course on to a week, with or without sessions. */
function beginWeek({ history, known }: Trainee, course: Course, phase: PhaseId, { kind }: KindWeek): void {
  if (phase !== course.phase) {
    course.block += 1;
    course.phase = phase;
    course.loadingWeek = 0;
  }
  if (LOADING.has(kind)) course.loadingWeek += 1;
  course.loading = kind === 'load';
  history.startWeek(course.block, course.loading);
  known.startWeek();
}

/** Somebody of whose jumping nothing is written, or a beginner whose sessions have been small. */
function isNovice({ now, levels }: Athlete): boolean {
  const { contactsASession, sessionsAWeek } = now.value;
  if (now.origin.kind !== 'written' || contactsASession === 0 || sessionsAWeek === 0) return true;
  return levels[0]?.is === 'beginner' && contactsASession < SEASON_SHAPE.foundationUnderContacts;
}

/** Kinds of week that move a block's loads on; the others repeat the week before. */
const LOADING: ReadonlySet<string> = new Set(['load', 'hold']);

const NO_SHARES = { vertical: PERCENT, horizontal: 0, lateral: 0 };

function aimOf(ofSport: DirectionShares | undefined, row: PhaseRow, rules: LineRules, contacts: number): Aim {
  const directions = ofSport ?? row.directions ?? NO_SHARES;
  const from = Math.max(row.fastShare?.from ?? 0, rules.fastLeast ?? 0);
  const to = Math.min(row.fastShare?.to ?? PERCENT, rules.fastMost ?? PERCENT);
  const fast = { from: Math.min(from, to), to };
  const key = `${directions.vertical}/${directions.horizontal}/${directions.lateral}/${fast.from}-${fast.to}/${rules.directionPoints}/${contacts}`;
  return { key, directions, fast, points: rules.directionPoints, contacts };
}

function weekSessions(trainee: Trainee, week: TrainingWeek): readonly MadeSession[] {
  const { sessions } = week.days;
  const liftSessions = sessions.filter((session) => session.lifts).length;
  const all: MadeSession[] = [];
  let tally = EMPTY_TALLY;
  let liftIndex = 0;
  let writtenDay: Day | undefined;
  for (const session of sessions) {
    const place = { session, liftIndex, liftSessions };
    const written = session.day === writtenDay ? undefined : findWritten(trainee, session.day);
    const made =
      written === undefined
        ? plannedSession(trainee, week, place, tally)
        : writtenSession(trainee, week, place, written, tally);
    if (written !== undefined) writtenDay = session.day;
    if (session.lifts) liftIndex += 1;
    tally = made.tally;
    all.push(made);
  }
  return all;
}

/** What a programme writes for a day; of several programmes the first in the plan is the one followed. */
function findWritten({ plan, uses }: Trainee, day: Day): Written | undefined {
  for (const use of uses) {
    const days = daysWritten(plan, use, weekStart(plan, day));
    if (days === undefined) continue;
    const written = days.find((one) => one.day === weekdayOf(day));
    return written === undefined ? undefined : { use, day: written };
  }
  return undefined;
}
