// Reads a plan and the stages before the days into the plain weeks of brute-force.ts, by code of its own: what bars heavy
// lifting, where matches crowd together, which days are hard, which are usual.

import { ageOn } from '../../../src/plan/athlete-facts.ts';
import type { Plan } from '../../../src/plan/types.ts';
import type { RuleId } from '../../../src/library/rules.ts';
import { getPhase } from '../../../src/library/phases.ts';
import { getRuleValue, ruleBook } from '../../../src/plan/rule-book.ts';
import type { RuleBook } from '../../../src/plan/rule-book.ts';
import type { DaysInput, PublishedDay } from '../../../src/schedule/days.ts';
import type { DayCell, DaysWeek, WeekCells } from '../../../src/schedule/types.ts';
import { weekdayOf } from '../../../src/util/days.ts';
import type { Day } from '../../../src/util/days.ts';
import { tryAllDays } from './brute-force.ts';
import type { PlainChoice, PlainUse, PlainWeek } from './brute-force.ts';

/** Jumps of a hard day; none of the random plans changes it. */
const HARD = 60;

interface Facts {
  readonly plan: Plan;
  readonly input: DaysInput;
  readonly published: ReadonlyMap<Day, PublishedDay>;
  readonly book: RuleBook;
  readonly cells: readonly DayCell[];
}

/** The weeks as dates. Plans of a single athlete, without programmes and primers. */
export function plainWeeks(
  plan: Plan,
  input: DaysInput,
  published: ReadonlyMap<Day, PublishedDay>,
): readonly PlainWeek[] {
  const book = ruleBook(plan, input.grid.athlete);
  const facts = { plan, input, published, book, cells: input.grid.weeks.flatMap((week) => week.cells) };
  return input.grid.weeks.map((week) => plainWeek(facts, week));
}

function ruleOf(facts: Facts, week: WeekCells, rule: RuleId, parameter: string, waived: number): number {
  const range = { from: week.starts, until: week.starts + 6 };
  return facts.book.waiver(rule, range) === undefined ? getRuleValue(facts.book, rule, parameter, range) : waived;
}

function plainWeek(facts: Facts, week: WeekCells): PlainWeek {
  const usual = usualPlaces(facts, week);
  const dates = (test: (cell: DayCell) => boolean): readonly Day[] => week.cells.filter(test).map((cell) => cell.day);
  const jumpDates = dates((cell) => cell.usable);
  const liftDates = withoutEves(
    facts,
    week,
    dates((cell) => canLift(facts, week, cell)),
  );
  const use = (of: 'jumps' | 'lifts'): Pick<PlainUse, 'usual' | 'published'> => ({
    usual: usual[of].map((place) => week.starts + place),
    published: dates((cell) => facts.published.get(cell.day)?.[of] === true),
  });
  return {
    starts: week.starts,
    jumps: {
      dates: jumpDates,
      wanted: facts.input.contacts[week.index]?.sessions.length ?? 0,
      apart: ruleOf(facts, week, 'session-spacing', 'apart', 1),
      pinned: jumpDates.filter((date) => isPinned(facts, week, date)),
      ...use('jumps'),
    },
    lifts: {
      dates: liftDates,
      wanted: wantedLifts(facts, week),
      apart: ruleOf(facts, week, 'lift-spacing', 'apart', 1),
      pinned: [],
      ...use('lifts'),
    },
    isPublished: week.cells.some((cell) => facts.published.has(cell.day)),
    light: liftDates.filter((date) => isLight(facts, week, date)),
    hardSides: new Map(jumpDates.map((date) => [date, hasHighTier(facts, week) ? hardSides(facts, date) : 0])),
    busy: dates((cell) => cell.practiceJumps > 0 || cell.competition !== undefined || cell.test !== undefined),
    freeDays: freeDays(facts, week),
    drops: { wanted: hasHighTier(facts, week), free: freeAfterDrops(facts, week) },
    crammed: jumpDates.filter((date) => isCrammed(facts, week, date)),
  };
}

const freeAfterDrops = (facts: Facts, week: WeekCells): number => ruleOf(facts, week, 'fast-spacing', 'free-days', 0);

function isCrammed(facts: Facts, week: WeekCells, date: Day): boolean {
  return facts.cells.some(
    ({ day, competition, practiceJumps, matchJumps, testContacts }) =>
      date < day &&
      day <= date + freeAfterDrops(facts, week) &&
      (competition !== undefined || practiceJumps + matchJumps + testContacts >= HARD),
  );
}

function freeDays(facts: Facts, week: WeekCells): number {
  const age = ageOn(facts.input.grid.athlete, week.starts) ?? Infinity;
  return age < ruleOf(facts, week, 'rest-day', 'under', 0) ? ruleOf(facts, week, 'rest-day', 'free-days', 0) : 0;
}

const takesLifts = (cell: DayCell): boolean => cell.slots.some((slot) => slot.use === 'lifts' || slot.use === 'both');

/** First and last day of every run of match days that crowd together. */
function crowds(facts: Facts): readonly (readonly [Day, Day])[] {
  const played = facts.cells.filter((cell) => cell.competition !== undefined).map((cell) => cell.day);
  return played.flatMap((first) =>
    played
      .filter((last) => last - first < 7 && played.filter((day) => first <= day && day <= last).length === 3)
      .map((last) => [first, last] as const),
  );
}

const isFreed = (facts: Facts, week: WeekCells): boolean =>
  facts.book.waiver('congested-week', { from: week.starts, until: week.starts + 6 }) !== undefined;

const isRest = ({ plan }: Facts, date: Day): boolean =>
  plan.pins.some(
    (pin) => pin.effects.some((effect) => effect.kind === 'rest') && pin.range.from <= date && date <= pin.range.until,
  );

function canLift(facts: Facts, week: WeekCells, cell: DayCell): boolean {
  if (!takesLifts(cell) || isRest(facts, cell.day)) return false;
  if (isFreed(facts, week)) return true;
  const begunBefore = crowds(facts).filter(([first]) => first < week.starts);
  if (!begunBefore.some(([first, last]) => first <= cell.day && cell.day <= last)) return true;
  return !facts.cells.some(
    (one) =>
      week.starts - 7 <= one.day &&
      one.day < week.starts &&
      takesLifts(one) &&
      begunBefore.some(([first, last]) => first <= one.day && one.day <= last),
  );
}

/** Days before a competition on which nobody lifts who has another day. */
const EVE = { peak: 2, freshen: 1, through: 0 } as const;

/** Eves stay where all other days are behind a peak. */
function withoutEves(facts: Facts, week: WeekCells, dates: readonly Day[]): readonly Day[] {
  const rest = dates.filter(
    (date) =>
      !facts.plan.competitions.some(
        ({ range, prepare }) =>
          date <= range.from && range.from <= date + Math.min(EVE[prepare], liftGap(facts, week, prepare)),
      ),
  );
  return rest.every((date) => isBehindPeak(facts, week, date)) ? dates : rest;
}

const liftGap = (facts: Facts, week: WeekCells, prepare: keyof typeof EVE): number =>
  ruleOf(facts, week, 'lift-event-gap', prepare === 'peak' ? 'peak' : 'match', 0);

const isBehindPeak = ({ plan }: Facts, week: WeekCells, date: Day): boolean =>
  plan.competitions.some(({ range, prepare }) => prepare === 'peak' && week.starts <= range.from && range.from < date);

function wantedLifts(facts: Facts, week: WeekCells): number {
  const kind = facts.input.kinds[week.index]?.kind;
  if (kind === 'transition' || kind === 'empty') return 0;
  const phase = getPhase(facts.input.phases.weeks[week.index]?.phase ?? 'closed');
  const wanted = Math.max(phase.liftSessions, ruleOf(facts, week, 'strength-always', 'least', 0));
  const crowded = crowds(facts).some(([first, last]) => first <= week.starts + 6 && week.starts <= last);
  return crowded && !isFreed(facts, week) ? Math.min(1, wanted) : wanted;
}

function isPinned(facts: Facts, week: WeekCells, date: Day): boolean {
  return facts.plan.pins.some(
    (pin) =>
      pin.range.from <= week.starts + 6 &&
      week.starts <= pin.range.until &&
      pin.effects.some((effect) => effect.kind === 'on' && effect.days.includes(weekdayOf(date))),
  );
}

function isLight(facts: Facts, week: WeekCells, date: Day): boolean {
  const beforeEvent = facts.plan.competitions.some(({ range, prepare }) => {
    return range.from >= date && range.from <= date + liftGap(facts, week, prepare);
  });
  const apart = ruleOf(facts, week, 'test-fresh', 'apart', 0);
  return (
    beforeEvent ||
    isBehindPeak(facts, week, date) ||
    facts.cells.some((cell) => cell.test !== undefined && Math.abs(cell.day - date) < apart)
  );
}

function hasHighTier(facts: Facts, week: WeekCells): boolean {
  return (getPhase(facts.input.phases.weeks[week.index]?.phase ?? 'closed').highShareMost ?? 0) > 0;
}

function hardSides(facts: Facts, date: Day): number {
  const beside = facts.cells.filter((cell) => Math.abs(cell.day - date) === 1);
  return beside.filter((cell) => cell.practiceJumps + cell.matchJumps + cell.testContacts >= HARD).length;
}

const usualKnown = new WeakMap<Plan, Map<string, { jumps: readonly number[]; lifts: readonly number[] }>>();

/** Places in the week: the second of four weeks that have nothing but the usual slots and practice. */
function usualPlaces(
  facts: Facts,
  week: WeekCells,
): { readonly jumps: readonly number[]; readonly lifts: readonly number[] } {
  const { plan, input } = facts;
  const jumps = input.contacts[week.index]?.sessions.length ?? 0;
  const lifts = wantedLifts(facts, week);
  const aparts = [
    ruleOf(facts, week, 'session-spacing', 'apart', 1),
    ruleOf(facts, week, 'lift-spacing', 'apart', 1),
  ] as const;
  const free = freeAfterDrops(facts, week);
  const key = [jumps, lifts, ...aparts, freeDays(facts, week), free].join(' ');
  const known = usualKnown.get(plan) ?? new Map<string, { jumps: readonly number[]; lifts: readonly number[] }>();
  usualKnown.set(plan, known);
  const found = known.get(key);
  if (found !== undefined) return found;
  const standing = [0, 1, 2, 3].map((index) =>
    standingPlainWeek(facts, index * 7, [jumps, lifts], aparts, { freeDays: freeDays(facts, week), free }),
  );
  const second = tryAllDays(standing).weeks[1];
  const places = {
    jumps: (second?.jumps ?? []).map((date) => date - 7),
    lifts: (second?.lifts ?? []).map((date) => date - 7),
  };
  known.set(key, places);
  return places;
}

function standingPlainWeek(
  { plan, input }: Facts,
  starts: Day,
  wanted: readonly [jumps: number, lifts: number],
  aparts: readonly [jumps: number, lifts: number],
  { freeDays, free }: { readonly freeDays: number; readonly free: number },
): PlainWeek {
  const weeks = input.grid.weeks;
  const places = [0, 1, 2, 3, 4, 5, 6];
  const half = weeks.length / 2;
  const often = (count: (starts: Day) => boolean): boolean => weeks.filter((week) => count(week.starts)).length >= half;
  const due = (date: Day, not: string): boolean =>
    plan.slots.some(
      (slot) => slot.day === weekdayOf(date) && slot.use !== not && slot.range.from <= date && date <= slot.range.until,
    );
  const practice = (date: Day): number =>
    plan.practice
      .filter((one) => one.day === weekdayOf(date) && one.range.from <= date && date <= one.range.until)
      .reduce((sum, one) => sum + one.jumps, 0);
  const hard = places.filter((place) => often((start) => practice(start + place) >= HARD));
  const open = (not: string): readonly Day[] =>
    places.filter((place) => often((start) => due(start + place, not))).map((place) => starts + place);
  const jumpDates = open('lifts');
  const plain = { pinned: [], usual: places.map((place) => starts + place), published: [] };
  return {
    starts,
    jumps: { dates: jumpDates, wanted: wanted[0], apart: aparts[0], ...plain },
    lifts: { dates: open('jumps'), wanted: wanted[1], apart: aparts[1], ...plain },
    isPublished: false,
    light: [],
    hardSides: new Map(
      jumpDates.map((date) => [date, [1, 6].filter((step) => hard.includes((date - starts + step) % 7)).length]),
    ),
    busy: places.filter((place) => often((start) => practice(start + place) > 0)).map((place) => starts + place),
    freeDays,
    drops: { wanted: true, free },
    crammed: jumpDates.filter((date) =>
      hard.some((place) => [1, 2].some((ahead) => ahead <= free && (date - starts + ahead) % 7 === place)),
    ),
  };
}

/** The dates that the scheduler chose, jumps and lifts, week by week. */
export const chosenDays = (weeks: readonly DaysWeek[]): readonly PlainChoice[] =>
  weeks.map(({ sessions }) => ({
    jumps: sessions.filter((session) => session.contacts > 0).map((session) => session.day),
    lifts: sessions.filter((session) => session.lifts).map((session) => session.day),
  }));
