// The table `weeks`: one row per athlete and week. Column names and meanings are fixed; scripts read them.

import { isoDate } from '../util/days.ts';
import type { BuiltSession, BuiltWeek } from '../build/types.ts';
import type { AthleteTable } from './athlete-table.ts';
import { selectedWeeks } from './selection.ts';
import { columns } from './table.ts';
import type { Row } from './table.ts';

export const weeksTable: AthleteTable = {
  name: 'weeks',
  isOfWeeks: true,
  columns: [
    ...columns('text', 'athlete'),
    ...columns('integer', 'week'),
    ...columns('date', 'starts'),
    ...columns('word', 'phase', 'kind'),
    ...columns('integer', 'sessions', 'contacts', 'most_contacts', 'adapted', 'other_jumps', 'lift_sessions'),
    ...columns('word', 'bound_by'),
  ],
  *rowsOf(built, { selection }) {
    for (const week of selectedWeeks(selection, built)) yield rowOf(built.athlete.id, week);
  },
};

function rowOf(athlete: string, week: BuiltWeek): Row {
  return [
    athlete,
    week.week,
    isoDate(week.starts),
    week.phase,
    week.kind,
    jumpSessions(week.sessions),
    week.contacts,
    week.mostContacts,
    week.adapted,
    week.otherJumps,
    liftSessions(week.sessions),
    week.boundBy,
  ];
}

/** How many of the sessions have jumps. */
export function jumpSessions(sessions: readonly BuiltSession[]): number {
  return sessions.reduce((count, { jumps }) => count + (jumps ? 1 : 0), 0);
}

/** How many of the sessions have lifts. */
export function liftSessions(sessions: readonly BuiltSession[]): number {
  return sessions.reduce((count, { lifts }) => count + (lifts ? 1 : 0), 0);
}
