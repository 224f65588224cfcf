// The six stages one behind the other for one athlete, laid together as the weeks of a build. Called by compile.ts for
// each athlete in turn, so that a squad of any size is compiled in the memory of one.

import type { BuiltAthlete, BuiltDay, BuiltSession, BuiltWeek } from '../build/types.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import type { Athlete, Plan } from '../plan/types.ts';
import type { Day } from '../util/days.ts';
import { keyOfSeason } from './alike.ts';
import type { FirstStages } from './first-stages.ts';
import { boundedMemory } from './lines/bounded-cache.ts';
import type { BoundedMemory } from './lines/bounded-cache.ts';
import { scheduleLines } from './lines.ts';
import type { Groups } from './lines.ts';
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
  const known = seasonsOf(groups);
  const key = keyOfSeason(plan, groups, first.schedule);
  const found = known.find(key);
  const season = found ?? buildSeason(plan, groups, first);
  // What is found names the athlete, so that only a season without findings is anybody's.
  if (found === undefined && season.diagnostics.length === 0) known.keep(key, season);
  return { athlete, ...season, blocked: NOTHING, freed: NOTHING };
}

const NOTHING: ReadonlySet<never> = new Set();

type Season = Pick<BuiltAthlete, 'weeks' | 'days' | 'diagnostics'>;

/** As many as some squads have at a time: all of a big plan would fill the memory. */
const SEASONS_KEPT = 256;

const seasons = new WeakMap<Groups, BoundedMemory<Season>>();

/** Seasons of athletes who are alike, kept as long as the workshop that they come from. */
function seasonsOf(groups: Groups): BoundedMemory<Season> {
  const known = seasons.get(groups) ?? boundedMemory<Season>(SEASONS_KEPT);
  seasons.set(groups, known);
  return known;
}

function buildSeason(plan: Plan, groups: Groups, first: FirstStages): Season {
  const lines = scheduleLines(plan, groups, first.schedule);
  return {
    weeks: layTogether(first, lines.value),
    days: first.schedule.grid.weeks.flatMap((week) => week.cells.flatMap((cell) => builtDay(cell) ?? [])),
    diagnostics: ahead(first, [...first.diagnostics, ...lines.diagnostics]),
  };
}

/** Of weeks that are over nothing is said any more. */
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
  const { practiceJumps, matchJumps, testContacts, competition, test } = cell;
  if (practiceJumps === 0 && competition === undefined && test === undefined) return undefined;
  return {
    day: cell.day,
    practiceJumps,
    matchJumps,
    testContacts,
    ...(competition === undefined ? {} : { competition }),
    ...(test === undefined ? {} : { test }),
  };
}
