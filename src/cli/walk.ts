// A build's athletes as they are asked for, with their findings gathered on the way. So the compiling, the writing and
// the counting are one walk, and a big squad is never in memory.

import type { Build, BuiltAthlete } from '../build/types.ts';
import { planFindings } from '../compile.ts';
import type { Severity } from '../diagnostics/entry.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import { settleForLongRun } from '../host/engine.ts';
import type { Athlete, Plan, Waiver } from '../plan/types.ts';
import { createFindingKinds } from '../report/finding-kinds.ts';
import { selectsAthlete } from '../report/selection.ts';
import type { Selection } from '../report/selection.ts';

/** Kept of each severity to be shown; all are counted. */
const MOST_KEPT = 2_000;
/** Athletes after which a run is a long one: about as many as make up for what is then spent on the others. */
const MOST_IN_SHORT_RUN = 100;

export interface Findings {
  readonly add: (diagnostics: Iterable<Diagnostic>) => void;
  readonly count: (severity: Severity) => number;
  /** The first of them, in the order they came. */
  readonly kept: (severity: Severity) => readonly Diagnostic[];
  /** A line for each kind of all of them. */
  readonly kinds: (severity: Severity) => readonly string[];
}

/** Counts every finding it is given and keeps the first of each severity, so that memory has an end. */
export function createFindings(): Findings {
  const counts: Record<Severity, number> = { error: 0, warning: 0, notice: 0 };
  const kept: Record<Severity, Diagnostic[]> = { error: [], warning: [], notice: [] };
  const kinds = createFindingKinds();
  return {
    add: (diagnostics) => {
      for (const diagnostic of diagnostics) {
        counts[diagnostic.severity] += 1;
        kinds.add(diagnostic);
        if (kept[diagnostic.severity].length < MOST_KEPT) kept[diagnostic.severity].push(diagnostic);
      }
    },
    count: (severity) => counts[severity],
    kept: (severity) => kept[severity],
    kinds: kinds.lines,
  };
}

/** The athletes who are asked for, whatever is known of each. */
export interface Walked<T> {
  /** To be walked once. */
  readonly athletes: Iterable<T>;
  /** Walks everybody for what is found alone. */
  readonly toEnd: () => void;
  /**
   * What is found once for the plan, to be asked for when the athletes have been walked: waivers that freed nothing.
   * Nothing when only some were walked, as a waiver may have been for the others.
   */
  readonly planFindings: () => readonly Diagnostic[];
}

export interface Walk extends Omit<Walked<BuiltAthlete>, 'athletes'> {
  /** The build with only the athletes who are asked for. */
  readonly build: Build;
}

const isEverybody = ({ who, shard }: Selection): boolean => who.kind === 'everybody' && shard === undefined;

/** `of` tells of one athlete; `pass` is given each on the way. */
export function walkAthletes<T extends Pick<BuiltAthlete, 'freed'>>(
  plan: Plan,
  selection: Selection,
  of: (athlete: Athlete) => T,
  pass: (one: T) => void,
): Walked<T> {
  const freed = new Set<Waiver>();
  function* passing(): Generator<T> {
    let walked = 0;
    for (const athlete of plan.athletes) {
      if (!selectsAthlete(selection, athlete)) continue;
      walked += 1;
      if (walked > MOST_IN_SHORT_RUN) settleForLongRun();
      const one = of(athlete);
      for (const waiver of one.freed) freed.add(waiver);
      pass(one);
      yield one;
    }
  }
  return {
    athletes: { [Symbol.iterator]: passing },
    toEnd: () => {
      const athletes = passing();
      let step = athletes.next();
      while (step.done !== true) step = athletes.next();
    },
    planFindings: () => (isEverybody(selection) ? planFindings(plan, [{ freed }]) : []),
  };
}

/** A build to be walked once; `pass` is given each athlete on the way. */
export function walk(build: Build, selection: Selection, pass: (built: BuiltAthlete) => void): Walk {
  const { athletes, ...walked } = walkAthletes(build.plan, selection, build.athlete, pass);
  return {
    ...walked,
    build: {
      plan: build.plan,
      ...(build.asOf !== undefined && { asOf: build.asOf }),
      weeks: build.weeks,
      get mark() {
        return build.mark;
      },
      athlete: build.athlete,
      athletes,
    },
  };
}
