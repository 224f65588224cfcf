// Shares the contacts of one session among its drills, exactly and at least cost: near the week's directions and its
// band of fast work, even, in neat sets. All ways the drills' own sets and reps add up to the session are looked at
// (allot-search.ts); called through a cache. Ranges are widened only when nothing else adds up, and the line says so.

import { ALLOTTING } from '../../library/families.ts';
import { DIRECTIONS } from '../../library/types.ts';
import { VOLUME } from '../../library/volume.ts';
import { search } from './allot-search.ts';
import type { Found } from './allot-search.ts';
import { targetOf } from './allot-target.ts';
import type { Aim, Target } from './allot-target.ts';
import type { Candidate, Choice, Manner } from './choices.ts';
import { knownChoices } from './choices.ts';
import type { Tally } from './tally.ts';

export interface Allotted {
  /** One for each candidate, in their order; undefined where the drill is left out. */
  readonly choices: readonly (Choice | undefined)[];
  readonly widened: boolean;
  readonly cost: number;
  /** A rule will name the week for its directions or its fast work. */
  readonly named: boolean;
}

interface Mode extends Manner {
  /** The most candidates that are looked at, as the wider ways are many. */
  readonly most: number;
  /** Where even the best is far off, the next mode is looked at too. */
  readonly coarse?: boolean;
}

const MODES: readonly Mode[] = [
  { widened: false, step: VOLUME.step, most: 6, coarse: true },
  { widened: false, step: 1, most: 4 },
  { widened: true, step: VOLUME.step, most: 4 },
  { widened: true, step: 1, most: 3 },
];

/** For a session whose jumps alone outlast its slot. */
const BRIEF_MODES: readonly Mode[] = [{ widened: false, step: 1, most: 4, brief: true }];

/** The best way to share out so many contacts, or undefined when no way adds up to them; `brief` for the fewest sets. */
export function allot(
  candidates: readonly Candidate[],
  contacts: number,
  week: Tally,
  aim: Aim,
  brief = false,
): Allotted | undefined {
  const target = targetOf(week, contacts, aim);
  let best: Found | undefined;
  for (const mode of brief ? BRIEF_MODES : MODES) {
    const looked = candidates.slice(0, mode.most);
    const options = looked.map((candidate) => optionsOf(candidate, contacts, mode));
    const found = search(looked, options, contacts, target, best?.cost ?? Number.POSITIVE_INFINITY);
    const widened = best === undefined && mode.widened;
    best = found ?? best;
    if (best === undefined || (mode.coarse === true && best.cost > ALLOTTING.goodEnough)) continue;
    const { cost } = best;
    const choices = candidates.map((_, index) => best?.choices[index]);
    return { choices, widened, cost, named: isNamed(candidates, choices, target) };
  }
  return undefined;
}

/** What a candidate may have, in ascending order of contacts. An uneven line isn't a very small one, where there is room. */
function optionsOf(candidate: Candidate, contacts: number, mode: Mode): readonly Choice[] {
  const most = Math.min(contacts, candidate.most);
  const uneven = mode.step !== VOLUME.step && mode.brief !== true;
  const least = uneven && most >= ALLOTTING.leastUneven ? ALLOTTING.leastUneven : 0;
  const choices = knownChoices(candidate.drill, mode, candidate.sets);
  return choices.filter((choice) => choice.contacts >= least && choice.contacts <= most);
}

/** Whether a rule will name the week for what this session comes to. */
function isNamed(candidates: readonly Candidate[], choices: readonly (Choice | undefined)[], target: Target): boolean {
  if (!target.last) return false;
  const sums = { vertical: 0, horizontal: 0, lateral: 0, fast: 0 };
  candidates.forEach(({ drill }, index) => {
    const contacts = choices[index]?.contacts ?? 0;
    for (const direction of DIRECTIONS) sums[direction] += drill.direction[direction] * contacts;
    if (drill.cycle === 'fast') sums.fast += contacts;
  });
  if (sums.fast < target.fastFrom || sums.fast > target.fastTo) return true;
  return DIRECTIONS.some((direction) => Math.abs(sums[direction] - target[direction]) > target.slack);
}
