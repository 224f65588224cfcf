// Turns one week into what the choice of days is made from: the days open for jumps and for lifts, how many of each,
// which are fixed, and what each would cost. Called by ../days.ts for every week of the season.

import { DAY_PREFERENCES, DAY_STABILITY } from '../../library/days.ts';
import { getPhase } from '../../library/phases.ts';
import type { PhaseRow } from '../../library/types.ts';
import { overlap, weekFrom } from '../../plan/applies.ts';
import type { Competition, Pin, Slot } from '../../plan/types.ts';
import { DAYS_A_WEEK, weekdayOf } from '../../util/days.ts';
import type { Day } from '../../util/days.ts';
import { findPrimerDay } from '../grid.ts';
import type { ContactsWeek, DayCell, KindWeek, WeekCells } from '../types.ts';
import type { Room } from './chain.ts';
import { carriedOver } from './crowded-matches.ts';
import type { DayRules } from './day-rules.ts';
import { countDays, firstDay, includesDay, NO_DAYS } from './day-sets.ts';
import type { DaySet } from './day-sets.ts';
import { findDemand } from './demands.ts';
import { findEve, findLightCause, isBehindPeak } from './heavy-days.ts';
import type { PlacedWeek, WeekToPlace } from './place-days.ts';
import { writtenDays } from './programme-days.ts';
import type { WrittenDay } from './programme-days.ts';
import { dayPinsIn, getRules, isHardDay, isRestDay } from './season-days.ts';
import type { SeasonDays } from './season-days.ts';

export interface WeekDays {
  readonly week: WeekCells;
  readonly kind: KindWeek;
  readonly phase: PhaseRow;
  readonly contacts: ContactsWeek;
  readonly rules: DayRules;
  /** Days a programme has lines for; undefined in a week without one. */
  readonly written: readonly WrittenDay[] | undefined;
  readonly primerDay: DayCell | undefined;
  /** Pins that name days of this week, whether or not they can be met. */
  readonly pins: readonly Pin[];
  /** Match days crowd together. */
  readonly crowded: boolean;
  /** The competition whose eve is left free of lifting although it has a slot. */
  readonly sparedEve: Competition | undefined;
  /** The days so many sessions have when nothing is in their way. */
  readonly usual: PlacedWeek;
  readonly toPlace: WeekToPlace;
}

/** Everything the choice asks about one week. */
export function weekDays(season: SeasonDays, week: WeekCells): WeekDays {
  const kind = season.kinds[week.index];
  const contacts = season.contacts[week.index];
  const phase = season.phases.weeks[week.index];
  if (kind === undefined || contacts === undefined || phase === undefined) throw new Error(`no week ${week.index}`);
  const rules = getRules(season, week.index);
  const open = {
    week,
    kind,
    contacts,
    rules,
    written: week.empty ? undefined : writtenDays(season, week),
    primerDay: contacts.primer ? findPrimerDay(week.cells) : undefined,
    phase: getPhase(phase.phase),
    pins: dayPinsIn(season, week),
    crowded:
      rules.crowdedLifts < Infinity && season.stretches.some((stretch) => overlap(stretch, weekFrom(week.starts))),
  };
  const usual = season.usual(rules, contacts.sessions.length, liftsWanted(open));
  return Object.assign(open, {
    sparedEve: open.written === undefined ? findSparedEve(season, open) : undefined,
    usual,
    toPlace: toPlace(season, open, usual),
  });
}

type OpenWeek = Omit<WeekDays, 'sparedEve' | 'usual' | 'toPlace'>;

function toPlace(season: SeasonDays, open: OpenWeek, usual: PlacedWeek): WeekToPlace {
  const { week, rules } = open;
  const liftDays = openLiftDays(season, open);
  const fixedLifts = open.written === undefined ? undefined : writtenSet(week, open.written, (day) => day.lifts);
  const heavy = heavyDays(season, open, liftDays | (fixedLifts ?? NO_DAYS));
  return {
    jumps: jumpsOfWeek(season, open, usual.jumps),
    lifts: {
      days: liftDays,
      wanted: fixedLifts === undefined ? liftsWanted(open) : countDays(fixedLifts),
      apart: rules.liftsApart,
      pinned: NO_DAYS,
      ...(fixedLifts === undefined ? {} : { fixed: fixedLifts }),
      dayCosts: liftDayCosts(season, open, usual.lifts, heavy),
    },
    heavy,
    busy: cellSet(week, isBusy),
    freeDays: rules.freeDays,
  };
}

function jumpsOfWeek(season: SeasonDays, open: OpenWeek, usual: DaySet): WeekToPlace['jumps'] {
  const days = cellSet(open.week, (cell) => cell.usable);
  const fixed = fixedJumps(open);
  const room = fixed === undefined && hasHighTier(open) ? roomOfWeek(season, open) : undefined;
  return {
    days,
    wanted: open.contacts.sessions.length,
    apart: open.rules.jumpsApart,
    pinned: days & pinnedDays(open),
    ...(fixed === undefined ? {} : { fixed }),
    dayCosts: jumpDayCosts(season, open, usual),
    ...(room === undefined ? {} : { room }),
  };
}

function hasHighTier({ phase }: OpenWeek): boolean {
  return (phase.highShareMost ?? 0) > 0;
}

const NO_DATES: ReadonlySet<Day> = new Set();

/** Behind which days neither a match nor a hard day is in the way of drops. */
function roomOfWeek(season: SeasonDays, { week, rules }: OpenWeek): Room {
  return {
    days: cellSet(week, (cell) => cell.usable && findDemand(season, rules, cell.day, NO_DATES) === undefined),
    free: Math.min(rules.freeAfterFast, DAYS_A_WEEK),
  };
}

function jumpDayCosts(season: SeasonDays, open: OpenWeek, usual: DaySet): readonly number[] {
  const isPublished = wasPublished(season, open.week);
  return open.week.cells.map(
    (cell, day) =>
      besideHardCost(season, open, cell) +
      (includesDay(usual, day) ? 0 : DAY_PREFERENCES['unusual-jump-day'].cost) +
      (isPublished && season.published.get(cell.day)?.jumps !== true ? DAY_STABILITY.published.cost : 0),
  );
}

function liftDayCosts(season: SeasonDays, open: OpenWeek, usual: DaySet, heavy: DaySet): readonly number[] {
  const isPublished = wasPublished(season, open.week);
  return open.week.cells.map(
    (cell, day) =>
      (includesDay(heavy, day) ? 0 : DAY_PREFERENCES['light-lift'].cost) +
      (includesDay(usual, day) ? 0 : DAY_PREFERENCES['unusual-lift-day'].cost) +
      (isPublished && season.published.get(cell.day)?.lifts !== true ? DAY_STABILITY.published.cost : 0),
  );
}

/** Whether the sheets handed out last have anything in this week; if not, it is free. */
function wasPublished({ published }: SeasonDays, week: WeekCells): boolean {
  return published.size > 0 && week.cells.some((cell) => published.has(cell.day));
}

function fixedJumps({ week, written, primerDay }: OpenWeek): DaySet | undefined {
  if (written !== undefined) return writtenSet(week, written, (day) => day.contacts > 0);
  return primerDay === undefined ? undefined : cellSet(week, (cell) => cell === primerDay);
}

/** High-tier drills want fresh legs: a phase that has them keeps its sessions from the eve and the morrow of a hard day. */
function besideHardCost(season: SeasonDays, open: OpenWeek, cell: DayCell): number {
  const { rules } = open;
  if (!hasHighTier(open) || !cell.usable) return 0;
  const sides = (isHardDay(season, rules, cell.day - 1) ? 1 : 0) + (isHardDay(season, rules, cell.day + 1) ? 1 : 0);
  return sides * DAY_PREFERENCES['beside-hard-day'].cost;
}

/** The days of the week a coach names, whatever stands on them. */
export function pinnedDays({ week, pins }: Pick<WeekDays, 'week' | 'pins'>): DaySet {
  return pins.length === 0 ? NO_DAYS : cellSet(week, (cell) => pins.some((pin) => namesDay(pin, cell)));
}

/** Whether a pin asks for a session on that day of the week. */
export function namesDay(pin: Pin, cell: DayCell): boolean {
  return pin.effects.some((effect) => effect.kind === 'on' && effect.days.includes(weekdayOf(cell.day)));
}

/** Lift sessions the week should have: the phase's, at least the rule's; none in transition, one among crowded matches. */
export function liftsWanted({
  kind,
  phase,
  rules,
  crowded,
}: Pick<WeekDays, 'kind' | 'phase' | 'rules' | 'crowded'>): number {
  if (kind.kind === 'transition' || kind.kind === 'empty') return 0;
  const wanted = Math.max(phase.liftSessions, rules.leastLifts);
  return crowded ? Math.min(wanted, rules.crowdedLifts) : wanted;
}

/** Without the eves of competitions, as long as another day is left. */
function openLiftDays(season: SeasonDays, open: OpenWeek): DaySet {
  const days = slotsForLifts(season, open);
  return days & ~sparedEves(season, open, days);
}

/** The competition whose eve is left free of lifting that has a slot there, as other days have one too. */
function findSparedEve(season: SeasonDays, open: OpenWeek): Competition | undefined {
  const eves = sparedEves(season, open, slotsForLifts(season, open));
  const cell = eves === NO_DAYS ? undefined : open.week.cells[firstDay(eves)];
  return cell === undefined ? undefined : findEve(season, open.rules, cell);
}

/** Eves among the days, or none where nothing else is left but days behind a peak. */
function sparedEves(season: SeasonDays, { week, rules }: OpenWeek, days: DaySet): DaySet {
  const eves = days & cellSet(week, (cell) => findEve(season, rules, cell) !== undefined);
  if (eves === NO_DAYS) return NO_DAYS;
  const serving = days & ~eves & cellSet(week, (cell) => !isBehindPeak(season, week, cell));
  return serving === NO_DAYS ? NO_DAYS : eves;
}

function slotsForLifts(season: SeasonDays, { week, rules }: OpenWeek): DaySet {
  return cellSet(
    week,
    (cell) =>
      !isRestDay(season, cell.day) &&
      cell.slots.some(takesLifts) &&
      !(rules.crowdedLifts < Infinity && liftedBefore(season, week, cell)),
  );
}

/** Whether a slot is for lifting, alone or with jumps. */
export function takesLifts(slot: Slot): boolean {
  return slot.use !== 'jumps';
}

/** The lift of a stretch that began in the week before stands there, if it can. */
function liftedBefore(season: SeasonDays, week: WeekCells, cell: DayCell): boolean {
  if (!carriedOver(season.stretches, week.starts, cell.day)) return false;
  const before = season.grid.weeks[week.index - 1];
  return (
    before !== undefined &&
    before.cells.some((one) => carriedOver(season.stretches, week.starts, one.day) && one.slots.some(takesLifts))
  );
}

function heavyDays(season: SeasonDays, { week, rules }: OpenWeek, lifts: DaySet): DaySet {
  let set = NO_DAYS;
  week.cells.forEach((cell, day) => {
    if (includesDay(lifts, day) && findLightCause(season, rules, week, cell) === undefined) set |= 1 << day;
  });
  return set;
}

function isBusy(cell: DayCell): boolean {
  return cell.practiceJumps > 0 || cell.competition !== undefined || cell.test !== undefined;
}

function writtenSet(week: WeekCells, written: readonly WrittenDay[], test: (day: WrittenDay) => boolean): DaySet {
  return cellSet(week, (cell) => written.some((day) => day.cell === cell && day.open && test(day)));
}

function cellSet(week: WeekCells, test: (cell: DayCell) => boolean): DaySet {
  let set = NO_DAYS;
  week.cells.forEach((cell, day) => {
    if (test(cell)) set |= 1 << day;
  });
  return set;
}
