// The table `season`: one row per athlete over the weeks that are asked for. Sums are those of the table `weeks`.

import type { BuiltAthlete, BuiltWeek } from '../build/types.ts';
import type { PhaseId } from '../library/types.ts';
import { appliesTo, overlap } from '../plan/applies.ts';
import type { Athlete, Competition, Plan } from '../plan/types.ts';
import { levelOn } from '../plan/athlete-facts.ts';
import { isoDate } from '../util/days.ts';
import type { AthleteTable } from './athlete-table.ts';
import { selectedWeeks } from './selection.ts';
import type { Selection } from './selection.ts';
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
    const { weeks, sessions, contacts, peak, phases } = sumsOf(selection, built);
    const major = firstMajor(plan, athlete);
    yield [
      athlete.id,
      athlete.squad,
      levelOn(athlete, plan.season.starts),
      weeks,
      sessions,
      contacts,
      peak,
      major === undefined ? undefined : isoDate(major.range.from),
      phases,
      built.diagnostics.filter(({ severity }) => severity === 'warning').length,
      waiversOf(plan, athlete),
    ];
  },
};

/** What is read from the weeks alone. */
interface Sums {
  readonly weeks: number;
  readonly sessions: number;
  readonly contacts: number;
  readonly peak: number;
  readonly phases: string;
}

const known = new WeakMap<Selection, WeakMap<BuiltAthlete['weeks'], Sums>>();

/** Once for all who have the very same weeks; which are blocked goes by findings, and they are an athlete's own. */
function sumsOf(selection: Selection, built: BuiltAthlete): Sums {
  if (built.blocked.size > 0) return addUp(selectedWeeks(selection, built));
  const ofSelection = known.get(selection) ?? new WeakMap<BuiltAthlete['weeks'], Sums>();
  known.set(selection, ofSelection);
  const sums = ofSelection.get(built.weeks) ?? addUp(selectedWeeks(selection, built));
  ofSelection.set(built.weeks, sums);
  return sums;
}

function addUp(weeks: readonly BuiltWeek[]): Sums {
  return {
    weeks: weeks.length,
    sessions: sum(weeks, ({ sessions }) => jumpSessions(sessions)),
    contacts: sum(weeks, ({ contacts }) => contacts),
    peak: peakSession(weeks),
    phases: phaseRuns(weeks)
      .map(({ phase, weeks: length }) => `${phase} ${length}`)
      .join('; '),
  };
}

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
