// What is known of going up, backing off and coming back, and of phases and loads. Joined by ../sources.ts.

import type { Source } from '../types.ts';

export const PROGRESS_SOURCES: readonly Source[] = [
  {
    id: 'R1',
    fact: 'A rise of 10 % a week is a rule of runners; no trial tests a weekly cap on contacts. 30 % over two weeks went with more running injuries of the kind that distance brings.',
    mark: 'C',
    source: 'common practice; the 30 %: Nielsen 2014, J Orthop Sports Phys Ther (P)',
  },
  {
    id: 'R2',
    fact: 'Trials rose from 140 to 260 jumps a session in 6 weeks, or by 16 jumps a leg each week from 80; many did not rise at all.',
    mark: 'P',
    source: 'Ramirez-Campillo 2015, two papers',
  },
  {
    id: 'R3',
    fact: 'After two weeks away or more, volume stays at least 50, 30, 20 and 10 % under the usual in weeks 1 to 4.',
    mark: 'M',
    source: 'CSCCa and NSCA consensus, Caterisano 2019, Strength Cond J 41(3):1–23, values from memory (scope P)',
  },
  {
    id: 'R4',
    fact: '246 strength athletes took an easy week every 5.6 ± 2.3 weeks for 6.4 ± 1.7 days, with fewer reps and sets and as many sessions. In jump coaching three rising weeks and an easy one are common practice.',
    mark: 'P',
    source: 'Rogerson 2024, Sports Med Open 10:26',
  },
  {
    id: 'R5',
    fact: 'Tapers that worked lasted 2 weeks, cut volume by 41 to 60 % and kept intensity and frequency.',
    mark: 'P',
    source: 'Bosquet 2007, Med Sci Sports Exerc 39(8):1358–1365',
  },
  {
    id: 'R6',
    fact: 'Stopping costs maximal force (standardised difference −0.46) more than maximal power (−0.20), the more the longer.',
    mark: 'P',
    source: 'Bosquet 2013, Scand J Med Sci Sports 23(3):e140–9',
  },
  {
    id: 'R7',
    fact: 'One strength session a week in season kept strength, sprint and jump for 12 weeks, one in two weeks lost strength and sprint; one set an exercise did for up to 32 weeks where the load was kept.',
    mark: 'P',
    source: 'Rønnestad 2011, J Strength Cond Res 25(10):2653–2660; Spiering 2021, J Strength Cond Res 35(5):1449–1458',
  },
  {
    id: 'R8',
    fact: 'The ratio of acute to chronic load is disputed: shown as a description, with no zone called safe.',
    mark: 'P',
    source: 'Impellizzeri 2021, Sports Med 51:581–592; Lolli 2019, Br J Sports Med 53:921',
  },
  {
    id: 'R9',
    fact: 'Jumping without strength work gains for about a month, then stands still, and falls by the fourth month.',
    mark: 'C',
    source: 'common practice, no source',
  },
];

export const LOAD_SOURCES: readonly Source[] = [
  {
    id: 'P1',
    fact: 'Four months are about a month each of hypertrophy, strength, strength-power and power.',
    mark: 'C',
    source:
      'common practice; the same order in Stone, O’Bryant & Garhammer 1981, J Sports Med Phys Fitness 21(4):342–351 (P)',
  },
  {
    id: 'P2',
    fact: 'A single month is mostly power and jumping.',
    mark: 'C',
    source: 'common practice, no source',
  },
  {
    id: 'P3',
    fact: 'Hypertrophy: 50 to 75 % of the maximum, 3 to 6 sets of 8 to 20 (from memory); a goal table gives 67 to 85 % and 6 to 12 reps (S).',
    mark: 'M',
    source: 'NSCA ch. 21; NSCA goal table',
  },
  { id: 'P4', fact: 'Basic strength: 80 to 95 %, 2 to 6 sets of 2 to 6.', mark: 'S', source: 'NSCA ch. 21' },
  {
    id: 'P5',
    fact: 'Strength-power: 30 to 95 % by the exercise, 2 to 5 sets of 2 to 5.',
    mark: 'S',
    source: 'NSCA ch. 21',
  },
  {
    id: 'P6',
    fact: 'Peaking: 50 to 93 % and over, 1 to 3 sets of 1 to 3.',
    mark: 'M',
    source: 'NSCA ch. 21, from memory',
  },
  {
    id: 'P7',
    fact: 'Maintenance: 85 to 93 % (S), 2 to 5 sets of 3 to 6 (from memory).',
    mark: 'M',
    source: 'NSCA ch. 21',
  },
  { id: 'P8', fact: 'Transition: 1 to 4 weeks without a set programme.', mark: 'S', source: 'NSCA ch. 21' },
  { id: 'P9', fact: 'A block lasts 2 to 6 weeks, most often 4.', mark: 'M', source: 'NSCA, from memory' },
  {
    id: 'P10',
    fact: 'Three orders of the same work gave 60 soldiers much the same gains: the order is a default, no law.',
    mark: 'P',
    source: 'Loturco 2013, J Strength Cond Res 27(1)',
  },
  {
    id: 'P11',
    fact: 'Loads for ballistic lifts: jump squats 0 to 30 % of the back-squat maximum; cleans 70 % and over.',
    mark: 'P',
    source: 'Soriano 2015, Sports Med 45:1191–1205; Cormie 2007, Med Sci Sports Exerc 39(2):340–349',
  },
  {
    id: 'P12',
    fact: 'How deep to squat for jumping is contested, one study for partial, one for deep; loads are never carried from one depth to another.',
    mark: 'P',
    source: 'Rhea 2016, Human Movement 17(1):43–49; Hartmann 2012, J Strength Cond Res 26(12):3243–3261',
  },
  {
    id: 'P13',
    fact: 'Lowering a load for over 5 to 6 s, and working mostly on unstable surfaces, holds jump height back; both stay a small part. 4 s and 2 s made no difference to strength (P).',
    mark: 'C',
    source: 'common practice, no source',
  },
  {
    id: 'P14',
    fact: 'A load goes up by 2 to 10 % when one or two reps over the target are there.',
    mark: 'P',
    source: 'ACSM position stand: Ratamess et al. 2009, Med Sci Sports Exerc 41(3):687–708',
  },
  {
    id: 'P15',
    fact: 'Young lifters go by technique: sets of up to 10 with reps in reserve, never a maximal single without a coach who signs it.',
    mark: 'C',
    source: 'common practice, no source',
  },
  {
    id: 'load-chart',
    fact: 'Most reps to failure by share of the maximum: 1 at 100 %, 2 at 95, 3 at 93, 4 at 90, 5 at 87, 6 at 85, 7 at 83, 8 at 80, 9 at 77, 10 at 75, 12 at 70. Another printing has 11 at 70, 12 at 67 and 15 at 65 (from memory); the two are not mixed.',
    mark: 'S',
    source: 'NSCA training load chart',
  },
  {
    id: 'one-rep-max',
    fact: 'Seven equations estimate the maximum from up to 10 reps to failure: Epley, Brzycki, Lombardi, O’Conner, Lander, Mayhew, Wathan.',
    mark: 'S',
    source: 'secondary texts that quote them',
  },
];
