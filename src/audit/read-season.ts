// Takes one athlete's compiled season apart for the rules. Called by audit.ts, once for each athlete.

import type { Athlete, Competition, Plan } from '../plan/types.ts';
import type { BuiltAthlete, BuiltDay, BuiltWeek } from '../build/types.ts';
import type { Day } from '../util/days.ts';
import { ageOn, levelOn } from '../plan/athlete-facts.ts';
import { itemsOf } from '../plan/items-of.ts';
import { getPhase } from '../library/phases.ts';
import { getRule } from '../library/rules.ts';
import { adaptedWeeks } from './adapted-volume.ts';
import { planIndex } from './plan-index.ts';
import { readParameters } from './parameters.ts';
import type { Parameters } from './parameters.ts';
import type { DayReading, SeasonReading, WeekReading } from './season-reading.ts';
import { readSession } from './session-reading.ts';
import type { SessionReading } from './session-reading.ts';
import { contactsUnderWay } from './under-way.ts';
import { runsAway } from './time-away.ts';
import { mixOf } from './week-mix.ts';
import { DAYS_A_WEEK } from '../util/days.ts';
import { groupsByKey } from '../util/grouped.ts';

/**
 * Takes a built athlete apart. Weeks must follow one another without gaps, as a build's do. Nobody gets used to the weeks
 * in `unwritten`.
 */
export function readSeason(plan: Plan, built: BuiltAthlete, unwritten: ReadonlySet<BuiltWeek>): SeasonReading {
  const { athlete } = built;
  const parameters = readParameters(plan, athlete);
  const { competitions, slots, pins, waivers: written } = itemsOf(plan, athlete);
  const weeks = readWeeks(plan, built, parameters);
  const sessions = weeks.flatMap((week) => week.sessions);
  const days = readDays(built, competitions, sessions);
  const first = built.weeks[0]?.starts ?? 0;
  const byDay: (DayReading | undefined)[] = [];
  for (const day of days) byDay[day.day - first] = day;
  const waivers = written.filter((one) => getRule(one.rule).waivable);
  const runs = runsAway(plan, athlete, slots, weeks);
  return {
    plan,
    index: planIndex(plan),
    built,
    athlete,
    weeks,
    sessions,
    jumpSessions: sessions.filter((session) => session.jumps),
    days,
    competitions,
    slots,
    pins,
    waivers,
    adapted: adaptedWeeks({ plan, athlete, weeks, runs, competitions, waivers, parameters, unwritten }),
    runsAway: runs,
    dayAt: (day) => byDay[day - first],
    weekOf: (session) => getWeek(weeks, session.week),
    age: readAge(athlete, built.weeks),
    ...parameters,
  };
}

function getWeek(weeks: readonly WeekReading[], index: number): WeekReading {
  const week = weeks[index];
  if (week === undefined) throw new Error(`no week ${index} in the build`);
  return week;
}

function readWeeks(plan: Plan, built: BuiltAthlete, parameters: Parameters): readonly WeekReading[] {
  const heavy = parameters.parameter('lift-spacing', 'heavy');
  const otherJumps = sumsByWeek(built, jumpsOf);
  const plannedJumps = sumsByWeek(built, (day) => day.plannedJumps ?? jumpsOf(day));
  return built.weeks.map((week, index) => {
    const range = { from: week.starts, until: week.starts + DAYS_A_WEEK - 1 };
    const sessions = week.sessions.map((session) =>
      readSession(plan.library, built.athlete, session, index, heavy({ range })),
    );
    const jumpSessions = sessions.filter((session) => session.jumps);
    const planned = Math.max(week.contacts, sumOfContacts(sessions));
    const contacts = week.underWay === undefined ? planned : contactsUnderWay(plan, built.athlete, week, planned);
    return {
      index,
      built: week,
      range,
      phase: getPhase(week.phase),
      sessions,
      jumpSessions,
      contacts,
      ordinary: contacts - sumOfContacts(sessions.filter((session) => session.primer)),
      mix: mixOf(jumpSessions, week.underWay?.planned),
      otherJumps: otherJumps[index] ?? 0,
      usualOtherJumps: Math.min(otherJumps[index] ?? 0, plannedJumps[index] ?? 0),
      level: levelOn(built.athlete, jumpSessions[0]?.day ?? week.starts),
      firstDayLevel: levelOn(built.athlete, week.starts),
    };
  });
}

function sumOfContacts(sessions: readonly SessionReading[]): number {
  let sum = 0;
  for (const session of sessions) sum += session.contacts;
  return sum;
}

function sumsByWeek(built: BuiltAthlete, of: (day: BuiltDay) => number): readonly number[] {
  const first = built.weeks[0]?.starts ?? 0;
  const sums: number[] = built.weeks.map(() => 0);
  for (const day of built.days) {
    const index = Math.floor((day.day - first) / DAYS_A_WEEK);
    const before = sums[index];
    if (before !== undefined) sums[index] = before + of(day);
  }
  return sums;
}

function jumpsOf(day: BuiltDay): number {
  return day.practiceJumps + day.matchJumps + day.testContacts;
}

function readDays(
  built: BuiltAthlete,
  competitions: readonly Competition[],
  sessions: readonly SessionReading[],
): readonly DayReading[] {
  const matches = new Map<Day, Competition>();
  for (const match of competitions) {
    for (let day = match.range.from; day <= match.range.until; day += 1) if (!matches.has(day)) matches.set(day, match);
  }
  const others = new Map<Day, BuiltDay>(built.days.map((day) => [day.day, day]));
  const held = groupsByKey(sessions, ({ day }) => day);
  const days = new Set<Day>([...others.keys(), ...matches.keys(), ...held.keys()]);
  return [...days]
    .sort((a, b) => a - b)
    .map((day) => readDay(day, others.get(day), matches.get(day), held.get(day) ?? NO_SESSIONS));
}

const NO_SESSIONS: readonly SessionReading[] = [];

function readDay(
  day: Day,
  other: BuiltDay | undefined,
  match: Competition | undefined,
  sessions: readonly SessionReading[],
): DayReading {
  return {
    day,
    practiceJumps: other?.practiceJumps ?? 0,
    matchJumps: other?.matchJumps ?? 0,
    testContacts: other?.testContacts ?? 0,
    sessions,
    ...(match !== undefined && { match }),
    ...(other?.test !== undefined && { test: other.test }),
  };
}

/** Birthdays are rare: one look at each end of the season is mostly enough. */
function readAge(athlete: Athlete, weeks: readonly BuiltWeek[]): (day: Day) => number | undefined {
  const first = weeks[0];
  const last = weeks.at(-1);
  if (athlete.born === undefined || first === undefined || last === undefined) return () => undefined;
  const end = last.starts + DAYS_A_WEEK - 1;
  const age = ageOn(athlete, first.starts);
  if (age === ageOn(athlete, end)) return () => age;
  return (day) => ageOn(athlete, day);
}
