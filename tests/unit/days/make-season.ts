// Seasons for the tests of the days: a plan as short as a test needs, and the stages before this one written by hand but
// for the grid, which the plan lays by itself. Weeks begin on mondays; 2027-01-04 is one.

import type { Athlete, Plan } from '../../../src/plan/types.ts';
import type { PhaseId, WeekKind } from '../../../src/library/types.ts';
import { ruleBook } from '../../../src/plan/rule-book.ts';
import { scheduleDays } from '../../../src/schedule/days.ts';
import type { DaysInput, PublishedDay } from '../../../src/schedule/days.ts';
import { layGrid } from '../../../src/schedule/grid.ts';
import type { ContactsWeek, DaysWeek, ScheduledSession } from '../../../src/schedule/types.ts';
import { isoDate, weekdayNameOf } from '../../../src/util/days.ts';
import type { Day } from '../../../src/util/days.ts';
import { day } from '../date.ts';
import { athlete as someAthlete, plan as somePlan } from '../schedule/make-plan.ts';

export const FIRST_MONDAY = '2027-01-04';

export interface WeekByHand {
  /** Sizes of the jump sessions. */
  readonly sessions?: readonly number[];
  readonly phase?: PhaseId;
  readonly kind?: WeekKind;
  readonly primer?: boolean;
}

export interface SeasonByHand {
  readonly weeks: readonly WeekByHand[];
  readonly plan?: Partial<Plan>;
  readonly athlete?: Partial<Athlete>;
}

/** A plan of so many weeks from the first monday. */
export function planOf(weeks: number, change: Partial<Plan> = {}): Plan {
  return somePlan({ starts: FIRST_MONDAY, ends: isoDate(day(FIRST_MONDAY) + 7 * weeks - 1) }, change);
}

export function inputOf({ weeks, plan: change, athlete }: SeasonByHand): { plan: Plan; input: DaysInput } {
  const plan = planOf(weeks.length, change);
  const who = someAthlete('intermediate', 80, athlete);
  const input: DaysInput = {
    grid: layGrid(plan, who, ruleBook(plan, who)),
    phases: {
      weeks: weeks.map(({ phase = 'strength-power' }) => ({ phase, segment: 0 })),
      segments: [{ from: 0, until: weeks.length - 1, form: 'path', lastPhaseFrom: 0 }],
    },
    kinds: weeks.map(({ kind = 'load' }) => ({ kind })),
    contacts: weeks.map(contactsWeek),
  };
  return { plan, input };
}

function contactsWeek({ sessions = [], primer = false }: WeekByHand): ContactsWeek {
  const contacts = sessions.reduce((sum, size) => sum + size, 0);
  return {
    contacts,
    target: contacts,
    most: contacts,
    adaptedBefore: contacts,
    adapted: contacts,
    boundBy: 'target',
    bounds: [],
    possible: sessions.length,
    sessions,
    sessionCeiling: 120,
    primer,
    level: 'intermediate',
    reasons: [],
  };
}

export function daysOfSeason(season: SeasonByHand, published: Readonly<Record<string, PublishedDay>> = {}) {
  const { plan, input } = inputOf(season);
  const handedOut = new Map(Object.entries(published).map(([date, what]) => [day(date), what]));
  return scheduleDays(plan, input, new Map([[input.grid.athlete.id, handedOut]]));
}

const short = (date: Day): string => weekdayNameOf(date).slice(0, 3);

/** `tue 60 lift, thu 50`: the sessions of a week in a line. */
export function inWords(week: DaysWeek | undefined): string {
  return (week?.sessions ?? []).map(sessionWords).join(', ');
}

function sessionWords({ day, contacts, lifts }: ScheduledSession): string {
  return [short(day), ...(contacts > 0 ? [String(contacts)] : []), ...(lifts ? ['lift'] : [])].join(' ');
}

/** One line a week. */
export function weeksInWords(weeks: readonly DaysWeek[]): readonly string[] {
  return weeks.map(inWords);
}

/** The session of a date. */
export function sessionOn(weeks: readonly DaysWeek[], date: string): ScheduledSession {
  const found = weeks.flatMap((week) => week.sessions).find((session) => session.day === day(date));
  if (found === undefined) throw new Error(`no session on ${date}`);
  return found;
}

export function reasonOf(session: ScheduledSession, about: string) {
  return session.reasons.find((reason) => reason.about === about);
}
