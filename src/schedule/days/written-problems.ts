// Sessions written by hand that the athlete won't have: no slot, or something closes the day. Called by day-problems.ts;
// what closes the days of several weeks on end is told once.

import { problem } from '../../diagnostics/problem.ts';
import type { Diagnostic } from '../../diagnostics/types.ts';
import type { Span } from '../../source/types.ts';
import { isoDate, weekdayNameOf } from '../../util/days.ts';
import { writtenDays } from './programme-days.ts';
import type { WrittenDay } from './programme-days.ts';
import type { SeasonDays } from './season-days.ts';
import type { WeekDays } from './week-days.ts';
import { addTo } from '../../util/grouped.ts';

interface Closing {
  readonly why: string;
  readonly span: Span | undefined;
}

/** A session left out, in its week. */
interface Left {
  readonly days: WeekDays;
  readonly day: WrittenDay;
}

/** A warning for each day without a slot; a notice for each line of the plan that closes days of a programme. */
export function writtenProblems(season: SeasonDays, weeks: readonly WeekDays[]): readonly Diagnostic[] {
  if (season.uses.length === 0) return [];
  const without: Diagnostic[] = [];
  const closed = new Map<string, Left[]>();
  for (const days of weeks) {
    for (const day of leftOut(season, days)) {
      if (day.cell.barred === 'no-slot') without.push(withoutSlot(season, days, day));
      else {
        const key = `${day.use.programme.id} ${keyOf(closingOf(days, day))}`;
        addTo(closed, key, { days, day });
      }
    }
  }
  return [...without, ...[...closed.values()].map((together) => closedDays(season, together))];
}

/** In a week that is closed as a whole nothing stands, whatever is open. */
function leftOut(season: SeasonDays, { week, written }: WeekDays): readonly WrittenDay[] {
  if (week.empty) return writtenDays(season, week) ?? [];
  return (written ?? []).filter(({ open }) => !open);
}

function closingOf({ week }: WeekDays, { cell }: WrittenDay): Closing {
  const { barred, barredBy } = cell;
  return barred === undefined ? { why: 'limit', span: week.closedBy[0] } : { why: barred, span: barredBy };
}

const keyOf = ({ why, span }: Closing): string => `${why} ${span?.file ?? ''} ${String(span?.start)}`;

function withoutSlot(
  { grid: { athlete } }: SeasonDays,
  days: WeekDays,
  { written, use, cell }: WrittenDay,
): Diagnostic {
  return problem('schedule/programme-day-without-slot', {
    params: {
      athlete: athlete.name,
      programme: use.programme.id,
      date: isoDate(cell.day),
      day: weekdayNameOf(cell.day),
    },
    span: written.span,
    related: [{ span: use.span, message: 'the programme is used here' }],
    athlete: athlete.id,
    week: days.week.starts,
  });
}

/** Told of the last of its weeks, so that it is told until all of them are over. */
function closedDays({ grid: { athlete } }: SeasonDays, together: readonly Left[]): Diagnostic {
  const [found] = together;
  const last = together.at(-1);
  if (found === undefined || last === undefined) throw new Error('a group without a day');
  const { day: first } = found;
  const { why, span } = closingOf(found.days, first);
  return problem('schedule/programme-day-closed', {
    params: {
      athlete: athlete.name,
      programme: first.use.programme.id,
      days: together.map(({ day: { cell } }) => `${weekdayNameOf(cell.day)} ${isoDate(cell.day)}`),
      why,
    },
    span: first.written.span,
    related: [
      { span: first.use.span, message: 'the programme is used here' },
      ...(span === undefined ? [] : [{ span, message: 'this closes it' }]),
    ],
    athlete: athlete.id,
    week: last.days.week.starts,
  });
}
