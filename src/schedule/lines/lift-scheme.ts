// Sets, reps and share of the maximum, or reps in reserve, of one lift in one session: the phase's row for the loading
// week, and what level, age, a light day or an easy week takes off. Called for every lift. Nothing here knows kilos.

import type { Level, Lift } from '../../library/types.ts';
import type { LoadStep, PhaseLifting, ReserveStep } from '../../library/lifting.ts';
import { getLoadStep, LIFTING } from '../../library/lifting.ts';
import { percentForReps, repsAtPercent } from '../../library/load-chart.ts';
import type { Standing } from './standing.ts';
import { PERCENT } from '../../util/units.ts';

/** What a session and its week ask of the lifting. */
export interface LiftDay {
  readonly scheme: PhaseLifting;
  /** From 1 within the block; an easy week repeats the loading week before it. */
  readonly loadingWeek: number;
  /** Sets are cut: a deload, a taper, the first step of a return. */
  readonly easy: boolean;
  /** Lower-body lifting may reach the share that counts as heavy. */
  readonly heavyAllowed: boolean;
  /** Share of the maximum from which lifting is heavy, in per cent. */
  readonly heavyFrom: number;
  /** Fewest reps in reserve on the load chart. */
  readonly leastReserve: number;
}

export interface Prescription {
  readonly sets: number;
  readonly reps: number;
  /** Where the load is a share of a maximum. */
  readonly percent?: number;
  readonly reserve?: number;
  /** What held the load under the phase's row: a rule or fact. */
  readonly heldBy?: string;
}

type Clamped = Pick<Lift, 'reps'>;

const clamp = (lift: Clamped, reps: number): number => Math.max(lift.reps.from, Math.min(lift.reps.to, reps));

/** The sets of an easy day: the library's share of the usual ones, one at least. C. */
export function easySets(sets: number, day: LiftDay): number {
  return day.easy ? Math.max(1, Math.round((sets * LIFTING.easySets) / PERCENT)) : sets;
}

/** The phase's row for the loading week of a main lift, a loaded jump or a fast pull; undefined where it has none. */
export function rowFor(lift: Lift, day: LiftDay): LoadStep | undefined {
  const { scheme, loadingWeek } = day;
  const rows =
    lift.pattern === 'loaded-jump'
      ? scheme.loadedJump
      : lift.pattern === 'pull-from-floor'
        ? scheme.fastPull
        : scheme.main;
  return rows === undefined ? undefined : getLoadStep(rows, scheme.afterLast, loadingWeek);
}

/** A lift whose load is a share of a known maximum. */
export function loadedPrescription(lift: Lift, row: LoadStep, day: LiftDay, standing: Standing): Prescription {
  const reps = Math.max(clamp(lift, row.reps), standing.youngLifter ? standing.values.youthLeastReps : 1);
  const caps = percentCaps(lift, day, standing, reps);
  let percent = row.percent;
  let heldBy: string | undefined;
  for (const cap of caps) {
    if (cap.most < percent) {
      percent = cap.most;
      heldBy = cap.by;
    }
  }
  return { sets: easySets(row.sets, day), reps, percent, ...(heldBy === undefined ? {} : { heldBy }) };
}

interface Cap {
  readonly by: string;
  readonly most: number;
}

function percentCaps(lift: Lift, day: LiftDay, standing: Standing, reps: number): readonly Cap[] {
  return [
    { by: 'level', most: levelMost(standing.level) },
    { by: 'youth-load', most: youthMost(standing) },
    { by: 'not-heavy', most: lift.lower && !day.heavyAllowed ? day.heavyFrom - LIFTING.lightBelow : PERCENT },
    { by: 'load-reserve', most: percentForReps(reps + day.leastReserve) ?? LIFTING.beyondChart },
  ];
}

const levelMost = (level: Level): number => LIFTING.mostPercent[level];

function youthMost(standing: Standing): number {
  if (!standing.youngLifter) return PERCENT;
  const { values, cleared } = standing;
  return cleared.has('loads') ? values.youthClearedPercent : values.youthMostPercent;
}

/**
 * A main lift without a known maximum: the same reps, with as much in reserve as the row's share would leave, or more.
 * Undefined where no number of reps is as light as it has to be.
 */
export function reservePrescription(
  lift: Lift,
  row: LoadStep,
  day: LiftDay,
  standing: Standing,
): Prescription | undefined {
  if (isWeightless(lift)) return bodyPrescription(lift, row, day, standing);
  const light = isLight(lift, day);
  const reps = clamp(lift, light || standing.youngLifter ? Math.max(row.reps, LIFTING.lightReps) : row.reps);
  const young = standing.youngLifter ? LIFTING.youthReserve : 0;
  const wanted = Math.max(LIFTING.unknownMaxReserve, day.leastReserve, repsAtPercent(row.percent) - reps) + young;
  const reserve = Math.min(wanted, LIFTING.mostReserve);
  const most = Math.min(levelMost(standing.level), youthMost(standing));
  const plain = { sets: easySets(row.sets, day), reps, reserve, ...(light ? { heldBy: 'not-heavy' } : {}) };
  return asLight(lift, plain, most, light ? day.heavyFrom : undefined);
}

interface WithReserve extends Prescription {
  readonly reserve: number;
}

/** Done with the body's own weight, or with a band. */
const isWeightless = ({ loading }: Lift): boolean => loading === 'body' || loading === 'band';

const isLight = (lift: Lift, day: LiftDay): boolean => lift.lower && !day.heavyAllowed;

/**
 * The reps with more in reserve, and then more of them, until by the load chart they are `most` per cent of the maximum
 * or less, and under `under`. Undefined where neither is enough.
 */
function asLight(lift: Lift, plain: WithReserve, most: number, under: number | undefined): Prescription | undefined {
  let { reps, reserve } = plain;
  const fits = (): boolean => {
    const percent = percentForReps(reps + reserve) ?? LIFTING.beyondChart;
    return percent <= most && (under === undefined || percent < under);
  };
  while (reserve < LIFTING.mostReserve && !fits()) reserve += 1;
  while (reps < lift.reps.to && !fits()) reps += 1;
  return fits() ? { ...plain, reps, reserve } : undefined;
}

function bodyPrescription(lift: Lift, row: LoadStep, day: LiftDay, standing: Standing): Prescription {
  const reps = lift.held === true ? holdSeconds(lift, standing) : clamp(lift, LIFTING.bodyReps);
  const sets = easySets(Math.min(row.sets, LIFTING.bodySets), day);
  return lift.held === true ? { sets, reps } : { sets, reps, reserve: day.scheme.assistance.reserve };
}

/**
 * Assistance and trunk without a known maximum: reps with reserve. Undefined where no number of reps is as light as it has
 * to be.
 */
export function assistancePrescription(
  lift: Lift,
  step: ReserveStep,
  day: LiftDay,
  standing: Standing,
): Prescription | undefined {
  if (lift.held === true) return { sets: easySets(step.sets, day), reps: holdSeconds(lift, standing) };
  const plain = plainAssistance(lift, step, day, standing);
  if (isWeightless(lift)) return plain;
  return asLight(lift, plain, youthMost(standing), isLight(lift, day) ? day.heavyFrom : undefined);
}

/** The reps of the phase, with a reserve that is larger for the young. */
function plainAssistance(lift: Lift, step: ReserveStep, day: LiftDay, standing: Standing): WithReserve {
  const reserve = step.reserve + (standing.youngLifter ? LIFTING.youthReserve : 0);
  return { sets: easySets(step.sets, day), reps: clamp(lift, Math.max(step.reps, lightReps(lift))), reserve };
}

/** Lifts made for many reps get more of them than the phase's heavier assistance. */
const lightReps = (lift: Clamped): number => (lift.reps.to >= LIFTING.manyReps ? LIFTING.bodyReps : 0);

/** Assistance by a known maximum: the share of it that stands for the reps with so many in reserve. */
export function sharePrescription(lift: Lift, step: ReserveStep, day: LiftDay, standing: Standing): Prescription {
  const plain = plainAssistance(lift, step, day, standing);
  const percent = percentForReps(plain.reps + Math.max(plain.reserve, day.leastReserve)) ?? LIFTING.beyondChart;
  return loadedPrescription(lift, { sets: plain.sets, reps: plain.reps, percent }, { ...day, easy: false }, standing);
}

/** Held lifts are longer by level, in steps that a clock shows. */
function holdSeconds(lift: Lift, standing: Standing): number {
  const share = LIFTING.holdShare[standing.level];
  const seconds = lift.reps.from + ((lift.reps.to - lift.reps.from) * share) / PERCENT;
  return Math.max(lift.reps.from, Math.floor(seconds / LIFTING.holdStep) * LIFTING.holdStep);
}
