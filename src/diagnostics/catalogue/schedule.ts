// What cannot be scheduled as written: pins nobody can meet, slots that don't hold, peaks that clash.
// Reported by the scheduler; each says what was wanted, what was found and which lines made it so.

import type { Entries } from '../entry.ts';

export const scheduleEntries = {} as const satisfies Entries;
