// How a week felt: session loads, and monotony and strain where every day of it is known. A day on which something was
// to happen and nothing is recorded is no day of rest, so a week with such a gap has no monotony.

import type { BuiltDay } from '../../build/types.ts';
import type { DoneRow } from '../../plan/types.ts';
import { sessionLoad, weekLoad } from '../../record/loads.ts';
import { DAYS_A_WEEK } from '../../util/days.ts';
import type { Day } from '../../util/days.ts';
import { mean } from '../../util/statistics.ts';
import type { SessionDone } from './planned-and-done.ts';

export interface FeltWeek {
  /** Mean effort of what has one, 0 to 10. */
  readonly effort?: number;
  /** Sum of what is known; absent where nothing is. */
  readonly load?: number;
  /** Sessions, practices, matches and tests of which effort or minutes aren't recorded. */
  readonly gaps: number;
  /** Absent with a gap, and where all days are equal. */
  readonly monotony?: number;
  readonly strain?: number;
}

interface Week {
  readonly starts: Day;
  /** Of the week, in order of day. */
  readonly sessions: readonly SessionDone[];
  /** Rows of the athlete in the week, of every kind. */
  readonly rows: readonly DoneRow[];
  /** The ledger's days of the week: practice, matches and tests as planned. */
  readonly ledger: readonly BuiltDay[];
}

/** Foster 1998 (P), by the sample standard deviation. */
export function feltWeek({ starts, sessions, rows, ledger }: Week): FeltWeek {
  const efforts = rows.flatMap((row) => (row.effort === undefined || wasAbsent(row) ? [] : [row.effort]));
  const sheetMinutes = new Map(sessions.map(({ day, minutes }) => [day, minutes]));
  const loads = rows.map((row) => loadOf(row, sheetMinutes.get(row.day)));
  const unrecorded = sessions.filter(({ outcome }) => outcome === 'not recorded').length;
  const gaps = loads.filter((load) => load === undefined).length + unrecorded + unheard(ledger, rows);
  const known = loads.flatMap((load) => load ?? []);
  const effort = efforts.length === 0 ? {} : { effort: mean(efforts) };
  if (known.length === 0) return { ...effort, gaps };
  if (gaps > 0) return { ...effort, gaps, load: known.reduce((sum, load) => sum + load, 0) };
  const days = Array.from({ length: DAYS_A_WEEK }, (_, index) =>
    rows.reduce((sum, row, at) => (row.day === starts + index ? sum + (loads[at] ?? 0) : sum), 0),
  );
  return { ...effort, gaps, ...weekLoad(days) };
}

/** Nobody was there: nothing was felt. */
const wasAbsent = ({ kind, contacts, minutes }: DoneRow): boolean =>
  kind === 'session' && contacts === 0 && (minutes ?? 0) === 0;

/** Minutes of a session done as written are those of its sheet. */
function loadOf(row: DoneRow, sheetMinutes: number | undefined): number | undefined {
  if (wasAbsent(row) && row.effort === undefined) return 0;
  const minutes = row.minutes ?? (row.kind === 'session' && row.contacts === undefined ? sheetMinutes : undefined);
  return row.effort === undefined || minutes === undefined ? undefined : sessionLoad(row.effort, minutes);
}

/** Practices, matches and tests of the plan that the record doesn't speak of. */
function unheard(ledger: readonly BuiltDay[], rows: readonly DoneRow[]): number {
  const isHeard = (day: Day, kind: DoneRow['kind']): boolean =>
    rows.some((row) => row.day === day && row.kind === kind);
  return ledger.reduce((count, { day, practiceJumps, competition, test }) => {
    const practice = practiceJumps > 0 && !isHeard(day, 'practice');
    const match = competition !== undefined && !isHeard(day, 'match');
    const tested = test !== undefined && !isHeard(day, 'test');
    return count + Number(practice) + Number(match) + Number(tested);
  }, 0);
}
