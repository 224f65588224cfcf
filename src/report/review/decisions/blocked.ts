// Weeks ahead that an error keeps from the sheets: told with the first of their errors. Called by ../decisions.ts.

import { dateWords } from '../../calendar-words.ts';
import { whoOf } from '../subject.ts';
import type { Subject } from '../subject.ts';
import type { ToldDecision } from './decision.ts';

/** One for each blocked week from the current one on, with its first error. */
export function blockedWeeks(subject: Subject): readonly ToldDecision[] {
  const { built, week, places } = subject;
  const ahead = built.weeks.filter((one) => one.week >= (week?.week ?? Infinity) && built.blocked.has(one.week));
  return ahead.flatMap(({ starts }) => {
    const error = built.diagnostics.find((one) => one.severity === 'error' && one.week === starts);
    if (error === undefined) return [];
    return {
      kind: 'week blocked',
      ...whoOf(subject),
      words: error.message,
      changes: `no sheets for the week of ${dateWords(starts)} until it is put right or waived`,
      places: error.span === undefined ? [] : [places.words(error.span)],
    };
  });
}
