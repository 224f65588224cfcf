// The terms of an athlete's whole season, what is recorded included: what every question about contacts is asked of, by
// the planning itself (first-stages.ts), by `footfall reach` and by the search for the lines behind a conflict.

import { weekFrom } from '../plan/applies.ts';
import { getRuleValue, ruleBook } from '../plan/rule-book.ts';
import type { RuleBook } from '../plan/rule-book.ts';
import type { Athlete, Plan } from '../plan/types.ts';
import type { Staged } from '../diagnostics/types.ts';
import type { Day } from '../util/days.ts';
import { withPast } from './contacts/past.ts';
import type { Past } from './contacts/past.ts';
import { settleRecord } from './contacts/settle-record.ts';
import type { Leap } from './contacts/settle-record.ts';
import type { WeekTerms } from './contacts/terms.ts';
import { weekTerms } from './contacts/week-terms.ts';
import { withDoneJumps } from './done-jumps.ts';
import { gridOf } from './shared-grid.ts';
import { planPhases } from './phases.ts';
import { overdueWeeks, painfulWeeks, recordedWeeks, withTimeOff } from './recorded-weeks.ts';
import type { AthleteGrid, AthletePhases, KindWeek } from './types.ts';
import { chooseWeekKinds } from './week-kinds.ts';

export interface SeasonTerms {
  /** The weeks as the calendar has them, on which the phases stand. */
  readonly calendar: AthleteGrid;
  /** The same, and empty where the record says that there were no jumps. */
  readonly grid: AthleteGrid;
  readonly phases: AthletePhases;
  readonly kinds: Staged<readonly KindWeek[]>;
  readonly past: Past;
  readonly terms: readonly WeekTerms[];
  /** A before the first week. */
  readonly start: number;
  /** First days of weeks written by hand that the audit bars: nobody gets used to more by them. */
  readonly unwritten: ReadonlySet<Day>;
}

export const NONE_UNWRITTEN: ReadonlySet<Day> = new Set();

/** Weeks wholly before `asOf` are what the record says. */
export function seasonTerms(
  plan: Plan,
  athlete: Athlete,
  asOf: Day | undefined,
  unwritten: ReadonlySet<Day> = NONE_UNWRITTEN,
): SeasonTerms {
  const book = ruleBook(plan, athlete);
  const calendar = withDoneJumps(plan, gridOf(plan, athlete, book), asOf);
  // A week lost to illness doesn't lead to other phases: the path to the peak stays, and the volume is what follows.
  const phases = planPhases(plan, calendar);
  const recorded = recordedWeeks(plan, calendar, asOf);
  const past = {
    recorded,
    painful: painfulWeeks(plan, calendar, book),
    overdue: overdueWeeks(recorded, calendar, phases),
  };
  const { contactsASession, sessionsAWeek } = athlete.now.value;
  const start = contactsASession * sessionsAWeek;
  return termsWith(plan, book, { calendar, grid: calendar, phases, past, start, unwritten });
}

type Standing = Pick<SeasonTerms, 'calendar' | 'grid' | 'phases' | 'past' | 'start' | 'unwritten'>;

/** Again where weeks that are over turn out to have had no jumps, as those are time away and change the kinds. */
function termsWith(plan: Plan, book: RuleBook, standing: Standing): SeasonTerms {
  const { grid, phases, past, start, unwritten } = standing;
  const kinds = chooseWeekKinds(plan, book, grid, phases);
  const written = weekTerms(plan, book, grid, phases, kinds.value).map((terms, index) =>
    unwritten.has(grid.weeks[index]?.starts ?? NaN) ? asUnwritten(terms) : terms,
  );
  const terms = settleRecord({
    terms: withPast(written, past),
    sheets: withPast(written, { ...past, painful: painfulBefore(past, grid) }),
    adapted: start,
    recorded: past.recorded,
    leapOf: (week) => leapIn(book, grid, week),
  });
  const emptier = withTimeOff(grid, past.recorded, terms);
  return emptier === undefined ? { ...standing, kinds, terms } : termsWith(plan, book, { ...standing, grid: emptier });
}

/** Of each week the pain that was known when it began. */
function painfulBefore({ painful }: Past, { weeks }: AthleteGrid): Past['painful'] {
  if (painful.size === 0) return painful;
  return new Map([...painful].filter(([week, { day }]) => day < (weeks[week]?.starts ?? day)));
}

/** The rise from which the audit calls a planned week an error. */
export function leapIn(book: RuleBook, { weeks, range }: Pick<AthleteGrid, 'weeks' | 'range'>, week: number): Leap {
  const of = weekFrom(weeks[week]?.starts ?? range.from);
  const rise = getRuleValue(book, 'weekly-rise', 'most', of);
  return {
    // A plan may allow more by itself than is severe.
    percent: Math.max(getRuleValue(book, 'weekly-rise', 'severe', of), rise),
    contacts: getRuleValue(book, 'weekly-rise', 'contacts', of),
    rise,
  };
}

function asUnwritten(terms: WeekTerms): WeekTerms {
  const { fixed } = terms;
  return fixed?.kind === 'programme' ? { ...terms, fixed: { ...fixed, unwritten: true } } : terms;
}
