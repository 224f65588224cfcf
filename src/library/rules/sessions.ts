// Rules of what a week and a session are made of: tiers, directions, cycles, strength beside jumping, minutes, kit.
// Joined by ../rules.ts. The shares by phase stand with the phases; a parameter without a default replaces them.

import { openParameter, parameter } from './rule-row.ts';
import type { RuleRow } from './rule-row.ts';

export const SESSION_RULES: readonly RuleRow[] = [
  {
    id: 'high-tier-share',
    holds: "High-tier contacts are no more of a week than the phase's share.",
    parameters: [
      openParameter('most', 'percent', 'smaller', "most of a week's contacts, in place of the phase's share"),
    ],
    severity: 'warning',
    waivable: true,
    basis: [],
    mark: 'C',
  },
  {
    id: 'direction-mix',
    holds:
      "A week of several sessions comes close to the sport's directions; where a limit forbids a direction the rule is silent.",
    parameters: [
      parameter('points', 10, 'points', 'smaller', 'most that a direction may be off its share'),
      parameter('sessions', 2, 'sessions', 'smaller', 'jump sessions of a week from which the rule holds'),
    ],
    severity: 'notice',
    waivable: true,
    basis: ['V7', 'D8'],
    mark: 'C',
  },
  {
    id: 'fast-cycle-share',
    holds: "Fast drills keep to the phase's band; in a novice's first weeks there may be fewer.",
    parameters: [
      openParameter('least', 'percent', 'larger', "least of a week's contacts, in place of the phase's"),
      openParameter('most', 'percent', 'smaller', "most of a week's contacts, in place of the phase's"),
      parameter('first-weeks', 4, 'weeks', 'larger', "length of a novice's first weeks, without a least share"),
    ],
    severity: 'notice',
    waivable: true,
    basis: ['V7'],
    mark: 'C',
  },
  {
    id: 'static-share',
    holds: 'Drills without a counter-movement are a small part of a week; landings are not counted.',
    parameters: [parameter('most', 20, 'percent', 'smaller', "most of a week's contacts")],
    severity: 'notice',
    waivable: true,
    basis: ['D9'],
    mark: 'C',
  },
  {
    id: 'jumps-alone',
    holds: 'A block of power work is short, and strength work comes before it where there is time for it.',
    parameters: [parameter('most', 5, 'weeks', 'smaller', 'longest power block')],
    severity: 'warning',
    waivable: true,
    basis: ['R9'],
    mark: 'C',
  },
  {
    id: 'strength-always',
    holds: 'Every week but transition and empty ones has strength work.',
    parameters: [parameter('least', 1, 'sessions', 'larger', 'fewest lift sessions in a week')],
    severity: 'warning',
    waivable: true,
    basis: ['R7'],
    mark: 'P',
  },
  {
    id: 'stability-share',
    holds: 'Work on unstable surfaces and balance work is a small part of a session; rehabilitation is not counted.',
    parameters: [parameter('most', 15, 'percent', 'smaller', "most of a session's sets")],
    severity: 'notice',
    waivable: true,
    basis: ['P13'],
    mark: 'C',
  },
  {
    id: 'pair-rest',
    holds:
      'In a pair the jump follows the heavy set after a rest; clusters inside one set, marked as such, are excepted.',
    parameters: [parameter('least', 180, 'seconds', 'larger', 'shortest rest from the heavy set to the jumps')],
    severity: 'notice',
    waivable: true,
    basis: ['S10'],
    mark: 'P',
  },
  {
    id: 'slot-minutes',
    holds: 'A session fits the minutes of its slot.',
    parameters: [parameter('over', 10, 'percent', 'smaller', 'most that a session may run over')],
    severity: 'warning',
    waivable: true,
    basis: [],
    mark: null,
  },
  {
    id: 'kit',
    holds:
      "What a line needs is at the place; where it isn't, the family's next rung takes its place and that is said.",
    parameters: [],
    severity: 'warning',
    waivable: true,
    basis: [],
    mark: null,
  },
  {
    id: 'surface',
    holds: 'Drops and drills of the high tier are not done on concrete, asphalt, stone or tiles.',
    parameters: [],
    severity: 'warning',
    waivable: true,
    basis: ['G8'],
    mark: 'P',
  },
  {
    id: 'stations',
    holds: 'The time spent waiting for a shared rack, box or hurdle is in the minutes of the session.',
    parameters: [],
    severity: 'warning',
    waivable: true,
    basis: [],
    mark: null,
  },
];
