// Trials of jump tests gathered into what may be worked out together: one athlete, one day, one test, one method, one use
// of the arms. Two methods never meet in one mean, nor in one change: they are two different measures. J2, J14 (P).

import {
  JUMP_TESTS,
  LEAST_JUMP_METRES,
  MOST_JUMP_METRES,
  PLAUSIBLE_NEWTONS,
  PLAUSIBLE_SECONDS,
  STANDARD_GRAVITY,
} from '../library/jump-tests.ts';
import { METRES_A_UNIT, SECONDS_A_UNIT } from '../library/test-units.ts';
import type { Day } from '../util/days.ts';
import { mean, sampleDeviation } from '../util/statistics.ts';
import { GRAMS_A_KILO, GRAMS_A_POUND } from '../util/units.ts';
import { heightOfFlight } from './jumps.ts';
import { addTo } from '../util/grouped.ts';

export interface Trial {
  /** Absent: the one the command line speaks of. */
  readonly athlete?: string;
  readonly day?: Day;
  readonly test: string;
  /** From 1; absent: in the order they come. */
  readonly trial?: number;
  readonly value: number;
  readonly unit: string;
  readonly method?: string;
  readonly arms?: boolean;
  /** On the ground before a drop jump's rise. */
  readonly contactSeconds?: number;
  /** From the start of a counter-movement to leaving the ground. */
  readonly takeOffSeconds?: number;
}

export interface TrialGroup {
  readonly athlete?: string;
  readonly day?: Day;
  readonly test: string;
  readonly method?: string;
  readonly arms?: boolean;
  /** Metres, newtons, or a ratio as the device gave it. */
  readonly measure: 'height' | 'force' | 'index';
  readonly values: readonly number[];
  readonly trials: readonly Trial[];
}

/** A scale between bar and floor shows the mass that would weigh as much. */
const PULL = 'isometric-pull';
const NEWTONS: Readonly<Record<string, number>> = {
  N: 1,
  kg: STANDARD_GRAVITY,
  lb: (STANDARD_GRAVITY * GRAMS_A_POUND) / GRAMS_A_KILO,
};
/** Tests whose lengths are heights; a time is one in the air in the jump tests alone. */
const HEIGHT_TESTS: ReadonlySet<string> = new Set([...JUMP_TESTS, 'jump-and-reach']);
const FLIGHT_TESTS: ReadonlySet<string> = new Set(JUMP_TESTS);
const FLIGHT = 'time in the air';

/** What a trial measures, in metres, newtons or as a ratio; undefined where it isn't a jump test or nobody jumps so. */
export function measured({ test, value, unit }: Trial): (Pick<TrialGroup, 'measure'> & { value: number }) | undefined {
  const metres = METRES_A_UNIT[unit];
  const seconds = SECONDS_A_UNIT[unit];
  if (metres !== undefined && HEIGHT_TESTS.has(test)) return height(value * metres);
  if (seconds !== undefined && FLIGHT_TESTS.has(test)) return height(heightOfFlight(value * seconds));
  const newtons = unit === 'N' || test === PULL ? NEWTONS[unit] : undefined;
  if (newtons !== undefined)
    return isWithin(PLAUSIBLE_NEWTONS, value * newtons) ? { measure: 'force', value: value * newtons } : undefined;
  return unit === 'index' && value > 0 ? { measure: 'index', value } : undefined;
}

const isWithin = ({ from, to }: { readonly from: number; readonly to: number }, value: number): boolean =>
  from <= value && value <= to;

/** Whether a foot may be so long on the ground, in seconds, or take so long to leave it. */
export const isPlausibleTime = (seconds: number): boolean => isWithin(PLAUSIBLE_SECONDS, seconds);

function height(metres: number): ReturnType<typeof measured> {
  return metres >= LEAST_JUMP_METRES && metres <= MOST_JUMP_METRES ? { measure: 'height', value: metres } : undefined;
}

/** Rows that hold a time of a jump instead of a jump: whose it is. */
const TIMES: Readonly<Record<string, { readonly test: string; readonly field: 'contactSeconds' | 'takeOffSeconds' }>> =
  {
    'contact-time': { test: 'drop-jump', field: 'contactSeconds' },
    'take-off-time': { test: 'countermovement-jump', field: 'takeOffSeconds' },
  };

/**
 * Jumps with the times that were measured with them: of the same athlete, day, trial and way. A time that belongs to no
 * height stays a row by itself.
 */
export function withTimes(trials: readonly Trial[]): readonly Trial[] {
  const times = timesByJump(trials);
  if (times.size === 0) return trials;
  const joined = new Set<Trial>();
  const jumps = trials.map((jump) => {
    if (TIMES[jump.test] !== undefined || measured(jump)?.measure !== 'height') return jump;
    let timed = jump;
    for (const { field, seconds, row } of times.get(jumpKey(jump, jump.test)) ?? []) {
      timed = { ...timed, [field]: seconds };
      joined.add(row);
    }
    return timed;
  });
  return jumps.filter((one) => !joined.has(one));
}

interface JumpTime {
  readonly field: 'contactSeconds' | 'takeOffSeconds';
  readonly seconds: number;
  readonly row: Trial;
}

/** Rows that hold a time, by the jump they are of. A row without the number of its trial is of none. */
function timesByJump(trials: readonly Trial[]): ReadonlyMap<string, readonly JumpTime[]> {
  const times = new Map<string, JumpTime[]>();
  for (const row of trials) {
    const of = TIMES[row.test];
    const unit = SECONDS_A_UNIT[row.unit];
    if (of === undefined || unit === undefined || row.trial === undefined || !isPlausibleTime(row.value * unit))
      continue;
    const key = jumpKey(row, of.test);
    addTo(times, key, { field: of.field, seconds: row.value * unit, row });
  }
  return times;
}

const jumpKey = ({ athlete, day, trial, method, arms }: Trial, test: string): string =>
  JSON.stringify([athlete, day, test, trial, method, arms]);

/** The groups in the order of their first trials; what `measured` can't read is left out. */
export function groupTrials(trials: readonly Trial[]): readonly TrialGroup[] {
  const groups = new Map<string, TrialGroup & { readonly values: number[]; readonly trials: Trial[] }>();
  for (const trial of trials) {
    const found = measured(trial);
    if (found === undefined) continue;
    const { athlete, day, test, arms } = trial;
    const method = trial.method ?? (SECONDS_A_UNIT[trial.unit] === undefined ? undefined : FLIGHT);
    const key = JSON.stringify([athlete, day, test, method, arms, found.measure]);
    const group = groups.get(key) ?? {
      test,
      ...(athlete !== undefined && { athlete }),
      ...(day !== undefined && { day }),
      ...(method !== undefined && { method }),
      ...(arms !== undefined && { arms }),
      measure: found.measure,
      values: [],
      trials: [],
    };
    groups.set(key, group);
    group.values.push(found.value);
    group.trials.push(trial);
  }
  return [...groups.values()];
}

/** Whether two groups measure in the same way, so that one may be compared with, or divided by, the other. */
export function isSameWay(one: TrialGroup, other: TrialGroup): boolean {
  return (
    one.athlete === other.athlete &&
    one.method === other.method &&
    one.arms === other.arms &&
    one.measure === other.measure
  );
}

export interface Spread {
  readonly count: number;
  readonly mean: number;
  readonly best: number;
  /** Sample standard deviation; absent for a single value. */
  readonly deviation?: number;
}

/** Mean, best and spread of at least one value. The mean follows change better than the best: J12 (P). */
export function spreadOf(values: readonly number[]): Spread {
  return {
    count: values.length,
    mean: mean(values),
    best: Math.max(...values),
    ...(values.length > 1 && { deviation: sampleDeviation(values) }),
  };
}
