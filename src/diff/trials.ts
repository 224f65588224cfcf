// Each edit tried alone: the old plan with it and the new plan without it are compiled again, for athletes whose sheets
// differ. So that a change can be told under the edit it came from. Called by the commands; which change came of which is
// found by the report, and a season is compiled when it asks for it.

import { DIFF } from '../library/diff.ts';
import type { Plan } from '../plan/types.ts';
import { applyEdits } from './apply-edits.ts';
import type { BuildDiff, SheetWeek } from './types.ts';

/** The weeks of an athlete; undefined for who is not in the plan, or where there is no plan. */
export type WeeksOf = (athlete: string) => readonly SheetWeek[] | undefined;

export interface Trials {
  /** By the number of a group of edits: the old plan with it alone. */
  readonly alone: readonly WeeksOf[];
  /** Likewise: the new plan without it. */
  readonly without: readonly WeeksOf[];
  /** What all edits together give: who has other weeks in the new plan changed for yet another reason. */
  readonly all: WeeksOf;
}

/** Undefined where there is nothing to tell apart, or more of it than is compiled. */
export function tryEdits(
  { edits = [], plans, athletes }: BuildDiff,
  compile: (plan: Plan) => WeeksOf,
): Trials | undefined {
  const kept = athletes.filter(({ kind }) => kind === 'kept').length;
  // Of two edits the one without the other is the other alone.
  const plansToCompile = (edits.length > 2 ? edits.length + edits.length : edits.length) + 1;
  if (plans === undefined || edits.length < 2 || plansToCompile * kept > DIFF.mostSeasons) return undefined;
  const known = new Map<string, WeeksOf>();
  const weeksWith = (isTaken: (index: number) => boolean): WeeksOf => {
    const indices = edits.map((_, index) => index).filter(isTaken);
    const key = indices.join();
    const made = known.get(key) ?? remembered(() => compiled(indices));
    known.set(key, made);
    return made;
  };
  const compiled = (indices: readonly number[]): WeeksOf => {
    const plan = applyEdits({ ...plans, edits: indices.flatMap((index) => edits[index] ?? []) });
    return plan === undefined ? () => undefined : compile(plan);
  };
  return {
    alone: edits.map((_, index) => weeksWith((one) => one === index)),
    without: edits.map((_, index) => weeksWith((one) => one !== index)),
    all: weeksWith(() => true),
  };
}

/** Made when the first athlete is asked for, each athlete once. */
function remembered(make: () => WeeksOf): WeeksOf {
  let of: WeeksOf | undefined;
  const known = new Map<string, ReturnType<WeeksOf>>();
  return (athlete) => {
    of ??= make();
    if (!known.has(athlete)) known.set(athlete, of(athlete));
    return known.get(athlete);
  };
}
