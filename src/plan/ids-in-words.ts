// Athletes told in one sentence, by their ids. Called where one finding stands for many.

import { inWords } from '../util/in-words.ts';

const MOST_NAMED = 6;

/** Their ids as a list in words; of many the first. */
export const idsInWords = (athletes: readonly { readonly id: string }[]): string =>
  inWords(
    athletes.map(({ id }) => id),
    'and',
    MOST_NAMED,
  );
