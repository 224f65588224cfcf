// Rules of how much: contacts of a session and a week, how they rise, when they fall, how they come back.
// Joined by ../rules.ts. "A" in the sentences below is the adapted volume: the contacts a week an athlete is used to.

import { openParameter, parameter } from './rule-row.ts';
import type { RuleRow } from './rule-row.ts';

export const VOLUME_RULES: readonly RuleRow[] = [
  {
    id: 'session-ceiling',
    holds:
      "The contacts planned for a session stay within the ceiling of the athlete's level, which is lower in season.",
    parameters: [
      parameter('beginner', 100, 'contacts', 'smaller', 'most contacts in a session of a beginner'),
      parameter('intermediate', 120, 'contacts', 'smaller', 'most contacts in a session of an intermediate'),
      parameter('advanced', 140, 'contacts', 'smaller', 'most contacts in a session of an advanced athlete'),
      parameter('in-season-beginner', 60, 'contacts', 'smaller', 'the same in season, beginner (common practice)'),
      parameter(
        'in-season-intermediate',
        80,
        'contacts',
        'smaller',
        'the same in season, intermediate (common practice)',
      ),
      parameter('in-season-advanced', 100, 'contacts', 'smaller', 'the same in season, advanced (common practice)'),
    ],
    severity: 'error',
    waivable: true,
    basis: ['V1'],
    mark: 'S',
  },
  {
    id: 'weekly-rise',
    holds:
      'A loading week is no further above the adapted volume than one step: a share of it or a fixed number of contacts, whichever is more.',
    parameters: [
      parameter('most', 10, 'percent', 'smaller', 'most rise over the adapted volume'),
      parameter('contacts', 10, 'contacts', 'smaller', 'rise that is always allowed, for small volumes'),
      parameter('severe', 30, 'percent', 'smaller', 'rise from which the finding is an error'),
    ],
    severity: 'warning',
    graver: 'an error when the week is more than the severe rise above the adapted volume',
    waivable: true,
    basis: ['R1', 'R2'],
    mark: 'C',
  },
  {
    id: 'session-rise',
    holds:
      'One session is no further above the usual session than a share of it or a fixed number of contacts, whichever is more.',
    parameters: [
      parameter('most', 30, 'percent', 'smaller', 'most rise over the usual session'),
      parameter('contacts', 15, 'contacts', 'smaller', 'rise that is always allowed, for small sessions'),
    ],
    severity: 'warning',
    waivable: true,
    basis: [],
    mark: 'C',
  },
  {
    id: 'all-jumps-rise',
    holds:
      'All jumping of a week, in sessions, practice, matches and tests, stays near what the athlete is used to and the mean of other jumps in the weeks before it.',
    parameters: [
      parameter('most', 130, 'percent', 'smaller', 'most jumps of a week, in per cent of what is usual'),
      parameter('weeks', 4, 'weeks', 'larger', 'how many weeks back the mean of other jumps reaches'),
    ],
    severity: 'warning',
    waivable: true,
    basis: [],
    mark: 'C',
  },
  {
    id: 'budget',
    holds: 'All jumping of a week stays within the number the coach has set; without one the rule is silent.',
    parameters: [openParameter('jumps-a-week', 'jumps', 'smaller', 'most jumps of every kind in one week')],
    severity: 'warning',
    graver: 'an error for an athlete with a limit in force or coming back',
    waivable: true,
    basis: [],
    mark: null,
  },
  {
    id: 'deload-rhythm',
    holds:
      'Loading weeks come in short runs with an easy week after each, and easy weeks are not too close together; in season and in foundation the rule is silent.',
    parameters: [
      parameter('loading-weeks', 3, 'weeks', 'smaller', 'most loading weeks in a row'),
      parameter('between', 2, 'weeks', 'larger', 'fewest loading weeks before an easy one'),
    ],
    severity: 'notice',
    waivable: true,
    basis: ['R4'],
    mark: 'C',
  },
  {
    id: 'deload-depth',
    holds: 'An easy week is well under the adapted volume and under every loading week of its run.',
    parameters: [parameter('most', 60, 'percent', 'smaller', 'most of an easy week, of the adapted volume')],
    severity: 'warning',
    waivable: true,
    basis: ['R4'],
    mark: 'C',
  },
  {
    id: 'taper-cut',
    holds:
      'The taper before a peak cuts the volume by about half and keeps the tiers of the weeks before it; its last sessions are hardly larger than those of its week before.',
    parameters: [
      parameter('first', 60, 'percent', 'smaller', 'most of the first of two taper weeks, of the adapted volume'),
      parameter('last', 50, 'percent', 'smaller', 'most of the last taper week, of the adapted volume'),
      parameter('most-cut', 60, 'percent', 'smaller', 'deepest cut below the adapted volume'),
      parameter('least-cut', 40, 'percent', 'larger', 'smallest cut below the adapted volume'),
      // What the shares of a week and of a session make of it: 75 % of the usual session over 60 % (C).
      parameter(
        'session-over',
        25,
        'percent',
        'smaller',
        'most of a session over the largest of the taper week before it',
      ),
    ],
    severity: 'warning',
    waivable: true,
    basis: ['R5'],
    mark: 'P',
  },
  {
    id: 'last-week',
    holds: 'The week of a peak is never without jumping: it has a session or, where none fits, a short primer.',
    parameters: [parameter('primer', 20, 'contacts', 'smaller', 'contacts of a primer')],
    severity: 'warning',
    waivable: true,
    basis: ['S13'],
    mark: 'C',
  },
  {
    id: 'return-ramp',
    holds:
      'After time away the weeks climb a ladder from half of what the athlete was used to; a longer absence has a longer ladder.',
    parameters: [
      parameter(
        'short-from',
        2,
        'weeks',
        'smaller',
        'weeks away from which the short ladder holds (its first two steps)',
      ),
      parameter('long-from', 4, 'weeks', 'smaller', 'weeks away from which the long ladder holds (all four steps)'),
      parameter('first', 50, 'percent', 'smaller', 'most of the first week back, of the volume before'),
      parameter('second', 70, 'percent', 'smaller', 'most of the second week back'),
      parameter('third', 80, 'percent', 'smaller', 'most of the third week back, long ladder'),
      parameter('fourth', 90, 'percent', 'smaller', 'most of the fourth week back, long ladder'),
    ],
    severity: 'error',
    waivable: true,
    whoDecided: true,
    basis: ['R3'],
    mark: 'M',
  },
  {
    id: 'returning-stage',
    holds:
      'An athlete coming back does nothing above the stage that has been signed: not its drills, not its contacts.',
    parameters: [
      parameter('stage-1', 30, 'contacts', 'smaller', 'most contacts in a session of stage 1: low and two-legged'),
      parameter('stage-2', 50, 'contacts', 'smaller', 'most contacts in a session of stage 2: moderate and one-legged'),
      parameter(
        'stage-3',
        70,
        'contacts',
        'smaller',
        'most contacts in a session of stage 3: higher, in all directions',
      ),
      parameter('stage-4', 90, 'contacts', 'smaller', 'most contacts in a session of stage 4: maximal'),
    ],
    severity: 'error',
    waivable: false,
    refusal: 'A stage is opened by whoever signs it, by criteria: sign the next one up instead.',
    basis: ['G11'],
    mark: 'C',
  },
];
