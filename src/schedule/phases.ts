// Stage 2: a phase for every week. Seasons fall into segments, each ending in the week of a peak; a segment takes a path
// of phases, or is held, in season or in foundation as a whole. Pinned phases stand, the path is chosen round them.

import type { Athlete, Competition, Plan } from '../plan/types.ts';
import { overlap, weekFrom } from '../plan/applies.ts';
import { ageOn } from '../plan/athlete-facts.ts';
import { itemsOf } from '../plan/items-of.ts';
import { PATH_PHASES, SEASON_SHAPE } from '../library/phases.ts';
import type { PhaseId } from '../library/types.ts';
import { choosePath } from './phases/path.ts';
import type { FixedPhase } from './phases/path.ts';
import { pinnedWeeks } from './pinned-weeks.ts';
import type { PinnedWeek } from './pinned-weeks.ts';
import type { AthleteGrid, AthletePhases, PhaseWeek, Segment } from './types.ts';

/** The phases of one athlete's weeks, and the segments they stand in. */
export function planPhases(plan: Plan, grid: AthleteGrid): AthletePhases {
  const pins = pinnedPhases(plan, grid);
  const barred = barredPhases(plan, grid);
  const kept = barred.size === 0 ? pins : new Map([...pins].filter(([week]) => !barred.has(week)));
  if (staysInFoundation(grid.athlete, plan)) return foundation(plan, grid, kept);
  const phases: PhaseId[] = grid.weeks.map(() => 'maintenance');
  const segments: Segment[] = [];
  for (const stretch of stretches(plan, grid)) segments.push(...fillStretch(plan, grid, stretch, pins, phases));
  return assemble(grid, phases, segments, pins);
}

const pinnedPhases = (plan: Plan, grid: AthleteGrid): Pins =>
  pinnedWeeks(plan, grid, (effect) => (effect.kind === 'phase' ? effect.phase : undefined));

/** Phases pinned for a child that ask for more than its foundation: they don't stand. By index of the week. */
export function barredPhases(plan: Plan, grid: AthleteGrid): Pins {
  if (!isChild(grid.athlete, plan)) return new Map();
  const isLess = (phase: PhaseId): boolean => phase === 'foundation' || phase === 'transition';
  return new Map([...pinnedPhases(plan, grid)].filter(([, { value }]) => !isLess(value)));
}

function isChild(athlete: Athlete, plan: Plan): boolean {
  const age = ageOn(athlete, plan.season.starts);
  return age !== undefined && age < SEASON_SHAPE.foundationUnderAge;
}

/** Athletes too young or too new to jumping for a path: one slow rise, no taper. */
export function staysInFoundation(athlete: Athlete, plan: Plan): boolean {
  if (isChild(athlete, plan)) return true;
  const beginner = (athlete.levels[0]?.is ?? 'beginner') === 'beginner';
  return beginner && athlete.now.value.contactsASession < SEASON_SHAPE.foundationUnderContacts;
}

interface Stretch {
  readonly from: number;
  readonly until: number;
  readonly peak?: Competition;
  readonly afterPeak: boolean;
}

/** The season cut behind the week of each peak; the last stretch has none. */
function stretches(plan: Plan, grid: AthleteGrid): readonly Stretch[] {
  const peaks = itemsOf(plan, grid.athlete).competitions.filter((one) => one.prepare === 'peak');
  const found: Stretch[] = [];
  let from = 0;
  for (const peak of peaks) {
    const week = grid.weeks.findIndex((one) =>
      overlap(weekFrom(one.starts), { from: peak.range.from, until: peak.range.from }),
    );
    if (week < from) continue;
    found.push({ from, until: week, peak, afterPeak: from > 0 });
    from = week + 1;
  }
  if (from < grid.weeks.length) found.push({ from, until: grid.weeks.length - 1, afterPeak: from > 0 });
  return found;
}

type Pins = ReadonlyMap<number, PinnedWeek<PhaseId>>;

function fillStretch(
  plan: Plan,
  grid: AthleteGrid,
  stretch: Stretch,
  pins: Pins,
  phases: PhaseId[],
): readonly Segment[] {
  const { from, until, peak } = stretch;
  const weeks = until - from + 1;
  if (peak === undefined && stretch.afterPeak) return fillAfterLastPeak(from, until, phases);
  if (stretch.afterPeak && weeks <= SEASON_SHAPE.holdMostWeeks) {
    phases.fill('hold', from, until + 1);
    return [segment('hold', from, until, peak, from)];
  }
  const rests = stretch.afterPeak && weeks >= SEASON_SHAPE.transitionFromWeeks;
  if (rests) phases[from] = 'transition';
  return fillBuilding(plan, grid, { ...stretch, from: rests ? from + 1 : from }, pins, phases);
}

/** Rest, then keep going until the plan ends: nothing is built for, so nothing is a segment of the objective. */
function fillAfterLastPeak(from: number, until: number, phases: PhaseId[]): readonly Segment[] {
  phases.fill('transition', from, Math.min(from + SEASON_SHAPE.transitionWeeks, until + 1));
  return [];
}

function fillBuilding(
  plan: Plan,
  grid: AthleteGrid,
  stretch: Stretch,
  pins: Pins,
  phases: PhaseId[],
): readonly Segment[] {
  const opens = firstInSeason(plan, grid, stretch);
  const segments: Segment[] = [];
  const pathUntil = (opens ?? stretch.until + 1) - 1;
  if (pathUntil >= stretch.from) {
    fillPath(grid, stretch.from, pathUntil, pins, phases);
    const peak = opens === undefined ? stretch.peak : undefined;
    segments.push(segment('path', stretch.from, pathUntil, peak, lastPhaseFrom(grid, stretch.from, pathUntil, phases)));
  }
  if (opens !== undefined) {
    fillInSeason(grid, opens, stretch.until, phases);
    layPins(opens, stretch.until, pins, phases);
    segments.push(
      segment('in-season', opens, stretch.until, stretch.peak, lastPhaseFrom(grid, opens, stretch.until, phases)),
    );
  }
  return segments;
}

function segment(
  form: Segment['form'],
  from: number,
  until: number,
  peak: Competition | undefined,
  last: number,
): Segment {
  return { form, from, until, lastPhaseFrom: last, ...(peak === undefined ? {} : { peak }) };
}

function firstInSeason(plan: Plan, grid: AthleteGrid, stretch: Stretch): number | undefined {
  const inside = grid.weeks.slice(stretch.from, stretch.until + 1);
  return inside.find((week) => plan.season.inSeason.some((range) => overlap(range, weekFrom(week.starts))))?.index;
}

function fillInSeason(grid: AthleteGrid, from: number, until: number, phases: PhaseId[]): void {
  phases.fill('maintenance', from, until + 1);
  const open = openWeeks(grid, from, until);
  const { shortStretchUnder, sharpeningWeeks, shortSharpeningWeeks } = SEASON_SHAPE;
  const sharpening = open.length < shortStretchUnder ? shortSharpeningWeeks : sharpeningWeeks;
  const first = open.at(-sharpening) ?? open[0];
  if (first !== undefined) phases.fill('sharpening', first, until + 1);
}

function openWeeks(grid: AthleteGrid, from: number, until: number): readonly number[] {
  const open: number[] = [];
  for (let week = from; week <= until; week += 1) if (grid.weeks[week]?.empty === false) open.push(week);
  return open;
}

function fillPath(grid: AthleteGrid, from: number, until: number, pins: Pins, phases: PhaseId[]): void {
  const open = openWeeks(grid, from, until).filter((week) => fitsPath(pins.get(week)?.value));
  const fixed = open.map((week) => asFixed(pins.get(week)?.value));
  const free = open.filter((_, index) => fixed[index] === undefined);
  const path = choosePath(fixed);
  if (path !== undefined) open.forEach((week, index) => (phases[week] = path[index] ?? 'power'));
  else choosePath(free.map(() => undefined))?.forEach((phase, index) => (phases[free[index] ?? from] = phase));
  layPins(from, until, pins, phases);
}

function layPins(from: number, until: number, pins: Pins, phases: PhaseId[]): void {
  for (const [week, pin] of pins) if (from <= week && week <= until) phases[week] = pin.value;
}

function fitsPath(phase: PhaseId | undefined): boolean {
  return phase === undefined || asFixed(phase) !== undefined;
}

function asFixed(phase: PhaseId | undefined): FixedPhase {
  return PATH_PHASES.find(({ id }) => id === phase)?.id;
}

/** First week of the last phase of a segment. */
function lastPhaseFrom(grid: AthleteGrid, from: number, until: number, phases: readonly PhaseId[]): number {
  const open = openWeeks(grid, from, until);
  const last = open.at(-1);
  if (last === undefined) return until + 1;
  let first = last;
  for (const week of open.toReversed()) {
    if (phases[week] !== phases[last]) break;
    first = week;
  }
  return first;
}

function foundation(plan: Plan, grid: AthleteGrid, pins: Pins): AthletePhases {
  const segments = stretches(plan, grid).map((one) => segment('foundation', one.from, one.until, one.peak, one.from));
  return assemble(
    grid,
    grid.weeks.map(() => 'foundation' as const),
    segments,
    pins,
  );
}

/** Pins and closures laid over the phases chosen. */
function assemble(
  grid: AthleteGrid,
  chosen: readonly PhaseId[],
  segments: readonly Segment[],
  pins: Pins,
): AthletePhases {
  const weeks = grid.weeks.map((week): PhaseWeek => {
    const at = segments.findIndex((one) => one.from <= week.index && week.index <= one.until);
    const pin = pins.get(week.index);
    const phase = pin?.value ?? chosen[week.index] ?? 'maintenance';
    const peak = segments[at]?.peak;
    return {
      phase: week.empty && phase !== 'transition' ? 'closed' : phase,
      segment: at,
      ...(peak === undefined ? {} : { peak }),
      ...(pin === undefined ? {} : { pinnedBy: pin.span }),
    };
  });
  return { weeks, segments };
}
