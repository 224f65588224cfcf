// Chooses the jump days and the lift days of all weeks together at least cost: dynamic programming from the last week
// back, over what a week has to know of the one before for jumps and for lifts. Of equal seasons the one wins that has
// the earlier jump days, then the earlier lift days, in the first week in which they differ. Called by ../days.ts.

import { DAY_PREFERENCES, DAY_STABILITY, JUMP_SHORTFALL, LIFT_SHORTFALL } from '../../library/days.ts';
import { linkWeeks } from './chain.ts';
import type { Chain, Link, UseOfWeek } from './chain.ts';
import { countDays, includesDay, NO_DAYS } from './day-sets.ts';
import type { DaySet } from './day-sets.ts';
import { DAYS_A_WEEK } from '../../util/days.ts';

export interface WeekToPlace {
  readonly jumps: UseOfWeek;
  readonly lifts: UseOfWeek;
  /** Days on which lower-body lifting may be heavy. */
  readonly heavy: DaySet;
  /** Days with practice, a match or a test. */
  readonly busy: DaySet;
  /** Days that should stay free of everything. */
  readonly freeDays: number;
}

export interface PlacedWeek {
  readonly jumps: DaySet;
  readonly lifts: DaySet;
}

const JUMP_COSTS = {
  missing: JUMP_SHORTFALL.missing.cost,
  none: 0,
  pinUnmet: JUMP_SHORTFALL['pin-unmet'].cost,
  offPattern: DAY_PREFERENCES['jump-pattern'].cost,
  noRoom: DAY_PREFERENCES['no-room-for-drops'].cost,
};
const LIFT_COSTS = {
  missing: LIFT_SHORTFALL.missing.cost,
  none: LIFT_SHORTFALL.none.cost,
  pinUnmet: 0,
  offPattern: DAY_PREFERENCES['lift-pattern'].cost,
  noRoom: 0,
};
const AFTER_HEAVY = DAY_PREFERENCES['jumps-after-heavy'].cost;
const LIFT_ALONE = DAY_PREFERENCES['lift-alone'].cost;
const NO_FREE_DAY = DAY_STABILITY['no-free-day'].cost;
const EVERY_DAY: DaySet = (1 << DAYS_A_WEEK) - 1;

/** Squads meet the same weeks over and over; seasons are forgotten all at once when there are so many. */
const MOST_REMEMBERED = 2_000;
const remembered = new Map<string, readonly PlacedWeek[]>();

/** The days of each week, exact: no other choice costs less over the whole season. */
export function placeDays(weeks: readonly WeekToPlace[]): readonly PlacedWeek[] {
  const key = weeks.map(weekKey).join(' ');
  let placed = remembered.get(key);
  if (placed === undefined) {
    placed = placeUnknown(weeks);
    if (remembered.size >= MOST_REMEMBERED) remembered.clear();
    remembered.set(key, placed);
  }
  return placed;
}

function weekKey({ jumps, lifts, heavy, busy, freeDays }: WeekToPlace): string {
  return `${useKey(jumps)}/${useKey(lifts)}/${heavy},${busy},${freeDays}`;
}

function useKey({ days, wanted, apart, pinned, fixed, dayCosts, room }: UseOfWeek): string {
  const roomKey = room === undefined ? '' : `${room.days},${room.free}`;
  return `${days},${wanted},${apart},${pinned},${fixed ?? ''},${dayCosts.join(',')},${roomKey}`;
}

function placeUnknown(weeks: readonly WeekToPlace[]): readonly PlacedWeek[] {
  const jumps = linkWeeks(
    weeks.map((week) => week.jumps),
    JUMP_COSTS,
  );
  const lifts = linkWeeks(
    weeks.map((week) => week.lifts),
    LIFT_COSTS,
  );
  return choose(joinChains(weeks, jumps, lifts));
}

/** Both chains in one week, with the costs that hang on both. */
interface Joint {
  readonly jumps: Link;
  readonly lifts: Link;
  /** At [jump choice x lift choices + lift choice]. */
  readonly together: Float64Array;
  /** By lift entry: whether the day before the week was one of heavy lifting. */
  readonly heavyBefore: readonly boolean[];
  /** The next week's `toGo`. */
  readonly after: Float64Array;
  /** Lift entries of the next week. */
  readonly liftsAfter: number;
  /** At [jump entry x lift entries + lift entry]: the least cost from this week to the end. */
  readonly toGo: Float64Array;
}

function joinChains(weeks: readonly WeekToPlace[], jumps: Chain, lifts: Chain): readonly Joint[] {
  const joints: Joint[] = [];
  let after = new Float64Array(jumps.ends * lifts.ends);
  let liftsAfter = lifts.ends;
  for (let index = weeks.length - 1; index >= 0; index -= 1) {
    const week = getAt(weeks, index);
    const jumpLink = getAt(jumps.links, index);
    const liftLink = getAt(lifts.links, index);
    const heavyLast = includesDay(weeks[index - 1]?.heavy ?? NO_DAYS, DAYS_A_WEEK - 1);
    const joint = {
      jumps: jumpLink,
      lifts: liftLink,
      together: costsTogether(week, jumpLink.choices, liftLink.choices),
      heavyBefore: liftLink.entries.map((entry) => heavyLast && entry.ago === 1),
      after,
      liftsAfter,
      toGo: new Float64Array(jumpLink.entries.length * liftLink.entries.length),
    };
    fillToGo(joint);
    joints.push(joint);
    after = joint.toGo;
    liftsAfter = liftLink.entries.length;
  }
  return joints.toReversed();
}

function getAt<T>(items: readonly T[], index: number): T {
  const item = items[index];
  if (item === undefined) throw new Error(`nothing at ${index}`);
  return item;
}

function costsTogether(week: WeekToPlace, jumps: readonly DaySet[], lifts: readonly DaySet[]): Float64Array {
  const costs = new Float64Array(jumps.length * lifts.length);
  let at = 0;
  for (const jump of jumps) {
    for (const lift of lifts) {
      costs[at] = costTogether(week, jump, lift);
      at += 1;
    }
  }
  return costs;
}

function costTogether(week: WeekToPlace, jumps: DaySet, lifts: DaySet): number {
  const dayAfterHeavy = ((lifts & week.heavy) << 1) & EVERY_DAY;
  const free = DAYS_A_WEEK - countDays(jumps | lifts | week.busy);
  return (
    AFTER_HEAVY * countDays(jumps & dayAfterHeavy) +
    LIFT_ALONE * countDays(lifts & ~jumps) +
    (free < week.freeDays ? NO_FREE_DAY : 0)
  );
}

/**
 * Where a week lifts, what follows doesn't hang on the lifts before it but for whether the eve was heavy; so the best
 * jump days are looked for once for each lift choice, and not for each lift entry as well.
 */
function fillToGo(joint: Joint): void {
  const { jumps, lifts, heavyBefore } = joint;
  const known = new Float64Array(lifts.choices.length * 2);
  for (let jumpEntry = 0; jumpEntry < jumps.entries.length; jumpEntry += 1) {
    known.fill(-1);
    for (let liftEntry = 0; liftEntry < lifts.entries.length; liftEntry += 1) {
      const least = leastFrom(joint, jumpEntry, liftEntry, heavyBefore[liftEntry] === true, known);
      joint.toGo[jumpEntry * lifts.entries.length + liftEntry] = least;
    }
  }
}

function leastFrom(
  joint: Joint,
  jumpEntry: number,
  liftEntry: number,
  heavyBefore: boolean,
  known: Float64Array,
): number {
  const { choices, next, costs } = joint.lifts;
  let least = Infinity;
  for (let lift = 0; lift < choices.length; lift += 1) {
    const at = liftEntry * choices.length + lift;
    const liftNext = next[at] ?? -1;
    if (liftNext < 0) continue;
    const place = lift * 2 + (heavyBefore ? 1 : 0);
    const lifts = choices[lift] !== NO_DAYS;
    let rest = lifts ? (known[place] ?? -1) : -1;
    if (rest < 0) rest = leastOverJumps(joint, jumpEntry, lift, liftNext, heavyBefore);
    if (lifts) known[place] = rest;
    least = Math.min(least, rest + (costs[at] ?? 0));
  }
  return least;
}

function leastOverJumps(joint: Joint, jumpEntry: number, lift: number, liftNext: number, heavyBefore: boolean): number {
  let least = Infinity;
  for (let jump = 0; jump < joint.jumps.choices.length; jump += 1) {
    const cost = costFrom(joint, jumpEntry, jump, lift, liftNext, heavyBefore);
    if (cost < least) least = cost;
  }
  return least;
}

/**
 * From this week to the end, the lift chain's own cost left aside; infinite where it can't be. Takes its six numbers
 * plainly, as it runs more often than anything else here.
 */
function costFrom(
  joint: Joint,
  jumpEntry: number,
  jump: number,
  lift: number,
  liftNext: number,
  heavyBefore: boolean,
): number {
  const { choices, next, costs } = joint.jumps;
  const at = jumpEntry * choices.length + jump;
  const jumpNext = next[at] ?? -1;
  if (jumpNext < 0) return Infinity;
  return (
    (costs[at] ?? 0) +
    (joint.together[jump * joint.lifts.choices.length + lift] ?? 0) +
    (heavyBefore && includesDay(choices[jump] ?? NO_DAYS, 0) ? AFTER_HEAVY : 0) +
    (joint.after[jumpNext * joint.liftsAfter + liftNext] ?? Infinity)
  );
}

/** From the first week on, the first choice from which the least cost can still be had. */
function choose(joints: readonly Joint[]): readonly PlacedWeek[] {
  let jumpEntry = 0;
  let liftEntry = 0;
  return joints.map((joint) => {
    const [jump, lift] = firstBest(joint, jumpEntry, liftEntry);
    jumpEntry = joint.jumps.next[jumpEntry * joint.jumps.choices.length + jump] ?? -1;
    liftEntry = joint.lifts.next[liftEntry * joint.lifts.choices.length + lift] ?? -1;
    return { jumps: getAt(joint.jumps.choices, jump), lifts: getAt(joint.lifts.choices, lift) };
  });
}

function firstBest(joint: Joint, jumpEntry: number, liftEntry: number): readonly [jump: number, lift: number] {
  const { jumps, lifts } = joint;
  const least = joint.toGo[jumpEntry * lifts.entries.length + liftEntry] ?? Infinity;
  const heavyBefore = joint.heavyBefore[liftEntry] === true;
  for (let jump = 0; jump < jumps.choices.length; jump += 1) {
    for (let lift = 0; lift < lifts.choices.length; lift += 1) {
      const at = liftEntry * lifts.choices.length + lift;
      const liftNext = lifts.next[at] ?? -1;
      if (liftNext < 0) continue;
      const cost = costFrom(joint, jumpEntry, jump, lift, liftNext, heavyBefore) + (lifts.costs[at] ?? 0);
      if (cost === least && cost < Infinity) return [jump, lift];
    }
  }
  throw new Error('no choice costs what the least was said to cost');
}
