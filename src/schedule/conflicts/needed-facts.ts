// A smallest set of lines that can't all hold: a deletion filter over the lines of a plan, whatever it is that they stand
// against. Called by contacts-conflict.ts and day-conflict.ts.

import { without } from './facts.ts';
import type { Fact, Season } from './facts.ts';

/**
 * Taken out one by one for as long as what is left still can't hold. Taking a line out may also make things worse (a
 * break that was an easy week), so it is gone over again until every line that is left is needed. Empty where no line of
 * these stands against it.
 */
export function neededFacts(
  season: Season,
  among: readonly Fact[],
  isPossible: (season: Season) => boolean,
): readonly Fact[] {
  const left = new Set<object>();
  let facts = among;
  for (let before = facts.length + 1; facts.length < before;) {
    before = facts.length;
    for (const { item } of facts) {
      left.add(item);
      if (isPossible(without(season, left))) left.delete(item);
    }
    facts = facts.filter(({ item }) => !left.has(item));
  }
  return facts;
}

/** Whether taking out any one of the lines is enough, whatever else the plan says. */
export const isEachEnough = (
  season: Season,
  facts: readonly Fact[],
  isPossible: (season: Season) => boolean,
): boolean => facts.every(({ item }) => isPossible(without(season, new Set([item]))));
