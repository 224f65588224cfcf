// The table `season`: one row per athlete over the weeks that are asked for. Sums are those of the table `weeks`.

import type { BuiltWeek } from '../build/types.ts';
import type { PhaseId } from '../library/types.ts';
import { appliesTo, overlap } from '../plan/applies.ts';
import type { Athlete, Competition, Plan } from '../plan/types.ts';
import { levelOn } from '../plan/athlete-facts.ts';
import { isoDate } from '../util/days.ts';
import type { AthleteTable } from './athlete-table.ts';
import { selectedWeeks } from './selection.ts';
import { columns } from './table.ts';
import { jumpSessions } from './weeks-table.ts';

export const seasonTable: AthleteTable = {
  name: 'season',
  columns: [
    ...columns('text', 'athlete', 'squad'),
    ...columns('word', 'level'),
    ...columns('integer', 'weeks', 'sessions', 'contacts', 'peak_session'),
    ...columns('date', 'first_major'),
    ...columns('word', 'phases'),
    ...columns('integer', 'warnings', 'waivers'),
  ],
  *rowsOf(built, { plan, selection }) {
    const { athlete } = built;
    const weeks = selectedWeeks(selection, built);
    const major = firstMajor(plan, athlete);
    yield [
      athlete.id,
      athlete.squad,
      levelOn(athlete, plan.season.starts),
      weeks.length,
      sum(weeks, ({ sessions }) => jumpSessions(sessions)),
      sum(weeks, ({ contacts }) => contacts),
      peakSession(weeks),
      major === undefined ? undefined : isoDate(major.range.from),
      phaseRuns(weeks)
        .map(({ phase, weeks: length }) => `${phase} ${length}`)
        .join('; '),
      built.diagnostics.filter(({ severity }) => severity === 'warning').length,
      waiversOf(plan, athlete),
    ];
  },
};

/** The first competition the athlete is to peak for. */
export function firstMajor(plan: Plan, athlete: Athlete): Competition | undefined {
  return plan.competitions.find(({ prepare, who }) => prepare === 'peak' && appliesTo(who, athlete));
}

function waiversOf({ waivers, season }: Plan, athlete: Athlete): number {
  const range = { from: season.starts, until: season.ends };
  return waivers.filter((waiver) => appliesTo(waiver.who, athlete) && overlap(waiver.range, range)).length;
}

function peakSession(weeks: readonly BuiltWeek[]): number {
  let most = 0;
  for (const { sessions } of weeks) for (const { contacts } of sessions) most = Math.max(most, contacts);
  return most;
}

export interface PhaseRun {
  readonly phase: PhaseId;
  /** Number of the first week, from 1. */
  readonly from: number;
  readonly weeks: number;
}

/** The phases in their order, each with how many weeks in a row it lasts. */
export function phaseRuns(weeks: readonly Pick<BuiltWeek, 'phase' | 'week'>[]): readonly PhaseRun[] {
  const runs: PhaseRun[] = [];
  for (const { phase, week } of weeks) {
    const last = runs.at(-1);
    if (last !== undefined && last.phase === phase) runs[runs.length - 1] = { ...last, weeks: last.weeks + 1 };
    else runs.push({ phase, from: week, weeks: 1 });
  }
  return runs;
}

function sum<T>(items: readonly T[], of: (item: T) => number): number {
  return items.reduce((total, item) => total + of(item), 0);
}
