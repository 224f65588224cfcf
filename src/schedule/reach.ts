// The weekly rise it would take to have so many contacts in a given week, every other bound standing. Called by
// `footfall reach`.

import type { Season } from './conflicts/facts.ts';
import { ceilingLine } from './contacts/search.ts';
import type { WeekTerms } from './contacts/terms.ts';
import { seasonTerms } from './season-terms.ts';

/** Rises in per cent that are tried, up to this. */
export const MOST_PERCENT = 100;

/** Whole per cent; undefined where no rise of 100 % or less does it. `week` counts from 0. */
export function riseNeeded(
  { plan, athlete, asOf, unwritten }: Season,
  contacts: number,
  week: number,
): number | undefined {
  const { terms, start } = seasonTerms(plan, athlete, asOf, unwritten);
  for (let percent = 1; percent <= MOST_PERCENT; percent += 1) {
    const line = ceilingLine(
      terms.slice(0, week + 1).map((one) => withRise(one, percent)),
      start,
    );
    if ((line[week]?.most ?? 0) >= contacts) return percent;
  }
  return undefined;
}

/** The week as it would be with another weekly rise; less than it has changes nothing. */
export function withRise(terms: WeekTerms, percent: number): WeekTerms {
  if (terms.growth.kind !== 'rise') return terms;
  return { ...terms, growth: { ...terms.growth, percent: Math.max(percent, terms.growth.percent) } };
}
