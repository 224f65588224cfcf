// The days a week has when nothing is in its way: no closure, no match, no absence, only the slots and the practice that
// most weeks of the season have. Everybody of a squad has the same ones, and they don't move when one day falls out, so
// that other weeks stay as they are. Chosen like a season itself, of a month of such weeks, so that the end of one is
// weighed against the beginning of the next. Called by season-days.ts.

import { DAY_PREFERENCES } from '../../library/days.ts';
import { holds } from '../../plan/applies.ts';
import { itemsOf } from '../../plan/items-of.ts';
import type { Athlete, Plan, Practice, Slot } from '../../plan/types.ts';
import type { Day } from '../../util/days.ts';
import { DAYS_A_WEEK, weekdayOf } from '../../util/days.ts';
import type { WeekCells } from '../types.ts';
import type { DayRules } from './day-rules.ts';
import type { Room } from './chain.ts';
import { daysOf, NO_DAYS, setOf } from './day-sets.ts';
import type { DaySet } from './day-sets.ts';
import { placeDays } from './place-days.ts';
import type { PlacedWeek } from './place-days.ts';

const EVERY_DAY: DaySet = (1 << DAYS_A_WEEK) - 1;

/** What at least half the weeks of a season have. */
export interface StandingWeek {
  /** Days with a slot that takes jumps, and lifts. */
  readonly jumpDays: DaySet;
  readonly liftDays: DaySet;
  /** Jumps in practice, by day. */
  readonly practiceJumps: readonly number[];
}

/** What at least half the weeks of the athlete's season have, day by day from the first of the week. */
export function standingWeek(plan: Plan, athlete: Athlete, weeks: readonly WeekCells[]): StandingWeek {
  const { slots, practice } = itemsOf(plan, athlete);
  let jumpDays = NO_DAYS;
  let liftDays = NO_DAYS;
  const practiceJumps: number[] = [];
  for (let place = 0; place < DAYS_A_WEEK; place += 1) {
    const days = weeks.map((week) => week.starts + place);
    const due = slots.filter((slot) => slot.day === weekdayOf(days[0] ?? place));
    if (
      isUsual(
        due.filter((slot) => slot.use !== 'lifts'),
        days,
      )
    )
      jumpDays |= 1 << place;
    if (
      isUsual(
        due.filter((slot) => slot.use !== 'jumps'),
        days,
      )
    )
      liftDays |= 1 << place;
    practiceJumps.push(
      usualPractice(
        practice.filter((one) => one.day === weekdayOf(days[0] ?? place)),
        days,
      ),
    );
  }
  return { jumpDays, liftDays, practiceJumps };
}

/** Whether at least half the days have one of the slots. */
function isUsual(slots: readonly Slot[], days: readonly Day[]): boolean {
  if (slots.length === 0) return false;
  const due = days.filter((day) => slots.some((slot) => holds(slot.range, day)));
  return due.length * 2 >= days.length;
}

/** The jumps that at least half the days have. */
function usualPractice(practice: readonly Practice[], days: readonly Day[]): number {
  if (practice.length === 0) return 0;
  const jumps = days.map((day) => practice.reduce((sum, one) => (holds(one.range, day) ? sum + one.jumps : sum), 0));
  return jumps.toSorted((a, b) => b - a)[Math.ceil(days.length / 2) - 1] ?? 0;
}

/** The usual days of so many jump and lift sessions. High-tier drills are reckoned with, so that days outlast a phase. */
export function usualDays(standing: StandingWeek, rules: DayRules, jumps: number, lifts: number): PlacedWeek {
  const hard = standing.practiceJumps.map((one) => one >= rules.hardJumps);
  const sides = hard.map(
    (_, place) => [DAYS_A_WEEK - 1, 1].filter((step) => hard[(place + step) % DAYS_A_WEEK] === true).length,
  );
  const busy = standing.practiceJumps.reduce((set, one, place) => (one > 0 ? set | (1 << place) : set), NO_DAYS);
  const week = {
    jumps: {
      days: standing.jumpDays,
      wanted: jumps,
      apart: rules.jumpsApart,
      pinned: NO_DAYS,
      dayCosts: sides.map((count) => count * DAY_PREFERENCES['beside-hard-day'].cost),
      room: usualRoom(standing, hard, rules),
    },
    lifts: {
      days: standing.liftDays,
      wanted: lifts,
      apart: rules.liftsApart,
      pinned: NO_DAYS,
      dayCosts: sides.map(() => 0),
    },
    heavy: EVERY_DAY,
    busy,
    freeDays: rules.freeDays,
  };
  return placeDays([week, week, week, week])[1] ?? { jumps: NO_DAYS, lifts: NO_DAYS };
}

function usualRoom({ jumpDays }: StandingWeek, hard: readonly boolean[], rules: DayRules): Room {
  const free = Math.min(rules.freeAfterFast, DAYS_A_WEEK);
  const isClear = (place: number): boolean =>
    Array.from({ length: free }, (_, ahead) => hard[(place + 1 + ahead) % DAYS_A_WEEK]).every((one) => one !== true);
  return { days: setOf(daysOf(jumpDays).filter(isClear)), free };
}
