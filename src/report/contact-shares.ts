// Splits a session's contacts by direction, cycle and tier, in whole contacts. Called by the table `sessions`. A drill that
// goes two ways counts in both by its shares, and the rounding never loses a contact.

import type { BuiltLine } from '../build/types.ts';
import { LOADED_JUMP_COUNTS_AS } from '../library/lifting.ts';
import { DIRECTIONS } from '../library/types.ts';
import type { Direction, Drill, Tier } from '../library/types.ts';
import { PERCENT } from '../util/units.ts';

export interface ContactShares {
  /** Add up to the session's contacts. */
  readonly directions: Readonly<Record<Direction, number>>;
  /** Contacts of drills with a fast stretch-shortening cycle. */
  readonly fast: number;
  /** Add up to the session's contacts. */
  readonly tiers: Readonly<Record<Tier, number>>;
}

/** The shares of some lines; `findDrill` gives the drill of an exercise, undefined for lifts. */
export function contactShares(
  lines: readonly BuiltLine[],
  findDrill: (exercise: string) => Drill | undefined,
): ContactShares {
  const hundredths: Record<Direction, number> = { vertical: 0, horizontal: 0, lateral: 0 };
  const tiers: Record<Tier, number> = { low: 0, moderate: 0, high: 0 };
  let fast = 0;
  let total = 0;
  for (const { contacts, exercise } of lines) {
    if (contacts === 0) continue;
    const drill = findDrill(exercise);
    const direction = drill?.direction ?? LOADED_JUMP_COUNTS_AS.direction;
    for (const way of DIRECTIONS) hundredths[way] += contacts * direction[way];
    tiers[drill?.tier ?? LOADED_JUMP_COUNTS_AS.tier] += contacts;
    if ((drill?.cycle ?? LOADED_JUMP_COUNTS_AS.cycle) === 'fast') fast += contacts;
    total += contacts;
  }
  return { directions: wholeShares(hundredths, total), fast, tiers };
}

/** Rounds hundredths to whole contacts that add up to `total`: the largest remainders get what is left over. */
function wholeShares(hundredths: Readonly<Record<Direction, number>>, total: number): Record<Direction, number> {
  const whole: Record<Direction, number> = { vertical: 0, horizontal: 0, lateral: 0 };
  let left = total;
  for (const way of DIRECTIONS) {
    whole[way] = Math.floor(hundredths[way] / PERCENT);
    left -= whole[way];
  }
  const byRemainder = [...DIRECTIONS].sort((a, b) => (hundredths[b] % PERCENT) - (hundredths[a] % PERCENT));
  for (const way of byRemainder.slice(0, left)) whole[way] += 1;
  return whole;
}
