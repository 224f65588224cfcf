// The six stages one behind the other for one athlete, laid together as the weeks of a build. Called by compile.ts for
// each athlete in turn, so that a squad of any size is compiled in the memory of one.

import type { BuiltAthlete, BuiltDay, BuiltSession, BuiltWeek } from '../build/types.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import type { Athlete, Plan } from '../plan/types.ts';
import type { Day } from '../util/days.ts';
import { keyOfDraft, keyOfSeason } from './alike.ts';
import type { FirstStages } from './first-stages.ts';
import { boundedMemory } from './lines/bounded-cache.ts';
import type { BoundedMemory } from './lines/bounded-cache.ts';
import { scheduleLines } from './lines.ts';
import type { Groups } from './lines.ts';
import { reloadSeason } from './reload-season.ts';
import type { WeekLoads } from './reload-season.ts';
import type { AthleteSchedule, DayCell } from './types.ts';

/** What a plan's athletes are built from. */
export interface ScheduleContext {
  readonly plan: Plan;
  /** The families each squad does side by side. */
  readonly groups: Groups;
  /** The stages before the lines. */
  readonly firstStages: (athlete: Athlete, unwritten?: ReadonlySet<Day>) => FirstStages;
}

/**
 * One athlete's season, not yet audited: `blocked` and the findings are the scheduler's own. `unwritten` are the first days
 * of weeks written by hand that an audit of the same season has barred.
 */
export function buildAthlete(
  { plan, groups, firstStages }: ScheduleContext,
  athlete: Athlete,
  unwritten?: ReadonlySet<Day>,
): BuiltAthlete {
  const first = firstStages(athlete, unwritten);
  const { weeks, days, diagnostics } = seasonOf(plan, groups, first);
  return { athlete, weeks, days, diagnostics, blocked: NOTHING, freed: NOTHING };
}

const NOTHING: ReadonlySet<never> = new Set();

type Season = Pick<BuiltAthlete, 'weeks' | 'days' | 'diagnostics'>;

/** A season with what of it hangs on maxima. */
interface DraftedSeason {
  readonly season: Season;
  readonly loads: readonly WeekLoads[];
}

/** Seasons of athletes who are alike, and of those who are but for the numbers of their maxima. */
interface KnownSeasons {
  readonly alike: BoundedMemory<Season>;
  readonly drafted: BoundedMemory<DraftedSeason>;
}

/** As many as some squads have at a time: all of a big plan would fill the memory. */
const SEASONS_KEPT = 64;

const seasons = new WeakMap<Groups, KnownSeasons>();

/** Kept as long as the workshop that they come from. */
function seasonsOf(groups: Groups): KnownSeasons {
  const known = seasons.get(groups) ?? { alike: boundedMemory(SEASONS_KEPT), drafted: boundedMemory(SEASONS_KEPT) };
  seasons.set(groups, known);
  return known;
}

/** Found, or made. What is found in a season names the athlete, so that only a season without findings is anybody's. */
function seasonOf(plan: Plan, groups: Groups, first: FirstStages): Season {
  const { alike, drafted } = seasonsOf(groups);
  const key = keyOfSeason(plan, groups, first.schedule);
  const found = alike.find(key);
  if (found !== undefined) return found;
  const draftKey = keyOfDraft(plan, groups, first.schedule);
  const reloaded = reload(drafted.find(draftKey), first.schedule.grid.athlete);
  if (reloaded !== undefined) return alike.keep(key, reloaded);
  const made = buildSeason(plan, groups, first);
  if (made.season.diagnostics.length > 0) return made.season;
  // Of weeks that are over there are no sessions, and so not all loads to step up from.
  if (first.over === 0) drafted.keep(draftKey, made);
  return alike.keep(key, made.season);
}

/** The season by an athlete's own maxima. */
function reload(draft: DraftedSeason | undefined, athlete: Athlete): Season | undefined {
  const weeks = draft === undefined ? undefined : reloadSeason(draft.season.weeks, draft.loads, athlete);
  return draft === undefined || weeks === undefined ? undefined : { ...draft.season, weeks };
}

function buildSeason(plan: Plan, groups: Groups, first: FirstStages): DraftedSeason {
  const lines = scheduleLines(plan, groups, first.schedule);
  const season = {
    weeks: layTogether(first, lines.value),
    days: first.schedule.grid.weeks.flatMap((week) => week.cells.flatMap((cell) => builtDay(cell) ?? [])),
    diagnostics: [...first.onRecord, ...ahead(first, [...first.diagnostics, ...lines.diagnostics])],
  };
  return { season, loads: lines.loads };
}

/** Of what was planned for weeks that are over nothing is said any more. */
function ahead({ schedule, over }: FirstStages, found: readonly Diagnostic[]): readonly Diagnostic[] {
  if (over === 0) return found;
  const from = schedule.grid.weeks[over]?.starts ?? Infinity;
  return found.filter(({ week = Infinity }) => week >= from);
}

function layTogether(
  { schedule, weekReasons, over }: FirstStages,
  sessions: readonly (readonly BuiltSession[])[],
): readonly BuiltWeek[] {
  const weeks: BuiltWeek[] = [];
  let block = 0;
  let weekOfBlock = 0;
  for (const week of schedule.grid.weeks) {
    const phase = schedule.phases.weeks[week.index]?.phase ?? 'closed';
    const changes = weeks.at(-1)?.phase !== phase;
    block += changes ? 1 : 0;
    weekOfBlock = changes ? 1 : weekOfBlock + 1;
    const reasons = weekReasons[week.index] ?? [];
    weeks.push(
      builtWeek(
        schedule,
        week.index,
        { phase, block, weekOfBlock, reasons },
        week.index < over ? undefined : (sessions[week.index] ?? []),
      ),
    );
  }
  return weeks;
}

function builtWeek(
  schedule: AthleteSchedule,
  index: number,
  standing: Pick<BuiltWeek, 'phase' | 'block' | 'weekOfBlock' | 'reasons'>,
  sessions: readonly BuiltSession[] | undefined,
): BuiltWeek {
  const week = schedule.grid.weeks[index];
  const kind = schedule.kinds[index];
  const contacts = schedule.contacts[index];
  const days = schedule.days[index];
  if (week === undefined || kind === undefined || contacts === undefined || days === undefined) {
    throw new Error(`a stage left out week ${index + 1}`);
  }
  return {
    week: index + 1,
    starts: week.starts,
    ...standing,
    kind: kind.kind,
    contacts: contacts.contacts,
    target: contacts.target,
    mostContacts: contacts.most,
    adaptedBefore: contacts.adaptedBefore,
    adapted: contacts.adapted,
    ...(contacts.unwritten === true && { unwritten: true }),
    ...(contacts.underWay !== undefined && { underWay: contacts.underWay }),
    otherJumps: week.otherJumps,
    boundBy: contacts.boundBy,
    bounds: contacts.bounds,
    possible: contacts.possible,
    liftSessionsWanted: days.liftSessionsWanted,
    reasons: [...standing.reasons, ...contacts.reasons, ...days.reasons],
    // What was written for a week that is over is not what was done, and of what was done there are only the contacts.
    sessions: sessions ?? [],
    done: sessions === undefined,
  };
}

function builtDay(cell: DayCell): BuiltDay | undefined {
  const { practiceJumps, matchJumps, testContacts, plannedJumps, competition, test } = cell;
  const isFree = practiceJumps + matchJumps + testContacts + (plannedJumps ?? 0) === 0;
  if (isFree && competition === undefined && test === undefined) return undefined;
  return {
    day: cell.day,
    practiceJumps,
    matchJumps,
    testContacts,
    ...(plannedJumps === undefined ? {} : { plannedJumps }),
    ...(competition === undefined ? {} : { competition }),
    ...(test === undefined ? {} : { test }),
  };
}
