// Stages 1 to 5 of one athlete: all but the lines. Squads are full of athletes of whom these stages know the same, so a
// season worked out once is given to all of them. Called by build-athlete.ts.

import type { Reason } from '../build/types.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import { SEASON_SHAPE } from '../library/phases.ts';
import { RULES } from '../library/rules.ts';
import { ageOn, ageThrough } from '../plan/athlete-facts.ts';
import { itemsOf } from '../plan/items-of.ts';
import { knownOn } from '../plan/known-on.ts';
import type { AthleteItems } from '../plan/items-of.ts';
import { usualJumps } from '../plan/sport-of.ts';
import type { Athlete, Plan } from '../plan/types.ts';
import type { Day } from '../util/days.ts';
import { dayConflict } from './conflicts/day-conflict.ts';
import { factWords } from './conflicts/facts.ts';
import type { Season } from './conflicts/facts.ts';
import { planContacts } from './contacts.ts';
import { scheduleDays } from './days.ts';
import type { Published } from './days.ts';
import type { ExplainDays } from './days/day-problems.ts';
import { weekStart } from './grid.ts';
import { findingsOnRecord } from './record-findings.ts';
import { holdWhatIsLeft, isReplanned, runningWeek } from './running-week.ts';
import { NONE_UNWRITTEN, seasonTerms } from './season-terms.ts';
import type { AthleteSchedule } from './types.ts';
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
  /** What is said of the record: of weeks that are over as well. */
  readonly onRecord: readonly Diagnostic[];
}

/** Makes the first five stages of each athlete in turn. */
export function firstStages(
  plan: Plan,
  { published, asOf }: Standing,
): (athlete: Athlete, unwritten?: ReadonlySet<Day>) => FirstStages {
  const shared = new Map<AthleteItems, Map<string, FirstStages>>();
  const before = asBefore(plan, published);
  const alone = published !== undefined || asOf !== undefined || plan.record.done.length > 0;
  return (athlete, unwritten = NONE_UNWRITTEN) => {
    if (alone || unwritten.size > 0 || !isLikeOthers(athlete))
      return runStages(plan, { published, asOf }, athlete, unwritten, before);
    const items = itemsOf(plan, athlete);
    const alike = shared.get(items) ?? new Map<string, FirstStages>();
    shared.set(items, alike);
    const key = keyOf(plan, athlete);
    const known = alike.get(key);
    if (known !== undefined) return withAthlete(known, athlete);
    const made = runStages(plan, { published, asOf }, athlete, unwritten, before);
    // What is found names the athlete, so that only a season without findings is anybody's.
    if (made.diagnostics.length + made.onRecord.length === 0) alike.set(key, made);
    return made;
  };
}

/** Nothing of the athlete's own but level, volume, age and sport: no limit, no absence, no return. */
function isLikeOthers(athlete: Athlete): boolean {
  return athlete.limits.length === 0 && athlete.away.length === 0 && athlete.returning.length === 0;
}

/** All that these stages ask of such an athlete besides the items of the plan. */
function keyOf(plan: Plan, athlete: Athlete): string {
  const levels = athlete.levels.map(({ is, from }) => [is, from]);
  return JSON.stringify([
    levels,
    athlete.now.value,
    athlete.goal?.value,
    ageForRules(plan, athlete),
    usualJumps(plan, athlete),
  ]);
}

/** The age counts only where a rule may ask for it: under the highest age in the library, or any a plan sets. */
function ageForRules(plan: Plan, athlete: Athlete): string | undefined {
  const { starts, ends } = plan.season;
  const age = ageOn(athlete, starts);
  const grown = age !== undefined && age > OLDEST_IN_RULES && itemsOf(plan, athlete).ruleChanges.length === 0;
  return grown ? undefined : ageThrough(athlete, { from: weekStart(plan, starts), until: ends });
}

const OLDEST_IN_RULES = RULES.flatMap((rule) => rule.parameters)
  .filter((parameter) => parameter.unit === 'years')
  .reduce<number>((oldest, parameter) => Math.max(oldest, parameter.value ?? 0), SEASON_SHAPE.foundationUnderAge);

function withAthlete(first: FirstStages, athlete: Athlete): FirstStages {
  const { schedule, over, weekReasons, diagnostics, onRecord } = first;
  const { grid, phases, kinds, contacts, days } = schedule;
  const theirs = { athlete, range: grid.range, weeks: grid.weeks };
  return { schedule: { grid: theirs, phases, kinds, contacts, days }, over, weekReasons, diagnostics, onRecord };
}

/** These stages as they were on an earlier day. */
type StagesOn = (day: Day) => ReturnType<typeof firstStages>;

/** What was known then is sorted out once for all athletes. */
function asBefore(plan: Plan, published: Published | undefined): StagesOn {
  const known = new Map<Day, ReturnType<typeof firstStages>>();
  return (day) => {
    const stages = known.get(day) ?? firstStages(knownOn(plan, day), { published, asOf: day });
    known.set(day, stages);
    return stages;
  };
}

function runStages(
  plan: Plan,
  { published, asOf }: Standing,
  athlete: Athlete,
  unwritten: ReadonlySet<Day>,
  stagesOn: StagesOn,
): FirstStages {
  const season = seasonTerms(plan, athlete, asOf, unwritten);
  const { calendar, grid, phases, kinds, past } = season;
  const contacts = planContacts(plan, season, asOf);
  const before = { grid, phases, kinds: kinds.value, contacts: contacts.value };
  const days = scheduleDays(plan, before, published, explainDays({ plan, athlete, asOf, unwritten }));
  const running = runningWeek(grid.weeks, asOf);
  const sheets =
    running !== undefined && isReplanned(season, running)
      ? stagesOn(running.starts)(athlete, unwritten).schedule
      : undefined;
  const held = holdWhatIsLeft(plan, season, asOf, { contacts: contacts.value, days: days.value, sheets });
  return {
    schedule: { ...before, contacts: held.contacts, days: held.days },
    over: past.recorded.length,
    weekReasons: weekReasons(plan, { ...before, grid: calendar }),
    diagnostics: [...kinds.diagnostics, ...contacts.diagnostics, ...days.diagnostics],
    onRecord: [...findingsOnRecord(athlete, season, contacts.value), ...held.diagnostics],
  };
}

/** What stands against a pinned day, with what each line is to it. */
function explainDays(season: Season): ExplainDays {
  return (pin, day) => {
    const { facts, eachIsEnough, instead, waivers } = dayConflict(season, pin, day);
    const against = facts.map(({ kind, span }) => ({
      span,
      message: span === pin.span ? 'another day of the same pin stands against it' : factWords({ kind }),
    }));
    return { against, each: eachIsEnough, instead, waivers };
  };
}
