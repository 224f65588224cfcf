// What the shape of a plan can get wrong: unknown keys, keys at the wrong level, values and units of the wrong kind.
// Reported while a document is decoded, before any name is looked up.

import type { Entries } from '../entry.ts';

export const languageEntries = {} as const satisfies Entries;
