// What is known of rest, of days between sessions, and of days before and after matches. Joined by ../sources.ts.

import type { Source } from '../types.ts';

export const TIMING_SOURCES: readonly Source[] = [
  {
    id: 'S1',
    fact: 'Jump sessions lie 48 to 72 hours apart, and the same joint is not loaded on neighbouring days.',
    mark: 'S',
    source: 'handbook; the neighbouring days: NSCA position statement 1993, item 7 (P)',
  },
  {
    id: 'S2',
    fact: '24 hours between sessions did as well as 48 in players of 10 to 17 years over 6 weeks: a reason why the spacing can be waived.',
    mark: 'P',
    source: 'Ramirez-Campillo 2015, J Strength Cond Res 29(4):972–979',
  },
  { id: 'S3', fact: 'Rest lasts five to ten times as long as the work.', mark: 'S', source: 'handbook' },
  {
    id: 'S4',
    fact: 'Depth jumps: 5 to 10 s between reps, 2 to 3 min between sets.',
    mark: 'M',
    source: 'Potach & Chu, from memory',
  },
  {
    id: 'S5',
    fact: 'Heavy sets of one to six reps are followed by 3 to 5 min of rest.',
    mark: 'P',
    source: 'ACSM position stand: Ratamess et al. 2009, Med Sci Sports Exerc 41(3):687–708',
  },
  {
    id: 'S6',
    fact: 'Rest by goal: strength and power 2 to 5 min, hypertrophy 30 to 90 s.',
    mark: 'S',
    source: 'NSCA goal table',
  },
  {
    id: 'S7',
    fact: 'Heavy days for the legs lie 48 hours apart, 72 after a maximal or very long squat day.',
    mark: 'C',
    source: 'a reading of Helland 2020, PeerJ 8:e10044, and Thomas 2018, Med Sci Sports Exerc 50:2526–2535',
  },
  {
    id: 'S8',
    fact: 'How long before an event the last jump session lies is open: 2 to 10 days made no difference behind a block that had already tapered, while a dense block of 4 weeks lowered jump height at once and raised it 4 weeks later. The days used here are common practice.',
    mark: 'P',
    source: 'Ebben 2010, J Strength Cond Res 24(1):1–7; Luebbers 2003, J Strength Cond Res 17(4):704–709',
  },
  {
    id: 'S9',
    fact: 'Three days after a match not everything has recovered.',
    mark: 'P',
    source: 'Silva 2018, Sports Med 48(3):539–583',
  },
  {
    id: 'S10',
    fact: 'Between a heavy set and the jumps paired with it lie 3 to 7 min, never under 2; the effect is small and contested.',
    mark: 'P',
    source: 'Dobbs 2019, J Strength Cond Res 33(7):2009–2018',
  },
  {
    id: 'S11',
    fact: 'Order of a session: power and jumps, then lifts over several joints, then assistance.',
    mark: 'M',
    source: 'ACSM 2009 for several joints first (P); power first from memory',
  },
  {
    id: 'S12',
    fact: 'Heavy and eccentric leg work stands early in the week, away from the 2 to 3 days before a match.',
    mark: 'C',
    source: 'common practice; Lovell 2018, Scand J Med Sci Sports 28:2216 (P)',
  },
  {
    id: 'S13',
    fact: 'A small session of high quality 1 to 48 hours before an event helps.',
    mark: 'P',
    source: 'Harrison 2019, Sports Med 49(10):1499–1514',
  },
];
