// The table `lines`: one row per athlete and prescribed line. Cells that mean nothing for a line are empty. `order` counts
// through a day with two sessions, so that athlete, date and order name one line.

import { isoDate } from '../util/days.ts';
import type { Day } from '../util/days.ts';
import type { BuiltAthlete, BuiltLine } from '../build/types.ts';
import type { AthleteTable, EncodedRow } from './athlete-table.ts';
import { selectedSessions, selectedWeeks } from './selection.ts';
import type { Selection } from './selection.ts';
import { columns } from './table.ts';
import type { Row } from './table.ts';
import { kilos } from '../util/quantities.ts';

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
    for (const { date, before, lines } of linesByDay(built, selection)) {
      for (const line of lines) yield [built.athlete.id, date, before + line.order, ...cellsOf(line)];
    }
  },
  encodedRows: (encode) => {
    const known = new WeakMap<BuiltLine, string>();
    // Lines without kilos are mostly those of many athletes and weeks.
    const othersOf = (line: BuiltLine): string => {
      const text = known.get(line) ?? encode(cellsOf(line), OWN);
      if (line.loadGrams === undefined) known.set(line, text);
      return text;
    };
    return function* encoded(built, { selection }): Iterable<EncodedRow> {
      for (const { date, before, lines } of linesByDay(built, selection)) {
        for (const line of lines) yield { own: encode([date, before + line.order], 1), others: othersOf(line) };
      }
    };
  },
};

/** Cells that say whose line it is, and when: athlete, date and order. */
const OWN = 3;

interface LinesOfSession {
  readonly date: string;
  /** Lines of the day that stand before. */
  readonly before: number;
  readonly lines: readonly BuiltLine[];
}

function* linesByDay(built: BuiltAthlete, selection: Selection): Iterable<LinesOfSession> {
  let last: Day | undefined;
  let before = 0;
  for (const week of selectedWeeks(selection, built)) {
    for (const { day, lines } of selectedSessions(selection, week)) {
      if (day !== last) before = 0;
      last = day;
      yield { date: isoDate(day), before, lines };
      before += lines.length;
    }
  }
}

function cellsOf(line: BuiltLine): Row {
  return [
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
