// Stages 1 to 5 of one athlete: all but the lines. Squads are full of athletes of whom these stages know the same, so a
// season worked out once is given to all of them. Called by build-athlete.ts.

import type { Reason } from '../build/types.ts';
import { problem } from '../diagnostics/problem.ts';
import type { Diagnostic, Staged } from '../diagnostics/types.ts';
import { SEASON_SHAPE } from '../library/phases.ts';
import { RULES } from '../library/rules.ts';
import { ageOn } from '../plan/athlete-facts.ts';
import { itemsOf } from '../plan/items-of.ts';
import type { AthleteItems } from '../plan/items-of.ts';
import { ruleBook } from '../plan/rule-book.ts';
import type { RuleBook } from '../plan/rule-book.ts';
import type { Athlete, Plan } from '../plan/types.ts';
import { isoDate } from '../util/days.ts';
import type { Day } from '../util/days.ts';
import { planContacts } from './contacts.ts';
import type { Past } from './contacts/past.ts';
import { scheduleDays } from './days.ts';
import type { Published } from './days.ts';
import { layGrid } from './grid.ts';
import { planPhases } from './phases.ts';
import { overdueWeeks, painfulWeeks, recordedWeeks, withTimeOff } from './recorded-weeks.ts';
import type { AthleteGrid, AthletePhases, AthleteSchedule, ContactsWeek, KindWeek } from './types.ts';
import { chooseWeekKinds } from './week-kinds.ts';
import { weekReasons } from './week-reasons.ts';

/** Where the season stands when it is planned. */
export interface Standing {
  /** The days that sheets already out give the sessions. */
  readonly published: Published | undefined;
  /** Weeks wholly before this day are what the record says. */
  readonly asOf: Day | undefined;
}

export interface FirstStages {
  readonly schedule: AthleteSchedule;
  /** So many weeks, the first ones, are over. */
  readonly over: number;
  /** Of each week: why it has its phase and its kind. */
  readonly weekReasons: readonly (readonly Reason[])[];
  readonly diagnostics: readonly Diagnostic[];
}

/** Makes the first five stages of each athlete in turn. */
export function firstStages(plan: Plan, { published, asOf }: Standing): (athlete: Athlete) => FirstStages {
  const shared = new Map<AthleteItems, Map<string, FirstStages>>();
  const alone = published !== undefined || asOf !== undefined || plan.record.done.length > 0;
  return (athlete) => {
    if (alone || !isLikeOthers(athlete)) return runStages(plan, { published, asOf }, athlete);
    const items = itemsOf(plan, athlete);
    const alike = shared.get(items) ?? new Map<string, FirstStages>();
    shared.set(items, alike);
    const key = keyOf(plan, athlete);
    const known = alike.get(key);
    if (known !== undefined) return withAthlete(known, athlete);
    const made = runStages(plan, { published, asOf }, athlete);
    // What is found names the athlete, so that only a season without findings is anybody's.
    if (made.diagnostics.length === 0) alike.set(key, made);
    return made;
  };
}

/** Nothing of the athlete's own but level, volume and age: no limit, no absence, no return. */
function isLikeOthers(athlete: Athlete): boolean {
  return athlete.limits.length === 0 && athlete.away.length === 0 && athlete.returning.length === 0;
}

/** All that these stages ask of such an athlete besides the items of the plan. */
function keyOf(plan: Plan, athlete: Athlete): string {
  const levels = athlete.levels.map(({ is, from }) => [is, from]);
  return JSON.stringify([levels, athlete.now.value, athlete.goal?.value, bornForRules(plan, athlete)]);
}

/** The birth counts only where a rule may ask for the age: under the highest age in the library, or any a plan sets. */
function bornForRules(plan: Plan, athlete: Athlete): Day | undefined {
  const age = ageOn(athlete, plan.season.starts);
  const grown = age !== undefined && age > OLDEST_IN_RULES && itemsOf(plan, athlete).ruleChanges.length === 0;
  return grown ? undefined : athlete.born?.latest;
}

const OLDEST_IN_RULES = RULES.flatMap((rule) => rule.parameters)
  .filter((parameter) => parameter.unit === 'years')
  .reduce<number>((oldest, parameter) => Math.max(oldest, parameter.value ?? 0), SEASON_SHAPE.foundationUnderAge);

function withAthlete(first: FirstStages, athlete: Athlete): FirstStages {
  const { schedule } = first;
  return { ...first, schedule: { ...schedule, grid: { ...schedule.grid, athlete } } };
}

function runStages(plan: Plan, { published, asOf }: Standing, athlete: Athlete): FirstStages {
  const book = ruleBook(plan, athlete);
  const calendar = layGrid(plan, athlete, book);
  // A week lost to illness doesn't lead to other phases: the path to the peak stays, and the volume is what follows.
  const phases = planPhases(plan, calendar);
  const recorded = recordedWeeks(plan, calendar, asOf);
  const past = {
    recorded,
    painful: painfulWeeks(plan, calendar, book),
    overdue: overdueWeeks(recorded, calendar, phases),
  };
  const { grid, kinds, contacts } = planVolume(plan, book, calendar, phases, past);
  const before = { grid, phases, kinds: kinds.value, contacts: contacts.value };
  const days = scheduleDays(plan, before, published);
  return {
    schedule: { ...before, days: days.value },
    over: recorded.length,
    weekReasons: weekReasons(plan, before),
    diagnostics: [
      ...notRecorded(athlete, past.overdue, grid.weeks[recorded.length]?.starts),
      ...kinds.diagnostics,
      ...contacts.diagnostics,
      ...days.diagnostics,
    ],
  };
}

interface Volume {
  readonly grid: AthleteGrid;
  readonly kinds: Staged<readonly KindWeek[]>;
  readonly contacts: Staged<readonly ContactsWeek[]>;
}

/** Kinds and contacts; again where weeks that are over turn out to have had no jumps, as those are time away. */
function planVolume(plan: Plan, book: RuleBook, grid: AthleteGrid, phases: AthletePhases, past: Past): Volume {
  const kinds = chooseWeekKinds(plan, book, grid, phases);
  const contacts = planContacts(plan, book, grid, phases, kinds.value, past);
  const emptier = withTimeOff(grid, past.recorded, contacts.value);
  return emptier === undefined ? { grid, kinds, contacts } : planVolume(plan, book, emptier, phases, past);
}

/** Asks for the record of weeks that nobody has written down. */
function notRecorded(athlete: Athlete, overdue: readonly Day[], week: Day | undefined): readonly Diagnostic[] {
  if (overdue.length === 0) return [];
  const params = { athlete: athlete.name, weeks: overdue.map(isoDate) };
  return [problem('schedule/record-missing', { params, span: athlete.span, athlete: athlete.id, week })];
}
