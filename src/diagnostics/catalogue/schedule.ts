// What cannot be scheduled as written: pins nobody can meet, slots that don't hold, peaks that clash.
// Reported by the scheduler; each says what was wanted, what was found and which lines made it so.

import type { Entries } from '../entry.ts';

export const scheduleEntries = {
  'schedule/pin-too-high': {
    severity: 'error',
    summary: 'a pin of more contacts than is safe by then',
    explanation:
      'A pin fixes a number and the rest is planned round it, but it lifts no rule. By the week of this pin the athlete cannot be used to that much, or the days, the slots or a limit do not hold it. Pin less, pin a later week, or waive the rule with a reason.',
    bad: 'pins: [{ athletes: [mira], week: 2027-01-11, contacts-a-week: 300, because: camp }]',
    good: 'pins: [{ athletes: [mira], week: 2027-01-11, contacts-a-week: 120, because: camp }]',
    message: ({ athlete, week, wanted, most, rule }: {
      athlete: string; week: string; wanted: number; most: number; rule: string; earliest: string; reachable: boolean;
    }) => `${wanted} contacts are pinned for ${athlete} in the week of ${week}, and ${most} are the most by then (${rule})`,
    help: ({ wanted, most, earliest, reachable }: { wanted: number; most: number; earliest: string; reachable: boolean }) =>
      reachable
        ? `pin ${most} or less, or wait: ${wanted} is safe from the week of ${earliest} at the earliest`
        : `pin ${most} or less: ${wanted} is out of reach in this season`,
  },
  'schedule/return-in-taper': {
    severity: 'warning',
    summary: 'a way back that is not finished when the taper would begin',
    explanation:
      'Weeks behind time away climb a ladder. Where it reaches into the weeks before a peak there is nothing to taper from, so the ladder goes on and the taper is left out.',
    bad: 'away: [{ from: 2027-03-22, until: 2027-04-11, because: ill, trained: none }]    # the peak is on 24 April',
    good: 'competitions: [{ name: County cup final, date: 2027-04-24, prepare: through }]   # or leave it, and read the warning',
    message: ({ athlete, week, peak }: { athlete: string; week: string; peak: string }) =>
      `${athlete} is still on the way back in the week of ${week}, so there is no taper for ${peak}`,
  },
} as const satisfies Entries;
