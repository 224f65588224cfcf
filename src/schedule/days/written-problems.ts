// Sessions written by hand that the athlete won't have: no slot, or something closes the day. Called by day-problems.ts;
// what closes a day closes it for all its sessions of the week, and is told once.

import { problem } from '../../diagnostics/problem.ts';
import type { Diagnostic } from '../../diagnostics/types.ts';
import type { Span } from '../../source/types.ts';
import { isoDate, weekdayNameOf } from '../../util/days.ts';
import { writtenDays } from './programme-days.ts';
import type { WrittenDay } from './programme-days.ts';
import type { SeasonDays } from './season-days.ts';
import type { WeekDays } from './week-days.ts';

interface Closing {
  readonly why: string;
  readonly span: Span | undefined;
}

/** A warning for each day without a slot; a notice for each line of the plan that closes days. */
export function writtenProblems(season: SeasonDays, days: WeekDays): readonly Diagnostic[] {
  if (season.uses.length === 0) return [];
  const left = leftOut(season, days);
  const closed = new Map<string, WrittenDay[]>();
  for (const day of left) {
    if (day.cell.barred === 'no-slot') continue;
    const key = keyOf(closingOf(days, day));
    closed.set(key, [...(closed.get(key) ?? []), day]);
  }
  return [
    ...left.filter(({ cell }) => cell.barred === 'no-slot').map((day) => withoutSlot(season, days, day)),
    ...[...closed.values()].map((together) => closedDays(season, days, together)),
  ];
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

function closedDays(
  { grid: { athlete } }: SeasonDays,
  days: WeekDays,
  [first, ...others]: readonly WrittenDay[],
): Diagnostic {
  if (first === undefined) throw new Error('a group without a day');
  const { why, span } = closingOf(days, first);
  return problem('schedule/programme-day-closed', {
    params: {
      athlete: athlete.name,
      programme: first.use.programme.id,
      days: [first, ...others].map(({ cell }) => `${weekdayNameOf(cell.day)} ${isoDate(cell.day)}`),
      why,
    },
    span: first.written.span,
    related: [
      { span: first.use.span, message: 'the programme is used here' },
      ...(span === undefined ? [] : [{ span, message: 'this closes it' }]),
    ],
    athlete: athlete.id,
    week: days.week.starts,
  });
}
