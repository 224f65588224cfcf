// Limits that end about now: what they barred opens by itself, so the coach is asked before it does. Called by
// ../decisions.ts.

import { REVIEW } from '../../../library/review.ts';
import { limitWords } from '../../limit-words.ts';
import { dateWords } from '../../calendar-words.ts';
import { whoOf } from '../subject.ts';
import type { Subject } from '../subject.ts';
import type { ToldDecision } from './decision.ts';

/** One for each limit whose last day is within the review's days, before or behind. */
export function endingLimits(subject: Subject): readonly ToldDecision[] {
  const { plan, athlete, day, places } = subject;
  return athlete.limits
    .filter(({ range }) => Math.abs(range.until - day) <= REVIEW.daysAhead)
    .map((limit) => ({
      kind: 'limit ends',
      ...whoOf(subject),
      words: `the limit (${limit.because}) ${limit.range.until < day ? 'ended' : 'ends'} on ${dateWords(limit.range.until)}: renew it, or let it go?`,
      changes: `${limitWords(plan, limit)}; after that it opens by itself`,
      places: [places.words(limit.span)],
    }));
}
