// The chain behind one athlete's week, from the coach's lines and the rules to each number, for `footfall why`. Arranges
// what the build itself holds: bounds and reasons of the week, its sessions and their lines. It works no number out again.
// The date's own sessions are told line by line, the others by their day.

import type { BuiltAthlete, BuiltWeek } from '../build/types.ts';
import type { PhaseId, WeekKind } from '../library/types.ts';
import type { Plan } from '../plan/types.ts';
import type { Day } from '../util/days.ts';
import { createPlaces } from './places.ts';
import { adviceOf } from './why/advice.ts';
import type { Advice } from './why/advice.ts';
import { boundsTold } from './why/bounds-told.ts';
import type { BoundTold } from './why/bounds-told.ts';
import { sessionsTold } from './why/sessions-told.ts';
import type { SessionTold } from './why/sessions-told.ts';
import type { Told } from './why/told.ts';
import { weekChain } from './why/week-chain.ts';
import { kindWords, whyContacts } from './week-words.ts';
import { DAYS_A_WEEK } from '../util/days.ts';

export interface Why {
  readonly athlete: string;
  readonly name: string;
  readonly week: number;
  readonly starts: Day;
  readonly phase: PhaseId;
  readonly kind: WeekKind;
  readonly kindWords: string;
  readonly contacts: number;
  readonly mostContacts: number;
  readonly boundBy: string;
  /** Why the contacts are what they are, in one line. */
  readonly why: string;
  /** An error keeps the week from being written. */
  readonly blocked: boolean;
  readonly chain: readonly Told[];
  readonly bounds: readonly BoundTold[];
  readonly advice: readonly Advice[];
  readonly sessions: readonly SessionTold[];
}

/** The week that holds a day, if the season has one. */
export function findWeek({ weeks }: Pick<BuiltAthlete, 'weeks'>, day: Day): BuiltWeek | undefined {
  return weeks.find(({ starts }) => starts <= day && day < starts + DAYS_A_WEEK);
}

/** The chain of one week, with the sessions of `day` told line by line. */
export function reportWhy(plan: Plan, built: BuiltAthlete, week: BuiltWeek, day: Day): Why {
  const places = createPlaces(plan.files);
  const { athlete } = built;
  return {
    athlete: athlete.id,
    name: athlete.name,
    week: week.week,
    starts: week.starts,
    phase: week.phase,
    kind: week.kind,
    kindWords: kindWords(week.kind),
    contacts: week.contacts,
    mostContacts: week.mostContacts,
    boundBy: week.boundBy,
    why: whyContacts(week),
    blocked: built.blocked.has(week.week),
    chain: weekChain(plan, built, week, places),
    bounds: boundsTold(week, places),
    advice: adviceOf(plan, athlete, week, places),
    sessions: sessionsTold(plan, week, day, places),
  };
}
