// What can go wrong between a compiled plan and its artefacts: the folder written to and what stands in it.
// Reported by the commands, mostly with no place in a plan.

import type { Entries } from '../entry.ts';

export const buildEntries = {} as const satisfies Entries;
