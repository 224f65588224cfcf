// Rules of lifting loads: reps at a percentage, reserve, steps, tempo, young lifters. Joined by ../rules.ts.
// The chart of reps and percentages is data of its own, in ../load-chart.ts.

import { parameter } from './rule-row.ts';
import type { RuleRow } from './rule-row.ts';

export const LOAD_RULES: readonly RuleRow[] = [
  {
    id: 'eccentric-tempo',
    holds: 'No lift meant to help jumping is lowered very slowly.',
    parameters: [parameter('most', 5, 'seconds', 'smaller', 'longest lowering of one rep')],
    severity: 'notice',
    waivable: true,
    basis: ['P13'],
    mark: 'C',
  },
  {
    id: 'load-reps',
    holds: 'A set has no more reps than the load chart gives at its share of the maximum.',
    parameters: [],
    severity: 'error',
    waivable: true,
    basis: ['load-chart'],
    mark: 'S',
  },
  {
    id: 'load-reserve',
    holds: "A set leaves something in reserve under the chart's most reps.",
    parameters: [parameter('least', 1, 'reps', 'larger', 'fewest reps left in reserve')],
    severity: 'notice',
    waivable: true,
    basis: [],
    mark: 'C',
  },
  {
    id: 'load-step',
    holds: 'From one loading week of a block to the next a load rises by a small share, or by one step of the plates.',
    parameters: [parameter('most', 10, 'percent', 'smaller', 'most rise over the loading week before')],
    severity: 'warning',
    waivable: true,
    basis: ['P14'],
    mark: 'P',
  },
  {
    id: 'youth-load',
    holds: 'Young lifters stay well under their maximum, go a little heavier once cleared, and do no single reps.',
    parameters: [
      parameter('under', 16, 'years', 'larger', 'age below which the rule holds'),
      parameter('most', 80, 'percent', 'smaller', 'heaviest load until cleared for loads'),
      parameter('cleared', 85, 'percent', 'smaller', 'heaviest load once cleared for loads'),
      parameter('least-reps', 2, 'reps', 'larger', 'fewest reps in a loaded set'),
    ],
    severity: 'error',
    waivable: false,
    refusal: 'It protects a young lifter: clear the athlete for loads when the technique is there.',
    basis: ['P15'],
    mark: 'C',
  },
];
