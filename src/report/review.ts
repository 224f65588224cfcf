// The Monday page: first what the coach has to decide, then what went otherwise than written, then the numbers. Made from
// the season as of a day, from the seasons of the Mondays before (which say what the sheets had), and from the record.
// For coaches, not for a wall: it names reasons of health. Athletes stand in the order of the plan throughout.

import type { Build, BuildWeek, BuiltAthlete } from '../build/types.ts';
import type { Athlete, Plan } from '../plan/types.ts';
import { SOURCES } from '../library/sources.ts';
import type { TrialGroup } from '../record/trials.ts';
import { overlap } from '../plan/applies.ts';
import { DAYS_A_WEEK, startOfWeek } from '../util/days.ts';
import type { Day } from '../util/days.ts';
import { waiversOf } from './decision-words.ts';
import type { Decision } from './decision-words.ts';
import { reportJumps } from './jump-report.ts';
import type { JumpPage } from './jump-report.ts';
import { createPlaces } from './places.ts';
import { sheetsIn, weeksDone } from './review/athlete-weeks.ts';
import type { SheetsOf, WeekDone } from './review/athlete-weeks.ts';
import { bestJumpers } from './review/best-jumpers.ts';
import type { BestJumpers } from './review/best-jumpers.ts';
import { decisionsAbout, inOrderOfWeight } from './review/decisions.ts';
import { exceptionsAbout } from './review/exceptions.ts';
import { groupsOf, jumpTrends, lastGroups } from './review/jump-trends.ts';
import type { JumpTrend } from './review/jump-trends.ts';
import { newMaxima } from './review/new-maxima.ts';
import type { NewMaximum, WithMax } from './review/new-maxima.ts';
import { sessionsDone } from './review/planned-and-done.ts';
import type { SessionDone } from './review/planned-and-done.ts';
import { programmeForecasts } from './review/programme-forecast.ts';
import type { ProgrammeForecast } from './review/programme-forecast.ts';
import { weeksBehind } from './review/review-day.ts';
import type { Subject } from './review/subject.ts';
import { gathered } from './review/told-item.ts';
import type { ToldItem } from './review/told-item.ts';
import { ageOn } from '../plan/athlete-facts.ts';
import { doneBy } from '../plan/done-by.ts';
import { selectsAthlete } from './selection.ts';
import type { Selection } from './selection.ts';
import { createSheetNames } from './sheet-names.ts';

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
  readonly weeks: readonly WeekDone[];
  readonly trends: readonly JumpTrend[];
  readonly forecasts: readonly ProgrammeForecast[];
  /** Of the last day of each test: indices and power. */
  readonly figures: readonly JumpPage[];
  readonly maxima: readonly NewMaximum[];
}

export interface Review {
  readonly title: string;
  readonly mark: string;
  readonly day: Day;
  /** The week the day is in, from 1; absent behind the season. */
  readonly week?: number;
  readonly units: Plan['season']['units'];
  readonly weeks: readonly BuildWeek[];
  readonly decisions: readonly ToldItem[];
  readonly exceptions: readonly ToldItem[];
  readonly athletes: readonly AthleteReview[];
  /** Athletes with every session of the last week on record, of those who had some. */
  readonly recorded: { readonly complete: number; readonly of: number };
  readonly best?: BestJumpers;
  readonly waivers: readonly Decision[];
  /** Of the figures, in the order of their ids. */
  readonly sources: readonly { readonly id: string; readonly words: string }[];
}

/** Walks the athletes that are asked for, one by one. */
export function createReview(builds: ReviewBuilds, selection: Selection, day: Day): Review {
  const { now } = builds;
  const { plan } = now;
  const names = createSheetNames(plan);
  const groups = groupsOf(plan.record.tests);
  const last = lastGroups(groups);
  const common: Common = { builds, plan, day, groups, last, weeks: weeksBehind(now, day), names };
  const found = plan.athletes.filter((one) => selectsAthlete(selection, one)).map((one) => reviewAthlete(common, one));
  const week = now.weeks.find(({ starts }) => starts <= day && day < starts + DAYS_A_WEEK)?.week;
  const best = bestJumpers(plan, last, { day, nameOf: (athlete) => names.on(athlete, day) });
  const over = found.flatMap(({ review }) => review.weeks.at(-1) ?? []).filter(({ sessions }) => sessions.length > 0);
  return {
    title: plan.season.title,
    mark: now.mark,
    day,
    ...(week !== undefined && { week }),
    units: plan.season.units,
    weeks: common.weeks,
    decisions: inOrderOfWeight(found.flatMap(({ decisions }) => decisions)),
    exceptions: gathered(found.flatMap(({ exceptions }) => exceptions)),
    athletes: found.map(({ review }) => review),
    recorded: { complete: over.filter((one) => isComplete(one)).length, of: over.length },
    ...(best !== undefined && { best }),
    sources: sourcesOf(found.map(({ review }) => review)),
    waivers: waiversInForce(plan, day, (athlete) => names.on(athlete, day)),
  };
}

const isComplete = ({ sessions }: WeekDone): boolean => sessions.every(({ outcome }) => outcome !== 'not recorded');

interface Common {
  readonly builds: ReviewBuilds;
  readonly plan: Plan;
  readonly day: Day;
  /** Of everybody's tests, and the last one of each. */
  readonly groups: readonly TrialGroup[];
  readonly last: readonly TrialGroup[];
  readonly weeks: readonly BuildWeek[];
  readonly names: ReturnType<typeof createSheetNames>;
}

interface Reviewed {
  readonly review: AthleteReview;
  readonly decisions: readonly ToldItem[];
  readonly exceptions: readonly ToldItem[];
}

function reviewAthlete(common: Common, athlete: Athlete): Reviewed {
  const { builds, plan, day, weeks, names } = common;
  const built = builds.now.athlete(athlete);
  const sheetsOf = remembered((starts) => builds.sheetsOf(starts).athlete(athlete));
  const behind = weeksDone(built, weeks, { record: plan.record, sheetsOf });
  const mine = plan.record.tests.filter((row) => row.athlete === athlete.id);
  const maxima = newMaxima(built, mine, plan.library, { from: day, withMax: builds.withMax });
  const subject: Subject = {
    plan,
    places: createPlaces(plan.files),
    day,
    athlete,
    name: names.on(athlete, day),
    built,
    behind,
    ...recentSessions(common, athlete, behind, sheetsOf),
    ...thisWeek(common, built, sheetsOf),
  };
  const groups = common.groups.filter((group) => group.athlete === athlete.id);
  const trends = jumpTrends(groups, common.last);
  const forecasts = programmeForecasts(built, groups, plan.season.starts);
  return {
    review: {
      id: athlete.id,
      name: subject.name,
      weeks: behind,
      trends,
      forecasts,
      figures: figuresOf(athlete, day, trends),
      maxima,
    },
    decisions: decisionsAbout(subject, maxima),
    exceptions: exceptionsAbout(subject),
  };
}

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
    ...(athlete.massGrams !== undefined && { mass: athlete.massGrams / GRAMS_A_KILOGRAM }),
    ...(athlete.sex !== undefined && { sex: athlete.sex }),
  };
  return reportJumps(
    trends.map(({ group }) => group),
    facts,
  )
    .map(({ group, figures }) => ({ group, figures: figures.filter(({ basis = '' }) => FIGURES.has(basis)) }))
    .filter(({ figures }) => figures.length > 0);
}

const GRAMS_A_KILOGRAM = 1000;
/** Rows of the library: indices and peak power. */
const FIGURES: ReadonlySet<string> = new Set(['J3', 'J4', 'J5', 'J6', 'J7', 'J8', 'J9', 'J10']);

function waiversInForce(plan: Plan, day: Day, nameOf: (athlete: Athlete) => string): readonly Decision[] {
  const starts = startOfWeek(day, plan.season.weekStarts);
  const range = { from: starts, until: starts + DAYS_A_WEEK - 1 };
  return waiversOf({ ...plan, waivers: plan.waivers.filter((waiver) => overlap(waiver.range, range)) }, nameOf);
}

function sourcesOf(athletes: readonly AthleteReview[]): Review['sources'] {
  const bases = athletes.flatMap(({ figures }) =>
    figures.flatMap((page) => page.figures.flatMap(({ basis }) => basis ?? [])),
  );
  return SOURCES.filter(({ id }) => bases.includes(id)).map(({ id, fact, mark, source }) => ({
    id,
    words: `${fact} (${mark}) ${source}`,
  }));
}
