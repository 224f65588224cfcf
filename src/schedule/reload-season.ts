// A season once more for somebody who differs from the athlete it was written for by the numbers of maxima alone: the same
// weeks, days, drills, lifts, sets and reps, with kilos of one's own. Called by build-athlete.ts.

import type { BuiltSession, BuiltWeek } from '../build/types.ts';
import type { Athlete } from '../plan/types.ts';
import { loadHistory } from './lines/load-history.ts';
import type { SessionLoads } from './lines/reload.ts';
import { reloadSession } from './lines/reload.ts';

/** What of a week hangs on maxima, and where it stands in the course of the loads. */
export interface WeekLoads {
  /** From 1; loads step up within a block. */
  readonly block: number;
  /** Its loads are what the next week steps up from. */
  readonly loading: boolean;
  readonly sessions: readonly SessionLoads[];
}

/** The weeks by an athlete's maxima; undefined where the kit makes other lifts of them. */
export function reloadSeason(
  weeks: readonly BuiltWeek[],
  loads: readonly WeekLoads[],
  athlete: Athlete,
): readonly BuiltWeek[] | undefined {
  const history = loadHistory();
  const reloaded: BuiltWeek[] = [];
  for (const [index, week] of weeks.entries()) {
    const { block, loading, sessions: ofSessions } = loads[index] ?? NOTHING;
    history.startWeek(block, loading);
    const sessions: BuiltSession[] = [];
    for (const [at, session] of week.sessions.entries()) {
      const ofSession = ofSessions[at];
      const again = ofSession === undefined ? session : reloadSession(session, ofSession, { athlete, history });
      if (again === undefined) return undefined;
      sessions.push(again);
    }
    reloaded.push(sessions.every((session, at) => session === week.sessions[at]) ? week : { ...week, sessions });
  }
  return reloaded;
}

const NOTHING: WeekLoads = { block: 0, loading: false, sessions: [] };
