// One athlete's last weeks, each with planned against done, how it felt, and all jumping against the weeks before it.

import type { BuildWeek, BuiltAthlete } from '../../build/types.ts';
import { REVIEW } from '../../library/review.ts';
import { doneBy } from '../../plan/done-by.ts';
import type { DoneRow } from '../../plan/types.ts';
import { acuteToChronic } from '../../record/loads.ts';
import { DAYS_A_WEEK } from '../../util/days.ts';
import type { Day } from '../../util/days.ts';
import { otherJumpsDone } from './all-jumps.ts';
import { feltWeek } from './felt-week.ts';
import type { FeltWeek } from './felt-week.ts';
import { sessionsDone } from './planned-and-done.ts';
import type { SessionDone } from './planned-and-done.ts';

/** The athlete's season as of a week's first day: what its sheets said. */
export type SheetsOf = (starts: Day) => BuiltAthlete;

export interface WeekDone extends BuildWeek {
  readonly sessions: readonly SessionDone[];
  /** Contacts on the sheets. */
  readonly planned: number;
  /** Contacts on record; absent where no session is. */
  readonly done?: number;
  /** What the plan goes on from: the record, or without one the lower of planned and the last recorded week. */
  readonly counted: number;
  readonly felt: FeltWeek;
  readonly otherJumps: number;
  /** Sessions and other jumps; of a week without a session on record with what counts of it. */
  readonly allJumps: number;
  /** By the week before, in whole per cent. */
  readonly change?: number;
  /** All jumps by the mean of the weeks that are looked back on, this one among them; only with all of them behind. */
  readonly ratio?: number;
}

/** One for each of the weeks given, oldest first. */
export function weeksDone(
  now: BuiltAthlete,
  weeks: readonly BuildWeek[],
  { record, sheetsOf }: { readonly record: Parameters<typeof doneBy>[0]; readonly sheetsOf: SheetsOf },
): readonly WeekDone[] {
  const rows = doneBy(record, now.athlete.id);
  const found: WeekDone[] = [];
  for (const week of weeks) {
    const bare = weekDone(now, week, rows, sheetsOf);
    found.push({ ...bare, ...against(found, bare.allJumps) });
  }
  return found;
}

function against(before: readonly WeekDone[], allJumps: number): Pick<WeekDone, 'change' | 'ratio'> {
  const last = before.at(-1)?.allJumps;
  const change = last === undefined || last === 0 ? undefined : Math.round((100 * (allJumps - last)) / last);
  const all = [...before.map((week) => week.allJumps), allJumps];
  const ratio = all.length < REVIEW.weeks ? undefined : acuteToChronic(all.slice(-REVIEW.weeks));
  return { ...(change !== undefined && { change }), ...(ratio !== undefined && { ratio }) };
}

function weekDone(now: BuiltAthlete, week: BuildWeek, all: readonly DoneRow[], sheetsOf: SheetsOf): WeekDone {
  const until = week.starts + DAYS_A_WEEK;
  const isIn = ({ day }: { readonly day: Day }): boolean => week.starts <= day && day < until;
  const rows = all.filter(isIn);
  const ledger = now.days.filter(isIn);
  const sessions = sessionsDone(
    sheetsIn(sheetsOf(week.starts), week.starts, until),
    rows.filter(({ kind }) => kind === 'session'),
  );
  const recorded = sessions.flatMap(({ done }) => done ?? []);
  const done = recorded.length === 0 ? undefined : recorded.reduce((sum, one) => sum + one, 0);
  const counted = now.weeks.find((one) => one.week === week.week)?.contacts ?? 0;
  const otherJumps = otherJumpsDone(ledger, rows);
  return {
    ...week,
    sessions,
    planned: sessions.reduce((sum, one) => sum + (one.planned ?? 0), 0),
    ...(done !== undefined && { done }),
    counted,
    felt: feltWeek({ starts: week.starts, sessions, rows, ledger }),
    otherJumps,
    allJumps: (done ?? counted) + otherJumps,
  };
}

/** The sessions on an athlete's sheets from one day to before another; none of a week that an error kept from them. */
export const sheetsIn = (built: BuiltAthlete, from: Day, before: Day): BuiltAthlete['weeks'][number]['sessions'] =>
  built.weeks
    .filter(({ week }) => !built.blocked.has(week))
    .flatMap(({ sessions }) => sessions)
    .filter(({ day }) => from <= day && day < before);
