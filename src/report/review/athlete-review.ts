// One athlete's part of the Monday page: the weeks behind, the tests, and what is to be decided and told about them.
// Called by ../review.ts, one athlete after the other.

import type { Build, BuildWeek, BuiltAthlete } from '../../build/types.ts';
import { ageOn, returnStageOn } from '../../plan/athlete-facts.ts';
import { doneBy } from '../../plan/done-by.ts';
import type { Athlete, Plan } from '../../plan/types.ts';
import type { TrialGroup } from '../../record/trials.ts';
import { DAYS_A_WEEK, startOfWeek } from '../../util/days.ts';
import type { Day } from '../../util/days.ts';
import type { NameOf } from '../decision-words.ts';
import type { GroupMarks } from '../group-marks.ts';
import { reportJumps } from '../jump-report.ts';
import type { JumpPage } from '../jump-report.ts';
import type { Places } from '../places.ts';
import { sheetsIn, weeksDone } from './athlete-weeks.ts';
import type { SheetsOf, WeekDone } from './athlete-weeks.ts';
import { decisionsAbout } from './decisions.ts';
import type { ToldDecision } from './decisions/decision.ts';
import { exceptionsAbout } from './exceptions.ts';
import { jumpTrends } from './jump-trends.ts';
import type { JumpTrend } from './jump-trends.ts';
import { newMaxima } from './new-maxima.ts';
import type { NewMaximum, WithMax } from './new-maxima.ts';
import { sessionsDone } from './planned-and-done.ts';
import type { SessionDone } from './planned-and-done.ts';
import { programmeForecasts } from './programme-forecast.ts';
import type { ProgrammeForecast } from './programme-forecast.ts';
import type { Subject } from './subject.ts';
import type { ToldItem } from './told-item.ts';
import { weekAhead } from './week-ahead.ts';
import { GRAMS_A_KILO } from '../../util/units.ts';

export interface ReviewBuilds {
  /** As of the day of the review. */
  readonly now: Build;
  /** As of the first day of a week. */
  readonly sheetsOf: (starts: Day) => Pick<Build, 'athlete'>;
  readonly withMax: WithMax;
}

export interface AthleteReview {
  readonly id: string;
  readonly name: string;
  /** The group, or without one the squad. */
  readonly group?: string;
  readonly weeks: readonly WeekDone[];
  readonly trends: readonly JumpTrend[];
  readonly forecasts: readonly ProgrammeForecast[];
  /** Of the last day of each test: indices and power. */
  readonly figures: readonly JumpPage[];
  readonly maxima: readonly NewMaximum[];
}

/** What is the same for everybody. */
export interface Common {
  readonly builds: ReviewBuilds;
  readonly plan: Plan;
  readonly places: Places;
  readonly day: Day;
  /** Of everybody's tests, and the last one of each. */
  readonly groups: readonly TrialGroup[];
  readonly last: readonly TrialGroup[];
  readonly weeks: readonly BuildWeek[];
  readonly nameOf: NameOf;
  readonly marks: GroupMarks;
}

export interface Reviewed {
  readonly review: AthleteReview;
  readonly decisions: readonly ToldDecision[];
  readonly exceptions: readonly ToldItem[];
  readonly ahead: readonly ToldItem[];
}

/**
 * One athlete's part of the page. The season is compiled as of the review, and once more for each week looked back on
 * and each new maximum.
 */
export function reviewAthlete(common: Common, athlete: Athlete): Reviewed {
  const { builds, plan, places, day, weeks, nameOf, marks } = common;
  const built = builds.now.athlete(athlete);
  const sheetsOf = remembered((starts) => builds.sheetsOf(starts).athlete(athlete));
  const behind = weeksDone(built, weeks, { record: plan.record, sheetsOf });
  const mine = plan.record.tests.filter((row) => row.athlete === athlete.id);
  const maxima = newMaxima(built, mine, plan.library, { from: day, withMax: builds.withMax });
  const subject: Subject = {
    plan,
    places,
    day,
    athlete,
    name: nameOf(athlete),
    built,
    behind,
    ...recentSessions(common, athlete, behind, sheetsOf),
    ...thisWeek(common, built, sheetsOf),
  };
  const groups = common.groups.filter((group) => group.athlete === athlete.id);
  const trends = jumpTrends(groups, common.last);
  const group = marks.of(athlete)?.name;
  const decisions = decisionsAbout(subject, maxima);
  const forecasts = isHeldBack(subject, decisions) ? [] : programmeForecasts(built, groups, plan.season.starts);
  return {
    review: {
      id: athlete.id,
      name: subject.name,
      ...(group !== undefined && { group }),
      weeks: behind,
      trends,
      forecasts,
      figures: figuresOf(athlete, day, trends),
      maxima,
    },
    decisions,
    exceptions: exceptionsAbout(subject),
    ahead: weekAhead(subject),
  };
}

/** Jumps stopped by pain, or a return that isn't through: nobody speaks of gains then. */
const isHeldBack = ({ athlete, day }: Subject, decisions: readonly ToldDecision[]): boolean =>
  returnStageOn(athlete, day) !== undefined || decisions.some(({ kind }) => kind === 'pain stop');

/** Asked for a week again, the same is given. */
function remembered(sheetsOf: SheetsOf): SheetsOf {
  const known = new Map<Day, BuiltAthlete>();
  return (starts) => {
    const found = known.get(starts) ?? sheetsOf(starts);
    known.set(starts, found);
    return found;
  };
}

/** Sessions of the last week that is over and of the days since. */
function recentSessions(
  { plan, day }: Common,
  athlete: Athlete,
  behind: readonly WeekDone[],
  sheetsOf: SheetsOf,
): { readonly recent: readonly SessionDone[]; readonly since: Day } {
  const monday = startOfWeek(day, plan.season.weekStarts);
  const last = behind.at(-1);
  const since = last?.starts ?? monday;
  if (day === monday || day > plan.season.ends) return { recent: last?.sessions ?? [], since };
  const rows = doneBy(plan.record, athlete.id).filter(
    (row) => row.kind === 'session' && row.day >= monday && row.day < day,
  );
  const sheets = sheetsIn(sheetsOf(monday), monday, day);
  return { recent: [...(last?.sessions ?? []), ...sessionsDone(sheets, rows)], since };
}

/** The week the day is in, and what last week's sheets had for it. */
function thisWeek({ day, weeks }: Common, built: BuiltAthlete, sheetsOf: SheetsOf): Pick<Subject, 'week' | 'expected'> {
  const week = built.weeks.find(({ starts }) => starts <= day && day < starts + DAYS_A_WEEK);
  const last = weeks.at(-1);
  if (week === undefined) return {};
  if (last === undefined) return { week };
  const expected = sheetsOf(last.starts).weeks.find((one) => one.week === week.week)?.contacts;
  return { week, ...(expected !== undefined && { expected }) };
}

/** Indices and power alone: heights and their change are in the trends. */
function figuresOf(athlete: Athlete, day: Day, trends: readonly JumpTrend[]): readonly JumpPage[] {
  const age = ageOn(athlete, day);
  const facts = {
    ...(age !== undefined && { age }),
    ...(athlete.massGrams !== undefined && { mass: athlete.massGrams / GRAMS_A_KILO }),
    ...(athlete.sex !== undefined && { sex: athlete.sex }),
  };
  return reportJumps(
    trends.map(({ group }) => group),
    facts,
  )
    .map(({ group, figures }) => ({ group, figures: figures.filter(({ basis = '' }) => FIGURES.has(basis)) }))
    .filter(({ figures }) => figures.length > 0);
}

/** Rows of the library: indices and peak power. */
const FIGURES: ReadonlySet<string> = new Set(['J3', 'J4', 'J5', 'J6', 'J7', 'J8', 'J9', 'J10']);
