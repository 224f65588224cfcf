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
    summary: 'an exercise the coach asks for and a gate bars',
    explanation:
      'A pin, or a line for every session, chooses an exercise, but it opens no gate: what protects a child, or somebody who is hurt or not cleared, stands. The session stays as it would be without it. What bars it is named, and each of it bars by itself.',
    bad: 'pins: [{ squads: [juniors], week: 2027-03-08, keep: [drop-jump-40], because: nearly ready }]',
    good: 'athletes: { mira: { cleared: [drops, drop-jump-40] } }',
    message: ({ athlete, exercise, by, bars }: BarredExercise) =>
      `${exercise} is asked for of ${athlete}, and ${by} ${bars === 1 ? 'bars it' : 'bar it, each by itself'}`,
    help: ({ by, opens, instead }: BarredExercise) =>
      [
        opens === '' ? `footfall rules ${by.split(' ')[0] ?? by} says what would open it` : `it opens with ${opens}`,
        ...(instead === '' ? [] : [`${instead} of the same family may be done`]),
      ].join('; '),
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
  'lines/added-over-minutes': {
    severity: 'warning',
    summary: 'lines of the coach’s own that make a session too long for its slot',
    explanation:
      'Assistance, trunk and further main lifts give way to lines that a pin adds or that stand in every session, but jumps, their rest and the coach’s own lines do not. These items do not fit the slot together; without any one of them the session fits. Write fewer of them, for fewer days, or open the slot for longer.',
    bad: 'always: [{ part: trunk, minutes: 45, lines: [{ lift: plank, sets: 3, reps: 40 }], because: backs }]    # the slot has 60 minutes',
    good: 'always: [{ part: trunk, minutes: 10, lines: [{ lift: plank, sets: 3, reps: 40 }], because: backs }]',
    message: ({
      athlete,
      days,
      lines,
      found,
      most,
      slot,
    }: {
      athlete: string;
      days: readonly string[];
      lines: number;
      found: number;
      most: number;
      slot: number;
      wanted: number;
    }) =>
      `${lines === 1 ? 'this makes' : `${String(lines)} items together make`} the session of ${athlete} on ${days[0] ?? ''} take ${String(found)} minutes, and a slot of ${String(slot)} allows ${String(most)}${days.length < 2 ? '' : `; ${String(days.length - 1)} more of these sessions ${days.length === 2 ? 'is' : 'are'} too long`}`,
    help: ({ found, most, wanted }: { readonly found: number; readonly most: number; readonly wanted: number }) =>
      `that session fits with ${String(found - most)} min less of it, or in a slot of ${String(wanted)} minutes`,
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

type BarredExercise = {
  readonly athlete: string;
  readonly exercise: string;
  /** Rules and facts that bar it, and how many. */
  readonly by: string;
  readonly bars: number;
  /** What may be written to open them; empty where not all can be opened so. */
  readonly opens: string;
  /** The hardest drill of its family that may be done; empty: none. */
  readonly instead: string;
};
