// What cannot be written into a session: no drill an athlete may do, pins that the gates bar, lines too many for the
// session's contacts. Reported by the scheduler once for an athlete and a line of the plan.

import type { Entries } from '../entry.ts';

export const linesEntries = {
  'lines/no-drill-fits': {
    severity: 'error',
    summary: 'a session that no drill fits',
    explanation:
      'The week holds jumps, but limits, gates, left-out drills and the kit of the place leave no drill that makes the session. Limit the contacts to 0, open a gate, or train where there is other kit.',
    bad: 'limits: [{ avoid: [vertical, horizontal, lateral], because: "physio: back" }]',
    good: 'limits: [{ avoid: [vertical, horizontal, lateral], contacts-a-session: 0, because: "physio: back" }]',
    message: ({ athlete, day, contacts, place }: { athlete: string; day: string; contacts: number; place: string }) =>
      `no drill that ${athlete} may do at ${place} makes the ${contacts} contacts of ${day}`,
    help: () => 'set contacts-a-session: 0 in the limit, or leave fewer drills out',
  },
  'lines/pin-barred': {
    severity: 'warning',
    summary: 'a pinned exercise that a gate bars',
    explanation:
      'A pin chooses an exercise, but it opens no gate: what protects a child, or somebody who is hurt or not cleared, stands. The line stays as it would be without the pin.',
    bad: 'pins: [{ squads: [juniors], week: 2027-03-08, keep: [drop-jump-40], because: nearly ready }]',
    good: 'athletes: { mira: { cleared: [drops, drop-jump-40] } }',
    message: ({ athlete, exercise, by }: { athlete: string; exercise: string; by: string }) =>
      `${exercise} is pinned for ${athlete}, and ${by} bars it`,
    help: ({ by }: { athlete: string; exercise: string; by: string }) => `footfall rules ${by} says what would open it`,
  },
  'lines/added-over-contacts': {
    severity: 'warning',
    summary: 'added jumps that the session has no contacts for',
    explanation:
      'Added lines are part of the contacts planned for a session, so that a week stays what it is. These lines alone are more than that, and are left out. Add fewer sets, or pin more contacts for the week.',
    bad: 'pins: [{ week: 2027-03-08, add: [{ drill: pogo, sets: 10, reps: 10 }], because: ankles }]',
    good: 'pins: [{ week: 2027-03-08, add: [{ drill: pogo, sets: 2, reps: 10 }], because: ankles }]',
    message: ({
      athlete,
      exercise,
      wanted,
      most,
    }: {
      athlete: string;
      exercise: string;
      wanted: number;
      most: number;
    }) => `${exercise} adds ${wanted} contacts for ${athlete}, and ${most} are left in the session`,
  },
  'lines/sets-unmet': {
    severity: 'warning',
    summary: 'pinned sets that do not meet the contacts of a session',
    explanation:
      'Sets and reps of a session make its contacts exactly. With these sets no reps do, so the pin is left aside for this session.',
    bad: 'pins: [{ week: 2027-01-25, sets: { standing-long-jump: 50 }, because: more of it }]',
    good: 'pins: [{ week: 2027-01-25, sets: { standing-long-jump: 4 }, because: more of it }]',
    message: ({ athlete, day, contacts }: { athlete: string; day: string; contacts: number }) =>
      `the pinned sets make no session of ${contacts} contacts for ${athlete} on ${day}`,
  },
} as const satisfies Entries;
