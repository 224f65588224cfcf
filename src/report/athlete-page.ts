// One athlete's season on a page: the weeks with the reason for their contacts, and the sessions in a list. For the
// coach's eyes: it names what bound a week and the line of the plan behind it, but never the reason of a limit.

import type { BuiltAthlete, BuiltSession, BuiltWeek } from '../build/types.ts';
import type { Level, PhaseId, WeekKind } from '../library/types.ts';
import { levelOn } from '../plan/athlete-facts.ts';
import { sportOf } from '../plan/sport-of.ts';
import type { Athlete, Plan } from '../plan/types.ts';
import type { Day } from '../util/days.ts';
import { exerciseName } from './exercise-words.ts';
import { boundSpans, createPlaces } from './places.ts';
import type { Places } from './places.ts';
import { selectedSessions, selectedWeeks } from './selection.ts';
import type { Selection } from './selection.ts';
import { kindWords, whyContacts } from './week-words.ts';
import { jumpSessions, liftSessions } from './weeks-table.ts';

export interface WeekEntry {
  /** From 1. */
  readonly week: number;
  readonly starts: Day;
  readonly phase: PhaseId;
  readonly kind: WeekKind;
  readonly kindWords: string;
  readonly sessions: number;
  readonly contacts: number;
  /** The highest safe volume of the week. */
  readonly mostContacts: number;
  readonly adapted: number;
  readonly otherJumps: number;
  readonly liftSessions: number;
  /** Why the contacts are what they are, with the line of the plan where there is one. */
  readonly why: string;
}

export interface SessionEntry {
  readonly day: Day;
  readonly week: number;
  readonly kind: string;
  readonly place: string;
  readonly at?: number;
  readonly minutes: number;
  readonly contacts: number;
  /** Names of the jumps, in order, each once. */
  readonly jumps: readonly string[];
  /** Names of the lifts, in order, each once; trunk work is left out. */
  readonly lifts: readonly string[];
}

export interface AthletePage {
  readonly id: string;
  readonly name: string;
  readonly squad?: string;
  readonly level: Level;
  /** What the athlete was used to before the season. */
  readonly usedTo: { readonly contactsASession: number; readonly sessionsAWeek: number };
  readonly goal?: number;
  /** Where it is another than the season's. */
  readonly sport?: string;
  readonly weeks: readonly WeekEntry[];
  /** Numbers of weeks, from 1, that are left out because of an error. */
  readonly blocked: readonly number[];
  readonly sessions: readonly SessionEntry[];
}

/** The weeks and sessions that the selection leaves, in order of time. */
export function reportAthlete(plan: Plan, built: BuiltAthlete, selection: Selection): AthletePage {
  const { athlete, blocked } = built;
  const weeks = selectedWeeks(selection, built);
  const places = createPlaces(plan.files);
  return {
    ...personOf(athlete, plan),
    weeks: weeks.map((week) => weekEntry(places, week)),
    blocked: [...blocked].toSorted((a, b) => a - b),
    sessions: weeks.flatMap((week) =>
      selectedSessions(selection, week).map((session) => sessionEntry(plan, week, session)),
    ),
  };
}

function personOf(athlete: Athlete, plan: Plan): Omit<AthletePage, 'weeks' | 'blocked' | 'sessions'> {
  return {
    id: athlete.id,
    name: athlete.name,
    ...(athlete.squad !== undefined && { squad: athlete.squad }),
    level: levelOn(athlete, plan.season.starts),
    usedTo: athlete.now.value,
    ...(athlete.goal !== undefined && { goal: athlete.goal.value }),
    ...(athlete.sport !== undefined && { sport: sportOf(plan, athlete).name.toLowerCase() }),
  };
}

function weekEntry(places: Places, week: BuiltWeek): WeekEntry {
  return {
    week: week.week,
    starts: week.starts,
    phase: week.phase,
    kind: week.kind,
    kindWords: kindWords(week.kind),
    sessions: jumpSessions(week.sessions),
    contacts: week.contacts,
    mostContacts: week.mostContacts,
    adapted: week.adapted,
    otherJumps: week.otherJumps,
    liftSessions: liftSessions(week.sessions),
    why: whyWithPlace(places, week),
  };
}

function whyWithPlace(places: Places, week: BuiltWeek): string {
  const [first] = boundSpans(week);
  return first === undefined ? whyContacts(week) : `${whyContacts(week)}, ${places.words(first)}`;
}

function sessionEntry(plan: Plan, { week }: BuiltWeek, session: BuiltSession): SessionEntry {
  const { at } = session.slot;
  return {
    day: session.day,
    week,
    kind: session.kind,
    place: session.slot.place.id,
    ...(at !== undefined && { at }),
    minutes: session.minutes,
    contacts: session.contacts,
    jumps: namesOf(plan, session, 'jumps'),
    lifts: namesOf(plan, session, 'lifts'),
  };
}

function namesOf({ library, season }: Plan, { lines }: BuiltSession, part: string): readonly string[] {
  const names = lines
    .filter((line) => line.part === part)
    .map(({ exercise }) => exerciseName(library, exercise, season.units));
  return [...new Set(names)];
}
