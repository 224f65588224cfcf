// The table `sessions`: one row per athlete and session, with how its contacts split.

import type { BuiltSession, BuiltWeek } from '../build/types.ts';
import type { Drill } from '../library/types.ts';
import { isoDate } from '../util/days.ts';
import type { AthleteTable } from './athlete-table.ts';
import { contactShares } from './contact-shares.ts';
import { selectedSessions, selectedWeeks } from './selection.ts';
import { columns } from './table.ts';
import type { Row } from './table.ts';

export const sessionsTable: AthleteTable = {
  name: 'sessions',
  isOfWeeks: true,
  columns: [
    ...columns('text', 'athlete'),
    ...columns('date', 'date'),
    ...columns('integer', 'week'),
    ...columns('word', 'phase', 'kind'),
    ...columns('text', 'place'),
    ...columns('integer', 'minutes', 'contacts', 'vertical', 'horizontal', 'lateral', 'fast'),
    ...columns('integer', 'low', 'moderate', 'high', 'lift_sets'),
  ],
  *rowsOf(built, { plan, selection }) {
    const findDrill: FindDrill = (exercise) => plan.library.drills.get(exercise);
    for (const week of selectedWeeks(selection, built)) {
      for (const session of selectedSessions(selection, week)) yield rowOf(built.athlete.id, week, session, findDrill);
    }
  },
};

type FindDrill = (exercise: string) => Drill | undefined;

function rowOf(athlete: string, week: BuiltWeek, session: BuiltSession, findDrill: FindDrill): Row {
  const { directions, fast, tiers } = contactShares(session.lines, findDrill);
  return [
    athlete,
    isoDate(session.day),
    week.week,
    week.phase,
    session.kind,
    session.slot.place.id,
    session.minutes,
    session.contacts,
    directions.vertical,
    directions.horizontal,
    directions.lateral,
    fast,
    tiers.low,
    tiers.moderate,
    tiers.high,
    liftSets(session),
  ];
}

/** Sets of the session's lifts; trunk work is not counted. */
export function liftSets({ lines }: BuiltSession): number {
  return lines.reduce((sets, line) => sets + (line.part === 'lifts' ? line.sets : 0), 0);
}
