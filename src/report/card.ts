// One athlete's week as the card that is handed out: what the week is for, each session line by line, and when to stop.
// For the athlete and whoever picks the card up: no names of phases or rules, no totals, no reasons of health; the
// thresholds of pain are those in force for this athlete in this week.

import type { Build, BuiltAthlete, BuiltSession } from '../build/types.ts';
import { MINUTES } from '../library/minutes.ts';
import { SHEETS } from '../library/sheets.ts';
import { VOLUME } from '../library/volume.ts';
import { appliesTo, overlap, weekFrom } from '../plan/applies.ts';
import { getRuleValue, ruleBook } from '../plan/rule-book.ts';
import type { Athlete, DayRange, Plan } from '../plan/types.ts';
import { isoDate } from '../util/days.ts';
import { dayWords, timeWords } from './calendar-words.ts';
import { cardLimits } from './card-limits.ts';
import { exerciseName } from './exercise-words.ts';
import { createGroupMarks } from './group-marks.ts';
import type { GroupMark } from './group-marks.ts';
import { selectedSessions, selectedWeeks } from './selection.ts';
import type { Selection } from './selection.ts';
import { createSheetNames } from './sheet-names.ts';
import { sheetLine } from './sheet-line.ts';
import type { SheetLine } from './sheet-line.ts';
import { weekPurpose } from './week-purpose.ts';

/** Lines are numbered on the card, so that a pair is told by number. */
export interface CardLine extends Omit<SheetLine, 'pair' | 'estimated'> {
  readonly order: number;
}

export interface CardSession {
  /** `Tue 2 Mar`. */
  readonly day: string;
  /** `18:00`, where the slot has a time. */
  readonly time?: string;
  readonly place: string;
  /** The whole of it, the slot's where it runs over, and the warm-up it starts with. */
  readonly minutes: number;
  readonly overSlotOf?: number;
  readonly warmUpMinutes: number;
  readonly lines: readonly CardLine[];
}

export interface Card {
  readonly athlete: string;
  readonly name: string;
  readonly group?: GroupMark;
  readonly week: number;
  /** ISO date of the week's first day. */
  readonly starts: string;
  /** `Mon 1 Mar – Sun 7 Mar`. */
  readonly dates: string;
  readonly purpose: string;
  /** What to leave out, without a reason: `No drops from a box, until 14 Feb.` */
  readonly limits: readonly string[];
  /** `Sat 6 Mar: League round 2`. */
  readonly events: readonly string[];
  readonly sessions: readonly CardSession[];
  /** When to stop. */
  readonly stop: readonly string[];
}

/** The weeks of an athlete as cards, those without a session left out. */
export type CardsOf = (built: BuiltAthlete) => readonly Card[];

/** What cards are made from; made once for a build. */
export function createCards({ plan }: Pick<Build, 'plan'>, selection: Selection): CardsOf {
  const names = createSheetNames(plan);
  const groups = createGroupMarks(plan);
  return (built) =>
    selectedWeeks(selection, built).flatMap((week) => {
      const sessions = selectedSessions(selection, week);
      if (sessions.length === 0) return [];
      const { athlete } = built;
      const group = groups.of(athlete);
      const range = weekFrom(week.starts);
      return {
        athlete: athlete.id,
        name: names.on(athlete, range.from),
        ...(group !== undefined && { group }),
        week: week.week,
        starts: isoDate(range.from),
        dates: rangeWords(range),
        purpose: weekPurpose(week),
        limits: cardLimits(plan, athlete, range),
        events: eventsOf(plan, athlete, range),
        sessions: sessions.map((session) => cardSession(plan, athlete, session)),
        stop: stopWords(plan, athlete, range),
      };
    });
}

function cardSession(plan: Plan, athlete: Athlete, session: BuiltSession): CardSession {
  const { at, place, minutes } = session.slot;
  return {
    day: dayWords(session.day),
    ...(at !== undefined && { time: timeWords(at) }),
    place: place.id,
    minutes: session.minutes,
    ...(session.minutes > minutes && { overSlotOf: minutes }),
    warmUpMinutes: warmUpMinutes(session),
    lines: session.lines.map((line) =>
      cardLine(line.order, sheetLine({ plan, athlete, place, lines: session.lines }, line)),
    ),
  };
}

function cardLine(order: number, { pair, estimated, ...line }: SheetLine): CardLine {
  const notes = [
    ...(estimated ? ['estimated: try lighter first'] : []),
    ...(pair === undefined ? [] : [pair.words(String(pair.order))]),
    ...line.notes,
  ];
  return { order, ...line, notes };
}

/** Minutes before the first set, as they are counted in a session's length. */
export function warmUpMinutes({ jumps }: Pick<BuiltSession, 'jumps'>): number {
  return jumps ? VOLUME.warmUpMinutes : MINUTES.liftWarmUp;
}

/** `Mon 1 Mar – Sun 7 Mar`, or the one day. */
export function rangeWords({ from, until }: DayRange): string {
  return from === until ? dayWords(from) : `${dayWords(from)} – ${dayWords(until)}`;
}

/** The matches and tests of an athlete in a week, in order of day. */
export function eventsOf(plan: Plan, athlete: Athlete, range: DayRange): readonly string[] {
  const matches = plan.competitions
    .filter((one) => overlap(one.range, range) && appliesTo(one.who, athlete))
    .map((one) => ({ day: one.range.from, words: `${rangeWords(one.range)}: ${one.name}` }));
  const tests = plan.tests
    .filter((one) => overlap({ from: one.day, until: one.day }, range) && appliesTo(one.who, athlete))
    .map((one) => ({ day: one.day, words: `${dayWords(one.day)}: tests, ${testNames(plan, one.what)}` }));
  return [...matches, ...tests].toSorted((a, b) => a.day - b.day).map(({ words }) => words);
}

/** Tests are drills, lifts, or words of their own with dashes. */
export function testNames({ library, season }: Plan, what: readonly string[]): string {
  return what
    .map((id) =>
      library.drills.has(id) || library.lifts.has(id)
        ? exerciseName(library, id, season.units)
        : id.replaceAll('-', ' '),
    )
    .map((name) => name.toLowerCase())
    .join(', ');
}

/** In words that need no explaining, the mildest first. */
function stopWords(plan: Plan, athlete: Athlete, range: DayRange): readonly string[] {
  const book = ruleBook(plan, athlete);
  const hold = getRuleValue(book, 'pain-hold', 'hold', range);
  const stop = getRuleValue(book, 'pain-hold', 'stop', range);
  const some = hold >= stop - 1 ? `${hold}` : `${hold} to ${stop - 1}`;
  return [
    'End a set when landings get loud, heels hit first or knees fall in.',
    ...(hold < stop ? [`Pain ${some} of ${SHEETS.scaleMost}: no jumps today, do the rest.`] : []),
    `Pain ${stop} or more, sharp pain, or worse next morning: stop, and tell your coach or physio.`,
  ];
}
