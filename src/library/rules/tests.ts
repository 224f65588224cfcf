// Rules of tests: how old a number may be, how fresh the athlete, what may be compared. Joined by ../rules.ts.

import { parameter } from './rule-row.ts';
import type { RuleRow } from './rule-row.ts';

export const TEST_RULES: readonly RuleRow[] = [
  {
    id: 'test-stale',
    holds: 'The maximum or test behind a prescription is recent, and counts for less after time away.',
    parameters: [
      parameter('weeks', 12, 'weeks', 'smaller', 'age from which a maximum or test is stale'),
      parameter('away', 3, 'weeks', 'smaller', 'weeks away after which a maximum counts for less'),
      parameter('share', 90, 'percent', 'smaller', 'what a maximum then counts for'),
    ],
    severity: 'notice',
    waivable: true,
    basis: [],
    mark: 'C',
  },
  {
    id: 'test-fresh',
    holds: 'A test day keeps its distance from heavy work.',
    parameters: [parameter('apart', 2, 'days', 'larger', 'fewest days from heavy work to a test')],
    severity: 'notice',
    waivable: true,
    basis: [],
    mark: 'C',
  },
  {
    id: 'test-method',
    holds: 'A trend compares tests of one method and one use of the arms only.',
    parameters: [],
    severity: 'notice',
    waivable: false,
    refusal: 'Heights from two methods, or with and without arms, are two different measures.',
    basis: ['J2', 'J14'],
    mark: 'P',
  },
];
