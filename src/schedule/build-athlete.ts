// The six stages one behind the other for one athlete, laid together as the weeks of a build. Called by compile.ts for
// each athlete in turn, so that a squad of any size is compiled in the memory of one.

import type { BuiltAthlete, BuiltDay, BuiltSession, BuiltWeek } from '../build/types.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import { ruleBook } from '../plan/rule-book.ts';
import type { Athlete, Plan } from '../plan/types.ts';
import { planContacts } from './contacts.ts';
import { scheduleDays } from './days.ts';
import type { Published } from './days.ts';
import { layGrid } from './grid.ts';
import { scheduleLines } from './lines.ts';
import type { Groups } from './lines.ts';
import { planPhases } from './phases.ts';
import type { AthleteSchedule, DayCell } from './types.ts';
import { chooseWeekKinds } from './week-kinds.ts';

/** What is compiled besides the plan itself. */
export interface ScheduleContext {
  readonly plan: Plan;
  /** The families each squad does side by side. */
  readonly groups: Groups;
  /** The days that sheets already out give the sessions. */
  readonly published?: Published;
}

/** One athlete's season, not yet audited: `blocked` and the findings are the scheduler's own. */
export function buildAthlete(context: ScheduleContext, athlete: Athlete): BuiltAthlete {
  const { plan, groups, published } = context;
  const book = ruleBook(plan, athlete);
  const grid = layGrid(plan, athlete, book);
  const phases = planPhases(plan, grid);
  const kinds = chooseWeekKinds(plan, book, grid, phases);
  const contacts = planContacts(plan, book, grid, phases, kinds.value);
  const before = { grid, phases, kinds: kinds.value, contacts: contacts.value };
  const days = scheduleDays(plan, before, published);
  const schedule = { ...before, days: days.value };
  const lines = scheduleLines(plan, groups, schedule);
  return {
    athlete,
    weeks: layTogether(schedule, lines.value),
    days: grid.weeks.flatMap((week) => week.cells.flatMap((cell) => builtDay(cell) ?? [])),
    blocked: new Set(),
    freed: new Set(),
    diagnostics: [kinds, contacts, days, lines].flatMap((stage): readonly Diagnostic[] => stage.diagnostics),
  };
}

function layTogether(schedule: AthleteSchedule, sessions: readonly (readonly BuiltSession[])[]): readonly BuiltWeek[] {
  const weeks: BuiltWeek[] = [];
  let block = 0;
  let weekOfBlock = 0;
  for (const week of schedule.grid.weeks) {
    const phase = schedule.phases.weeks[week.index]?.phase ?? 'closed';
    const changes = weeks.at(-1)?.phase !== phase;
    block += changes ? 1 : 0;
    weekOfBlock = changes ? 1 : weekOfBlock + 1;
    weeks.push(builtWeek(schedule, week.index, { phase, block, weekOfBlock }, sessions[week.index] ?? []));
  }
  return weeks;
}

function builtWeek(
  schedule: AthleteSchedule,
  index: number,
  standing: Pick<BuiltWeek, 'phase' | 'block' | 'weekOfBlock'>,
  sessions: readonly BuiltSession[],
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
    otherJumps: week.otherJumps,
    boundBy: contacts.boundBy,
    bounds: contacts.bounds,
    possible: contacts.possible,
    liftSessionsWanted: days.liftSessionsWanted,
    reasons: [...contacts.reasons, ...days.reasons],
    sessions,
    done: false,
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
