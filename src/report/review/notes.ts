// What stands below the numbers of the Monday page: what they are made of, how well they are known, and what they are not.

import { TRAINING_GAIN_WEEKS } from '../../library/jump-tests.ts';
import { REVIEW } from '../../library/review.ts';
import type { BestJumpers } from './best-jumpers.ts';
import { getSource } from '../../library/sources.ts';

/** `(P) Foster 1998, …`. */
function sourced(id: string): string {
  const { mark, source } = getSource(id);
  return `(${mark}) ${source}`;
}

export const LOAD_NOTES = {
  planned:
    'Planned is what the sheets of that week had on its first day, by the plan as it is written now; ? where no session is on record, none where none was to be.',
  groups: 'Contacts of those who have something on record, and the mean of their efforts.',
  jumps:
    'All jumps: sessions, practice, competitions and tests; of what is not on record as planned, and ~ where a whole week is missing.',
  ratio: `Ratio: last week by the mean of the ${REVIEW.weeks} weeks with it. It describes and warns of nothing, as no zone of it is known to be safe: ${sourced('R8')}.`,
  load:
    'Load: effort x minutes. Monotony: mean of the seven days by their sample standard deviation (the paper leaves open which one it means), rest as 0; ' +
    `strain: load x monotony: ${sourced('session-load')}. A gap is something that took place, or was to, without effort and minutes on record: then there is no monotony, and the load is at least that.`,
} as const;

export const TEST_NOTES = {
  change:
    `Change of the mean of the trials. Error: typical error between days, published for counter-movement jumps and taken for the others, ${sourced('J11')}; a change of no more than two of them is inside the noise. ` +
    `Least: the smallest change worth having, 0.2 of the spread between those tested in the same way, from ${REVIEW.fewestForSpread} of them on: ${sourced('J13')}. Two ways of testing are never compared.`,
  forecast:
    `Groups gained this much on the average by a programme of jump training of ${TRAINING_GAIN_WEEKS.from} to ${TRAINING_GAIN_WEEKS.to} weeks (the weeks from memory); the range is the 95 % interval of that average. One person may gain more, less or nothing: it is no promise. ` +
    `From the last test before the season, or the first in it, for adults whom neither pain nor a return holds back: ${sourced('J15')}.`,
  best: ({ test, method, arms, tested }: BestJumpers): string =>
    `Of ${tested} adults by ${[test.replaceAll('-', ' '), method, arms === undefined ? undefined : arms ? 'with arms' : 'without arms'].filter((part) => part !== undefined).join(', ')}; ` +
    `those with something on record first, no ranking, and nobody under ${REVIEW.adultAge} or of an unknown age. That the best jumpers' knees are the ones at risk: ${sourced('jumpers-knee')}.`,
} as const;
