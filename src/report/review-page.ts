// The Monday page in its order, for whoever reads it on a terminal or on paper: what to decide, what went otherwise than
// written, the week ahead, and the numbers as sections.

import { dateWithYear, weekdayName } from './calendar-words.ts';
import type { Review } from './review.ts';
import { groupSection, lastWeek, plannedAndDone } from './review/sections/load-sections.ts';
import { linesSection } from './review/sections/section.ts';
import type { ReviewSection } from './review/sections/section.ts';
import { bestSection, figureSection, forecastSection, trendSection } from './review/sections/test-sections.ts';
import { inOneLine } from './review/told-item.ts';
import type { ToldItem } from './review/told-item.ts';

export interface ReviewPage {
  /** `Monday 8 Feb 2027: Saltmarsh Handball, spring`. */
  readonly title: string;
  readonly facts: readonly string[];
  /** `To decide: 3`. */
  readonly toDecide: string;
  readonly decisions: readonly ToldItem[];
  readonly exceptions: readonly ToldItem[];
  readonly ahead: readonly ToldItem[];
  readonly sections: readonly ReviewSection[];
}

export const NO_DECISIONS = 'Nothing.';
export const NO_EXCEPTIONS = 'Nothing: all of it went as written.';
export const NOTHING_AHEAD = 'Nothing out of the ordinary.';

/** Everything in words; sections with nothing to tell aren't there. */
export function reviewPage(review: Review): ReviewPage {
  const { title, day, week, mark, recorded, waivers } = review;
  const order = review.athletes.map(({ id }) => id);
  const decisions = inOneLine(review.decisions, order);
  return {
    title: `${weekdayName(day)} ${dateWithYear(day)}: ${title}`,
    facts: [
      ...(week === undefined ? [] : [`week ${week}`]),
      `build ${mark}`,
      ...(recorded.of === 0 ? [] : [`last week complete on record for ${recorded.complete} of ${recorded.of}`]),
      'not for the wall: it names reasons of health',
    ],
    toDecide: decisions.length === 0 ? 'To decide' : `To decide: ${decisions.length}`,
    decisions,
    exceptions: review.exceptions,
    ahead: inOneLine(review.ahead, order),
    sections: [
      ...plannedAndDone(review),
      ...groupSection(review),
      ...lastWeek(review),
      ...trendSection(review),
      ...forecastSection(review),
      ...figureSection(review),
      ...bestSection(review),
      ...linesSection(
        'Waivers in force this week',
        waivers.map(({ what, who, when, because }) => `${what}, ${who}, ${when}: ${because}`),
      ),
    ],
  };
}
