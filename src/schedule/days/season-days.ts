// What the choice of days has to know of one athlete's season, looked up once: rules by week, competitions, matches that
// crowd together, hard days, programmes and pins. Made by ../days.ts and read by the other files of this folder.

import { holds, overlap, weekFrom } from '../../plan/applies.ts';
import { itemsOf } from '../../plan/items-of.ts';
import { ruleBook } from '../../plan/rule-book.ts';
import type { Athlete, Competition, DayRange, Pin, Plan, Practice, ProgrammeUse, Slot } from '../../plan/types.ts';
import type { Day } from '../../util/days.ts';
import { otherJumpsOn } from '../grid.ts';
import { pinsWith } from '../pins-with.ts';
import type { AthleteGrid, AthletePhases, ContactsWeek, DayCell, KindWeek, WeekCells } from '../types.ts';
import { crowdedStretches } from './crowded-matches.ts';
import { dayRules } from './day-rules.ts';
import type { DayRules } from './day-rules.ts';
import type { PlacedWeek } from './place-days.ts';
import { standingWeek, usualDays } from './usual-week.ts';
import type { StandingWeek } from './usual-week.ts';
import { DAYS_A_WEEK } from '../../util/days.ts';

export interface DaysInput {
  readonly grid: AthleteGrid;
  readonly phases: AthletePhases;
  readonly kinds: readonly KindWeek[];
  readonly contacts: readonly ContactsWeek[];
}

/** What stood on a day of the sheets that were handed out. */
export interface PublishedDay {
  readonly jumps: boolean;
  readonly lifts: boolean;
}

/** Of each athlete, by id: the days that had a session. */
export type Published = ReadonlyMap<string, ReadonlyMap<Day, PublishedDay>>;

export interface SeasonDays extends DaysInput {
  readonly plan: Plan;
  readonly published: ReadonlyMap<Day, PublishedDay>;
  /** By week. */
  readonly rules: readonly DayRules[];
  readonly competitions: readonly Competition[];
  readonly stretches: readonly DayRange[];
  /** Of programmes written by hand. */
  readonly uses: readonly ProgrammeUse[];
  /** Pins that name days. */
  readonly dayPins: readonly Pin[];
  /** Pins that keep days free of everything. The grid's bars don't tell of them on days that jumps have no slot on. */
  readonly restPins: readonly Pin[];
  /** The usual days of a week with so many jump and lift sessions under its rules. */
  readonly usual: (rules: DayRules, jumps: number, lifts: number) => PlacedWeek;
}

const NO_DAYS_PUBLISHED: ReadonlyMap<Day, PublishedDay> = new Map();

/** Looks all of it up for one athlete. `published` holds the days that are out, by athlete. */
export function seasonDays(plan: Plan, input: DaysInput, published: Published): SeasonDays {
  const { athlete, weeks } = input.grid;
  const rules = dayRules(
    ruleBook(plan, athlete),
    athlete,
    weeks.map(({ starts }) => weekFrom(starts)),
  );
  const { competitions, uses, pins } = itemsOf(plan, athlete);
  return {
    ...input,
    plan,
    published: published.get(athlete.id) ?? NO_DAYS_PUBLISHED,
    rules,
    competitions,
    stretches: crowdedStretches(weeks, rules),
    uses,
    dayPins: pinsWith(pins, 'on'),
    restPins: pinsWith(pins, 'rest'),
    usual: usualOfSquad(plan, athlete, weeks),
  };
}

/** Whether a pin keeps the day free of everything. */
export function isRestDay({ restPins }: Pick<SeasonDays, 'restPins'>, day: Day): boolean {
  return restPins.some((pin) => holds(pin.range, day));
}

interface UsualWeeks {
  readonly plan: Plan;
  readonly practice: readonly Practice[];
  readonly usual: SeasonDays['usual'];
}

/** By the slots, which are one list for all of a squad. */
const usualWeeks = new WeakMap<readonly Slot[], UsualWeeks>();

/** The same for everybody of a squad, as long as nobody has practice of their own. */
function usualOfSquad(plan: Plan, athlete: Athlete, weeks: readonly WeekCells[]): SeasonDays['usual'] {
  const { slots, practice } = itemsOf(plan, athlete);
  const known = usualWeeks.get(slots);
  if (known?.plan === plan && known.practice === practice) return known.usual;
  const usual = rememberUsual(standingWeek(plan, athlete, weeks));
  usualWeeks.set(slots, { plan, practice, usual });
  return usual;
}

function rememberUsual(standing: StandingWeek): SeasonDays['usual'] {
  const known = new Map<string, PlacedWeek>();
  return (rules, jumps, lifts) => {
    const { jumpsApart, liftsApart, hardJumps, freeAfterFast, freeDays } = rules;
    const key = [jumps, lifts, jumpsApart, liftsApart, hardJumps, freeAfterFast, freeDays].join(' ');
    let week = known.get(key);
    if (week === undefined) {
      week = usualDays(standing, rules, jumps, lifts);
      known.set(key, week);
    }
    return week;
  };
}

/** The day pins that reach into a week. */
export function dayPinsIn(season: SeasonDays, week: WeekCells): readonly Pin[] {
  if (season.dayPins.length === 0) return season.dayPins;
  return season.dayPins.filter((pin) => overlap(pin.range, weekFrom(week.starts)));
}

/** The rules of a week by its index from 0; throws outside the season. */
export function getRules(season: SeasonDays, week: number): DayRules {
  const rules = season.rules[week];
  if (rules === undefined) throw new Error(`no rules for week ${week}`);
  return rules;
}

/** The cell of a day, if the season's weeks reach that far. */
export function findCell(season: SeasonDays, day: Day): DayCell | undefined {
  const first = season.grid.weeks[0];
  if (first === undefined || day < first.starts) return undefined;
  const index = day - first.starts;
  const place = index % DAYS_A_WEEK;
  return season.grid.weeks[(index - place) / DAYS_A_WEEK]?.cells[place];
}

/** Whether so many other jumps fall on a day that it counts as hard by the rules of a week beside it. */
export function isHardDay(season: SeasonDays, rules: DayRules, day: Day): boolean {
  const cell = findCell(season, day);
  return (cell === undefined ? 0 : otherJumpsOn(cell)) >= rules.hardJumps;
}
