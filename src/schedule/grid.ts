// Stage 1: the plan's dates as weeks of day cells, for one athlete: which slots are open, which days can hold jumps and
// what bars the others, and how much other jumping there is. A day's first bar in the order below is the one told.

import type {
  Athlete,
  Closure,
  Competition,
  DayRange,
  Pin,
  Plan,
  Practice,
  Slot,
  TestDay,
  Trained,
} from '../plan/types.ts';
import type { Day } from '../util/days.ts';
import { DAYS_A_WEEK, startOfWeek, weekdayOf } from '../util/days.ts';
import type { Span } from '../source/types.ts';
import { holds, overlap, weekFrom } from '../plan/applies.ts';
import { limitsOn } from '../plan/athlete-facts.ts';
import { itemsOf } from '../plan/items-of.ts';
import { getRuleValue } from '../plan/rule-book.ts';
import { usualJumps } from '../plan/sport-of.ts';
import type { RuleBook } from '../plan/rule-book.ts';
import type { AthleteGrid, Barred, DayCell, WeekCells } from './types.ts';
import { pinsWith } from './pins-with.ts';

/** First day of the week that holds a day, in weeks that start on the season's own weekday. */
export function weekStart(plan: Plan, day: Day): Day {
  return startOfWeek(day, plan.season.weekStarts);
}

/** First days of the season's weeks, from the one holding its first day to the one holding its last. */
export function seasonWeeks(plan: Plan): readonly Day[] {
  const starts: Day[] = [];
  for (let day = weekStart(plan, plan.season.starts); day <= plan.season.ends; day += DAYS_A_WEEK) starts.push(day);
  return starts;
}

/** The season's weeks as one athlete meets them. */
export function layGrid(plan: Plan, athlete: Athlete, book: RuleBook): AthleteGrid {
  const facts = factsFor(plan, athlete, book);
  const weeks = seasonWeeks(plan).map((starts, index) => layWeek(facts, starts, index));
  return { athlete, range: facts.season, weeks };
}

interface Absence {
  readonly range: DayRange;
  readonly trained: Trained;
  readonly span: Span;
}

/** What of the plan concerns this athlete, looked up once. */
interface Facts {
  readonly plan: Plan;
  readonly athlete: Athlete;
  readonly book: RuleBook;
  readonly season: DayRange;
  readonly slotsByWeekday: readonly (readonly Slot[])[];
  readonly closures: readonly Closure[];
  /** Times when the athlete can't train anywhere: away, or every place closed. */
  readonly absences: readonly Absence[];
  readonly competitions: readonly Competition[];
  readonly matchDays: ReadonlyMap<Day, Competition>;
  readonly practice: readonly Practice[];
  readonly tests: readonly TestDay[];
  readonly rests: readonly Pin[];
}

function factsFor(plan: Plan, athlete: Athlete, book: RuleBook): Facts {
  const { slots, closures, competitions, practice, tests, pins } = itemsOf(plan, athlete);
  return {
    plan,
    athlete,
    book,
    season: { from: plan.season.starts, until: plan.season.ends },
    slotsByWeekday: Array.from({ length: DAYS_A_WEEK }, (_, day) => slots.filter((slot) => slot.day === day)),
    closures,
    absences: [...closures.filter((closure) => closure.places === undefined), ...athlete.away],
    competitions,
    matchDays: matchDays(competitions),
    practice,
    tests,
    rests: pinsWith(pins, 'rest'),
  };
}

function matchDays(competitions: readonly Competition[]): ReadonlyMap<Day, Competition> {
  const days = new Map<Day, Competition>();
  for (const competition of competitions) {
    for (let day = competition.range.from; day <= competition.range.until; day += 1) {
      const other = days.get(day);
      if (other === undefined || (other.prepare !== 'peak' && competition.prepare === 'peak'))
        days.set(day, competition);
    }
  }
  return days;
}

function layWeek(facts: Facts, starts: Day, index: number): WeekCells {
  const cells: DayCell[] = [];
  for (let day = starts; day < starts + DAYS_A_WEEK; day += 1) cells.push(layDay(facts, day, starts));
  const range = weekFrom(starts);
  const usable = cells.filter((cell) => cell.usable);
  const stopped = usable.some((cell) => stoppingLimit(facts.athlete, cell.day).length > 0);
  const absences = absencesIn(facts, range);
  const eventWeek = cells.some((cell) => cell.competition !== undefined);
  const peakWeek = facts.competitions.some(
    (competition) => competition.prepare === 'peak' && holds(range, competition.range.from),
  );
  const primed = usable.length === 0 && (peakWeek || (eventWeek && findPrimerDay(cells) !== undefined));
  const empty = stopped || (usable.length === 0 && !primed);
  const limits = empty ? limitsAlone(facts, cells) : [];
  return {
    index,
    starts,
    cells,
    empty,
    trained: limits.length > 0 ? 'none' : leastTrained(absences),
    closedBy: limits.length > 0 ? limits : absences.map((absence) => absence.span),
    otherJumps: cells.reduce((sum, cell) => sum + otherJumpsOn(cell), 0),
  };
}

/** Jumps of a day that no session plans: practice, matches and tests. */
export const otherJumpsOn = ({
  practiceJumps,
  matchJumps,
  testContacts,
}: Pick<DayCell, 'practiceJumps' | 'matchJumps' | 'testContacts'>): number => practiceJumps + matchJumps + testContacts;

/**
 * The day of a primer: the last open day at least one day before the week's first event that nothing but the event's
 * nearness bars. Undefined where there is none, or no event.
 */
export function findPrimerDay(cells: readonly DayCell[]): DayCell | undefined {
  const event = cells.find((cell) => cell.competition !== undefined);
  if (event === undefined) return undefined;
  return cells.findLast((cell) => cell.day < event.day && cell.barred === 'event-gap');
}

function stoppingLimit(athlete: Athlete, day: Day): readonly Span[] {
  return limitsOn(athlete, day)
    .filter((limit) => limit.contactsASession === 0 || limit.contactsAWeek === 0)
    .map((limit) => limit.span);
}

/** Limits that stop jumps on a day whose slot the athlete could come to: whatever closes the rest of the week, nobody trained. */
function limitsAlone(facts: Facts, cells: readonly DayCell[]): readonly Span[] {
  if (facts.athlete.limits.length === 0) return [];
  return cells.flatMap(({ day }) => (hasSlotForJumps(facts, day) ? stoppingLimit(facts.athlete, day) : []));
}

/** A match or its nearness takes nothing from what the limit alone would have taken. */
function hasSlotForJumps({ athlete, slotsByWeekday, closures }: Facts, day: Day): boolean {
  if (athlete.away.some((absence) => holds(absence.range, day))) return false;
  const shut = closures.filter((closure) => holds(closure.range, day));
  return (slotsByWeekday[weekdayOf(day)] ?? []).some(
    (slot) => slot.use !== 'lifts' && holds(slot.range, day) && !shut.some((closure) => closes(closure, slot)),
  );
}

function absencesIn(facts: Facts, range: DayRange): readonly Absence[] {
  return [...facts.closures.filter((closure) => reachesSlots(facts, closure)), ...facts.athlete.away].filter(
    (absence) => overlap(absence.range, range),
  );
}

/** A place closes an athlete's week only where the athlete has a slot in it. */
function reachesSlots({ slotsByWeekday }: Facts, closure: Closure): boolean {
  return closure.places === undefined || slotsByWeekday.some((slots) => slots.some((slot) => closes(closure, slot)));
}

function leastTrained(absences: readonly Absence[]): Trained {
  if (absences.length === 0 || absences.some((absence) => absence.trained === 'none')) return 'none';
  return absences.some((absence) => absence.trained === 'some') ? 'some' : 'full';
}

/** All fields of a cell are named, so that all cells have one shape: a season asks them thousands of times. */
function layDay(facts: Facts, day: Day, weekStarts: Day): DayCell {
  const competition = facts.matchDays.get(day);
  const test = facts.tests.find((one) => one.day === day);
  const slots: Slot[] = [];
  const bar = openSlots(facts, day, competition, slots) ?? barFor(facts, day, weekStarts, slots);
  return {
    day,
    slots: slots.length === 0 ? NO_SLOTS : slots,
    usable: bar === undefined,
    barred: bar?.why,
    barredBy: bar?.span,
    practiceJumps: practiceOn(facts, day),
    matchJumps: matchJumpsOn(facts, day),
    testContacts:
      test === undefined ? 0 : facts.tests.reduce((sum, one) => (one.day === day ? sum + one.contacts : sum), 0),
    plannedJumps: undefined,
    competition,
    test,
  };
}

const NO_SLOTS: readonly Slot[] = [];

interface Bar {
  readonly why: Barred;
  readonly span?: Span | undefined;
}

/** Adds the slots that are open, or gives what bars the day. */
function openSlots(facts: Facts, day: Day, competition: Competition | undefined, open: Slot[]): Bar | undefined {
  if (!holds(facts.season, day)) return OUT_OF_SEASON;
  if (competition !== undefined) return { why: 'competition', span: competition.span };
  const away = facts.athlete.away.find((absence) => holds(absence.range, day));
  if (away !== undefined) return { why: 'away', span: away.span };
  const due = (facts.slotsByWeekday[weekdayOf(day)] ?? []).filter((slot) => holds(slot.range, day));
  if (due.length === 0) return NO_SLOT;
  const closures = facts.closures.filter((closure) => holds(closure.range, day));
  for (const slot of due) if (!closures.some((closure) => closes(closure, slot))) open.push(slot);
  const closure = closures[0];
  return open.length === 0 && closure !== undefined ? { why: 'closed', span: closure.span } : undefined;
}

const OUT_OF_SEASON: Bar = { why: 'out-of-season', span: undefined };
const NO_SLOT: Bar = { why: 'no-slot', span: undefined };

function closes(closure: Closure, slot: Slot): boolean {
  return closure.places === undefined || closure.places.includes(slot.place.id);
}

function barFor(facts: Facts, day: Day, weekStarts: Day, slots: readonly Slot[]): Bar | undefined {
  if (slots.every((slot) => slot.use === 'lifts')) return { why: 'lifts-only' };
  const rest = facts.rests.find((pin) => holds(pin.range, day));
  if (rest !== undefined) return { why: 'rest-pin', span: rest.span };
  const test = facts.tests.find((one) => one.day === day);
  if (test !== undefined) return { why: 'test', span: test.span };
  return (
    afterPeak(facts, day, weekStarts) ?? afterEvent(facts, day) ?? congested(facts, day) ?? beforeEvent(facts, day)
  );
}

function afterPeak(facts: Facts, day: Day, weekStarts: Day): Bar | undefined {
  const peak = facts.competitions.find(
    (competition) =>
      competition.prepare === 'peak' && competition.range.from >= weekStarts && competition.range.from <= day,
  );
  return peak === undefined ? undefined : { why: 'after-peak', span: peak.span };
}

function afterEvent(facts: Facts, day: Day): Bar | undefined {
  const here = { from: day, until: day };
  if (facts.matchDays.size === 0 || facts.book.waiver('after-event', here) !== undefined) return undefined;
  const free = getRuleValue(facts.book, 'after-event', 'free-days', here);
  for (let back = 1; back <= free; back += 1) {
    const played = facts.matchDays.get(day - back);
    if (played !== undefined) return { why: 'after-event', span: played.span };
  }
  return undefined;
}

function beforeEvent(facts: Facts, day: Day): Bar | undefined {
  const here = { from: day, until: day };
  if (facts.competitions.length === 0 || facts.book.waiver('event-gap', here) !== undefined) return undefined;
  const gap = {
    peak: getRuleValue(facts.book, 'event-gap', 'peak', here),
    other: getRuleValue(facts.book, 'event-gap', 'match', here),
  };
  const near = facts.competitions.find((competition) => {
    const days = competition.range.from - day;
    return days > 0 && days <= (competition.prepare === 'peak' ? gap.peak : gap.other);
  });
  return near === undefined ? undefined : { why: 'event-gap', span: near.span };
}

/** Days between the first and the last of so many match days within so many days. */
function congested(facts: Facts, day: Day): Bar | undefined {
  const here = { from: day, until: day };
  const most = getRuleValue(facts.book, 'congested-week', 'match-days', here);
  if (facts.matchDays.size < most || facts.book.waiver('congested-week', here) !== undefined) return undefined;
  const within = getRuleValue(facts.book, 'congested-week', 'within', here);
  for (let from = day - within + 1; from <= day; from += 1) {
    const played = playedBetween(facts, from, from + within - 1);
    const first = played[0];
    const last = played.at(-1);
    if (first === undefined || last === undefined || played.length < most) continue;
    if (first.day < day && day < last.day) return { why: 'congested', span: first.competition.span };
  }
  return undefined;
}

function playedBetween(facts: Facts, from: Day, until: Day): readonly { day: Day; competition: Competition }[] {
  const played: { day: Day; competition: Competition }[] = [];
  for (let day = from; day <= until; day += 1) {
    const competition = facts.matchDays.get(day);
    if (competition !== undefined) played.push({ day, competition });
  }
  return played;
}

/** Practice doesn't happen for an athlete who is away, nor while every place is closed, unless training goes on. */
function practiceOn(facts: Facts, day: Day): number {
  if (!holds(facts.season, day)) return 0;
  const weekday = weekdayOf(day);
  let jumps = 0;
  for (const practice of facts.practice) {
    if (practice.day === weekday && holds(practice.range, day)) jumps += practice.jumps;
  }
  if (jumps === 0) return 0;
  const stopped = facts.absences.some((absence) => absence.trained === 'none' && holds(absence.range, day));
  return stopped ? 0 : jumps;
}

function matchJumpsOn(facts: Facts, day: Day): number {
  if (facts.matchDays.get(day) === undefined) return 0;
  const usual = usualJumps(facts.plan, facts.athlete);
  return facts.competitions.reduce((sum, one) => (holds(one.range, day) ? sum + (one.jumps ?? usual) : sum), 0);
}
