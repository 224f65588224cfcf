// Who of the adults jumps highest, as theirs are the knees to watch: a set of names, those with something on record about
// pain, a limit or a return first, and otherwise in the order of the plan. Nobody under age is in it, nor anybody whose
// age isn't known: children are never set against each other.

import { REVIEW } from '../../library/review.ts';
import { SHEETS } from '../../library/sheets.ts';
import { ageOn, limitsOn, returnStageOn } from '../../plan/athlete-facts.ts';
import { doneBy } from '../../plan/done-by.ts';
import type { Athlete, Plan } from '../../plan/types.ts';
import type { TrialGroup } from '../../record/trials.ts';
import type { Day } from '../../util/days.ts';
import { mean } from '../../util/statistics.ts';
import { dateWords } from '../calendar-words.ts';
import { PERCENT } from '../../util/units.ts';

export interface BestJumper {
  readonly athlete: string;
  readonly name: string;
  /** Pain, limits and a return on record; empty where there are none. */
  readonly lines: readonly string[];
}

export interface BestJumpers {
  readonly people: readonly BestJumper[];
  /** The test they are the best of, and how many adults were tested in that way. */
  readonly test: string;
  readonly method?: string;
  readonly arms?: boolean;
  readonly tested: number;
}

const TEST = 'countermovement-jump';

/** By the way most adults were tested in; undefined where too few were. `groups` are the last ones of each athlete. */
export function bestJumpers(
  plan: Plan,
  groups: readonly TrialGroup[],
  { day, nameOf }: { readonly day: Day; readonly nameOf: (athlete: Athlete) => string },
): BestJumpers | undefined {
  const adults = new Map(
    plan.athletes.filter((one) => (ageOn(one, day) ?? 0) >= REVIEW.adultAge).map((one) => [one.id, one]),
  );
  const found = commonest(
    groups.filter(({ athlete = '', test, measure }) => test === TEST && measure === 'height' && adults.has(athlete)),
  );
  const [first] = found;
  if (first === undefined || found.length < REVIEW.fewestForBest) return undefined;
  const count = Math.floor((found.length * REVIEW.bestShare) / PERCENT);
  const best = new Set(
    found
      .toSorted((a, b) => mean(b.values) - mean(a.values))
      .slice(0, count)
      .map(({ athlete }) => athlete),
  );
  const people = plan.athletes
    .filter(({ id }) => best.has(id))
    .map((one) => ({ athlete: one.id, name: nameOf(one), lines: linesOf(plan, one, day) }))
    .toSorted((a, b) => Number(b.lines.length > 0) - Number(a.lines.length > 0));
  const { test, method, arms } = first;
  return {
    people,
    test,
    ...(method !== undefined && { method }),
    ...(arms !== undefined && { arms }),
    tested: found.length,
  };
}

/** Those of the way with the most; of as many the first. */
function commonest(groups: readonly TrialGroup[]): readonly TrialGroup[] {
  const ways = new Map<string, TrialGroup[]>();
  for (const group of groups) {
    const key = JSON.stringify([group.method, group.arms]);
    const way = ways.get(key) ?? [];
    ways.set(key, way);
    way.push(group);
  }
  return [...ways.values()].toSorted((a, b) => b.length - a.length)[0] ?? [];
}

function linesOf({ record }: Plan, athlete: Athlete, day: Day): readonly string[] {
  const stage = returnStageOn(athlete, day);
  const pain = doneBy(record, athlete.id).filter(
    (row) => (row.pain ?? 0) > 0 && row.day < day && row.day >= day - SHEETS.painDays,
  );
  return [
    ...pain.slice(-1).map((row) => `pain ${row.pain ?? 0} after ${dateWords(row.day)}`),
    ...limitsOn(athlete, day).map(({ because }) => because),
    ...(stage === undefined ? [] : [`return, stage ${stage.stage} of ${stage.of}`]),
  ];
}
