// What the shape of a plan can get wrong, in its keys and in its values. Reported while a document is decoded, before any
// name is looked up.

import type { Entries } from '../entry.ts';
import { keyEntries } from './language/keys.ts';
import { valueEntries } from './language/values.ts';

export const languageEntries = {
  ...keyEntries,
  ...valueEntries,
} as const satisfies Entries;
