// Rules of when: days between sessions, and between sessions and matches. Joined by ../rules.ts.
// Days apart are differences of dates: Tuesday and Thursday are 2 apart. Free days lie wholly between two dates.

import { parameter } from './rule-row.ts';
import type { RuleRow } from './rule-row.ts';

export const SPACING_RULES: readonly RuleRow[] = [
  {
    id: 'session-spacing',
    holds: 'Jump sessions of an athlete never fall on the same or on neighbouring dates.',
    parameters: [parameter('apart', 2, 'days', 'larger', 'fewest days from one jump session to the next')],
    severity: 'warning',
    waivable: true,
    basis: ['S1', 'S2'],
    mark: 'S',
  },
  {
    id: 'fast-spacing',
    holds:
      'After drops or fast drills of the high tier some days stay free of jump sessions, matches and hard practice.',
    parameters: [
      parameter('free-days', 2, 'days', 'larger', 'days that stay free behind such a session'),
      parameter(
        'hard-practice',
        60,
        'jumps',
        'smaller',
        'jumps from which a practice counts as hard (common practice)',
      ),
    ],
    severity: 'warning',
    waivable: true,
    basis: ['S1'],
    mark: 'S',
  },
  {
    id: 'event-gap',
    holds: 'The days before a competition have no ordinary jump session; a primer may stand there.',
    parameters: [
      parameter('peak', 2, 'days', 'larger', 'days kept free before a peak'),
      parameter('match', 1, 'days', 'larger', 'days kept free before any other competition'),
    ],
    severity: 'warning',
    waivable: true,
    basis: ['S8'],
    mark: 'C',
  },
  {
    id: 'after-event',
    holds: 'Whoever played has no jump session right after a match.',
    parameters: [parameter('free-days', 1, 'days', 'larger', 'days kept free behind a match')],
    severity: 'warning',
    waivable: true,
    basis: ['S9'],
    mark: 'C',
  },
  {
    id: 'lift-spacing',
    holds: 'Days of heavy lifting for legs and hips never fall on the same or on neighbouring dates.',
    parameters: [
      parameter('apart', 2, 'days', 'larger', 'fewest days from one heavy lower-body day to the next'),
      parameter('heavy', 80, 'percent', 'smaller', 'share of the one-repetition maximum from which a lift is heavy'),
    ],
    severity: 'warning',
    waivable: true,
    basis: ['S7'],
    mark: 'C',
  },
  {
    id: 'lift-event-gap',
    holds:
      'Heavy lifting for legs and hips, and lowering for the hamstrings, stay away from the days before a competition; on its eve, two days before a peak and one before a competition to be fresh for, the legs have one light main lift and no more.',
    parameters: [
      parameter('match', 2, 'days', 'larger', 'days kept free before a match'),
      parameter('peak', 4, 'days', 'larger', 'days kept free before a peak'),
    ],
    severity: 'warning',
    waivable: true,
    basis: ['S7', 'S12'],
    mark: 'C',
  },
  {
    id: 'congested-week',
    holds: 'Where match days crowd together there is no jump session and only a short lift.',
    parameters: [
      parameter('match-days', 3, 'days', 'smaller', 'match days from which the stretch is crowded'),
      parameter('within', 7, 'days', 'larger', 'length of the stretch they are counted in'),
      parameter('lift-sessions', 1, 'sessions', 'smaller', 'most lift sessions in such a stretch'),
    ],
    severity: 'warning',
    waivable: true,
    basis: [],
    mark: 'C',
  },
  {
    id: 'session-frequency',
    holds:
      'The jump sessions of a week with something to plan lie within the numbers of the level; in season none is needed.',
    parameters: [
      parameter('beginner-least', 1, 'sessions', 'larger', 'fewest in a week, beginner'),
      parameter('beginner-most', 3, 'sessions', 'smaller', 'most in a week, beginner'),
      parameter('intermediate-least', 1, 'sessions', 'larger', 'fewest in a week, intermediate'),
      parameter('intermediate-most', 3, 'sessions', 'smaller', 'most in a week, intermediate'),
      parameter('advanced-least', 1, 'sessions', 'larger', 'fewest in a week, advanced'),
      parameter('advanced-most', 4, 'sessions', 'smaller', 'most in a week, advanced'),
      parameter('in-season-least', 0, 'sessions', 'larger', 'fewest in a week in season, every level'),
    ],
    severity: 'warning',
    waivable: true,
    basis: ['V2', 'V3'],
    mark: 'C',
  },
  {
    id: 'rest-day',
    holds: 'A young athlete has a week with at least one day free of training, practice and matches.',
    parameters: [
      parameter('under', 16, 'years', 'larger', 'age below which the rule holds'),
      parameter('free-days', 1, 'days', 'larger', 'fewest free days in a week'),
    ],
    severity: 'warning',
    waivable: true,
    basis: [],
    mark: 'C',
  },
];
