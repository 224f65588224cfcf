// The phases of a season as they are described, from its dates and its empty weeks, by code of its own: the paths are those
// of every-path.ts.

import { SEASON_SHAPE } from '../../../src/library/phases.ts';
import type { PhaseId } from '../../../src/library/types.ts';
import { appliesTo, overlap } from '../../../src/plan/applies.ts';
import { ageOn } from '../../../src/plan/athlete-facts.ts';
import type { Athlete, DayRange, Plan } from '../../../src/plan/types.ts';
import type { AthleteGrid } from '../../../src/schedule/types.ts';
import { bestOfAllPaths, ROWS } from './every-path.ts';
import type { PathRun, PathWeek } from './every-path.ts';

interface Week {
  readonly range: DayRange;
  readonly empty: boolean;
  /** The last pin of a phase that reaches it, where it stands. */
  readonly pinned: PhaseId | undefined;
  readonly inSeason: boolean;
  /** The first day of a peak lies in it. */
  readonly peak: boolean;
  phase?: PhaseId;
  /** Of the last phase of what is built: its shortfall counts first. */
  last?: boolean;
}

export interface PlainPhase {
  readonly phase: PhaseId;
  readonly last: boolean;
}

/** A phase for every week, and whether it is the last of what is built up to a peak or a season. */
export function plainPhases(plan: Plan, { athlete, weeks: cells }: AthleteGrid): readonly PlainPhase[] {
  const mine = <T extends { readonly who: Parameters<typeof appliesTo>[0] }>(items: readonly T[]): readonly T[] =>
    items.filter(({ who }) => appliesTo(who, athlete));
  const pins = mine(plan.pins);
  const peaks = mine(plan.competitions).filter(({ prepare }) => prepare === 'peak');
  const weeks = cells.map(({ starts, empty }): Week => {
    const range = { from: starts, until: starts + 6 };
    const phases = pins
      .filter((pin) => overlap(pin.range, range))
      .flatMap(({ effects }) => effects.flatMap((effect) => (effect.kind === 'phase' ? [effect.phase] : [])));
    return {
      range,
      empty,
      pinned: isYoung(plan, athlete) ? phases.slice(-1).find((phase) => OF_CHILDREN.includes(phase)) : phases.at(-1),
      inSeason: plan.season.inSeason.some((one) => overlap(one, range)),
      peak: peaks.some((one) => range.from <= one.range.from && one.range.from <= range.until),
    };
  });
  if (inFoundation(plan, athlete)) {
    for (const week of weeks) {
      week.phase = 'foundation';
      week.last = true;
    }
  } else layAll(weeks);
  return weeks.map(({ empty, pinned, phase = 'maintenance', last = false }) => {
    const laid = pinned ?? phase;
    return { phase: empty && laid !== 'transition' ? 'closed' : laid, last: last && !empty };
  });
}

/** No other phase can be pinned for a child. */
const OF_CHILDREN: readonly PhaseId[] = ['foundation', 'transition'];

const isYoung = (plan: Plan, athlete: Athlete): boolean =>
  (ageOn(athlete, plan.season.starts) ?? Infinity) < SEASON_SHAPE.foundationUnderAge;

/** Too young or too new to jumping for a path to a peak. */
export function inFoundation(plan: Plan, athlete: Athlete): boolean {
  const isNew =
    athlete.levels[0]?.is === 'beginner' && athlete.now.value.contactsASession < SEASON_SHAPE.foundationUnderContacts;
  return isYoung(plan, athlete) || isNew;
}

/** Cut behind each week of a peak. */
function layAll(weeks: readonly Week[]): void {
  let rest = weeks;
  let isFirst = true;
  while (rest.length > 0) {
    const ends = rest.findIndex(({ peak }) => peak);
    const stretch = ends < 0 ? rest : rest.slice(0, ends + 1);
    if (isFirst) build(stretch);
    else if (ends < 0) give(stretch.slice(0, SEASON_SHAPE.transitionWeeks), 'transition');
    else if (stretch.length <= SEASON_SHAPE.holdMostWeeks) give(stretch, 'hold');
    else if (stretch.length < SEASON_SHAPE.transitionFromWeeks) build(stretch);
    else {
      give(stretch.slice(0, 1), 'transition');
      build(stretch.slice(1));
    }
    isFirst = false;
    rest = rest.slice(stretch.length);
  }
}

function give(weeks: readonly Week[], phase: PhaseId): void {
  for (const week of weeks) week.phase = phase;
}

const isOpen = ({ empty }: Week): boolean => !empty;

function build(weeks: readonly Week[]): void {
  const opens = weeks.findIndex(({ inSeason }) => inSeason);
  const path = (opens < 0 ? weeks : weeks.slice(0, opens)).filter(isOpen);
  layPath(path);
  markLast(path);
  if (opens < 0) return;
  const season = weeks.slice(opens).filter(isOpen);
  const short = season.length < SEASON_SHAPE.shortStretchUnder;
  give(season, 'maintenance');
  give(season.slice(-(short ? SEASON_SHAPE.shortSharpeningWeeks : SEASON_SHAPE.sharpeningWeeks)), 'sharpening');
  markLast(season);
}

const standing = ({ pinned, phase }: Week): PhaseId | undefined => pinned ?? phase;

/** The open weeks at the end that have the phase of the last one. */
function markLast(open: readonly Week[]): void {
  const [last] = open.slice(-1);
  for (const week of open.toReversed()) {
    if (last === undefined || standing(week) !== standing(last)) return;
    week.last = true;
  }
}

const onPath = (phase: PhaseId | undefined): PathWeek | undefined => ROWS.find((one) => one === phase);

/** Weeks pinned to a phase that is on no path stand aside; where the pins allow no path the others have one of their own. */
function layPath(open: readonly Week[]): void {
  const weeks = open.filter(({ pinned }) => pinned === undefined || onPath(pinned) !== undefined);
  const found = plainPath(weeks.map(({ pinned }) => onPath(pinned)));
  const laid = found === undefined ? weeks.filter(({ pinned }) => pinned === undefined) : weeks;
  const path = found ?? plainPath(laid.map(() => undefined)) ?? [];
  laid.forEach((week, at) => (week.phase = path[at] ?? 'maintenance'));
}

const free = new Map<number, readonly PathWeek[] | undefined>();

function plainPath(fixed: readonly (PathWeek | undefined)[]): readonly PathWeek[] | undefined {
  const isFree = fixed.every((phase) => phase === undefined);
  if (isFree && free.has(fixed.length)) return free.get(fixed.length);
  const found = fixed.length === 1 ? [fixed[0] ?? 'power'] : weeksOf(bestOfAllPaths(fixed));
  if (isFree) free.set(fixed.length, found);
  return found;
}

const weeksOf = (runs: readonly PathRun[] | undefined): readonly PathWeek[] | undefined =>
  runs?.flatMap(({ phase, length }) => Array.from({ length }, () => phase));
