// The table `lines`: one row per athlete and prescribed line. Cells that mean nothing for a line are empty. `order` counts
// through a day with two sessions, so that athlete, date and order name one line.

import { isoDate } from '../util/days.ts';
import type { Day } from '../util/days.ts';
import type { BuiltLine } from '../build/types.ts';
import type { AthleteTable } from './athlete-table.ts';
import { selectedSessions, selectedWeeks } from './selection.ts';
import { columns } from './table.ts';
import type { Row } from './table.ts';

export const linesTable: AthleteTable = {
  name: 'lines',
  isOfWeeks: true,
  columns: [
    ...columns('text', 'athlete'),
    ...columns('date', 'date'),
    ...columns('integer', 'order'),
    ...columns('word', 'part'),
    ...columns('text', 'exercise'),
    ...columns('integer', 'sets', 'reps', 'contacts'),
    ...columns('decimal', 'load_kg', 'percent'),
    ...columns('integer', 'reserve', 'drop_cm', 'rest_s'),
    ...columns('text', 'tempo', 'note'),
  ],
  *rowsOf(built, { selection }) {
    let day: Day | undefined;
    let before = 0;
    for (const week of selectedWeeks(selection, built)) {
      for (const session of selectedSessions(selection, week)) {
        if (session.day !== day) before = 0;
        day = session.day;
        const date = isoDate(day);
        for (const line of session.lines) yield rowOf(built.athlete.id, date, before + line.order, line);
        before += session.lines.length;
      }
    }
  },
};

function rowOf(athlete: string, date: string, order: number, line: BuiltLine): Row {
  return [
    athlete,
    date,
    order,
    line.part,
    line.exercise,
    line.sets,
    line.reps,
    line.contacts === 0 ? undefined : line.contacts,
    line.loadGrams === undefined ? undefined : kilos(line.loadGrams),
    line.percent,
    line.reserve,
    line.dropCm,
    line.restSeconds,
    line.tempo,
    line.note,
  ];
}

/** Kilos with at most two decimals, rounded down: a load is never more than was worked out. */
export function kilos(grams: number): number {
  return Math.floor(grams / 10) / 100;
}
