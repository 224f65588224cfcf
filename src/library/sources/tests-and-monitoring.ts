// What is known of jump tests, of growth, and of watching load. Joined by ../sources.ts.

import type { Source } from '../types.ts';

export const TEST_SOURCES: readonly Source[] = [
  {
    id: 'J1',
    fact: 'Height from the time in the air: h = g t²/8, and speed at take-off v = g t/2, with g = 9.80665 m/s². 0.50 s gives 0.3065 m.',
    mark: 'M',
    source: 'CGPM 1901 for g; mechanics',
  },
  {
    id: 'J2',
    fact: 'Time in the air reads 1.4 to 1.7 cm above video or impulse, and jump-and-reach is further off still: one trend, one method.',
    mark: 'P',
    source: 'Baumgart 2017, Asian J Sports Med 8(4):e12921',
  },
  {
    id: 'J3',
    fact: 'Reactive strength index: height in m by contact time in s. 0.35 m in 0.20 s is 1.75.',
    mark: 'P',
    source: 'Healy 2018, Int J Sports Physiol Perform',
  },
  {
    id: 'J4',
    fact: 'Modified reactive strength index: height of a counter-movement jump by the time to take-off.',
    mark: 'P',
    source: 'Sole 2018, Sports 6(4):133',
  },
  {
    id: 'J5',
    fact: 'Eccentric utilisation ratio: counter-movement jump by squat jump. Shown, never prescribed from.',
    mark: 'P',
    source: 'McGuigan 2006, J Strength Cond Res 20(4):992–995; Kozinc 2024',
  },
  {
    id: 'J6',
    fact: 'Dynamic strength index: peak force of a counter-movement jump by isometric peak force; under 0.60 points to ballistic work, over 0.80 to maximal force. Contested: its variants agree for about 45 % of athletes.',
    mark: 'P',
    source: 'PLoS ONE e0331519',
  },
  {
    id: 'J7',
    fact: 'Peak power in W from height h in cm and mass m in kg: counter-movement jump 51.9h + 48.9m − 2007; squat jump 60.7h + 45.3m − 2055.',
    mark: 'M',
    source: 'Sayers 1999, from memory; checked on group means in Canavan & Vescovi 2004',
  },
  {
    id: 'J8',
    fact: 'Peak power 61.9h + 36.0m − 1822. A plus sign before 1822 is a common misprint: 65.9 kg and 32.87 cm must give 2585 W.',
    mark: 'M',
    source:
      'Harman 1991, from memory; the group mean: Canavan & Vescovi 2004, Med Sci Sports Exerc 36(9):1589–1593 (P)',
  },
  {
    id: 'J9',
    fact: 'Peak power of women: 65.1h + 25.8m − 1413.1.',
    mark: 'P',
    source: 'Canavan & Vescovi 2004, Med Sci Sports Exerc 36(9):1589–1593',
  },
  {
    id: 'J10',
    fact: 'Peak power of males from 12 to 24 years: 63.6h + 42.7m − 1846.5.',
    mark: 'P',
    source: 'Amonette 2012, J Strength Cond Res 26(7):1749–1755',
  },
  {
    id: 'J11',
    fact: 'A counter-movement jump varies within one athlete by 2.4 to 4.6 % on a contact mat, and by 5.8 % from day to day on a plate.',
    mark: 'P',
    source: 'Markovic 2004, J Strength Cond Res 18(3):551–555; PMC7039490',
  },
  {
    id: 'J12',
    fact: 'The mean of the trials follows change better than the best one.',
    mark: 'P',
    source: 'Claudino 2017, J Sci Med Sport 20(4):397–402',
  },
  {
    id: 'J13',
    fact: 'The smallest change worth having is 0.2 of the standard deviation between athletes.',
    mark: 'M',
    source: 'Hopkins, from memory',
  },
  {
    id: 'J14',
    fact: 'Arms add 10 to 38 %: each test keeps whether they were used.',
    mark: 'P',
    source: 'Vaverka 2016, J Hum Kinet 53:41–50',
  },
  {
    id: 'J15',
    fact: 'What jump training gives on the average: squat jump +4.7 % (1.8 to 7.6), counter-movement jump +8.7 % (7.0 to 10.4), with arms +7.5 % (4.2 to 10.8), drop jump +4.7 % (0.8 to 8.6). Of groups, no promise to a person.',
    mark: 'P',
    source: 'Markovic 2007, Br J Sports Med 41:349–355',
  },
  {
    id: 'J16',
    fact: 'College athletes jump about 10 to 16 in (women) and 15 to 22 in (men).',
    mark: 'C',
    source: 'common practice, no source',
  },
];

export const MONITORING_SOURCES: readonly Source[] = [
  {
    id: 'jumpers-knee',
    fact: 'Among young elite volleyball players those who jumped higher to begin with were the ones who came to have a sore patellar tendon. No number is taken from it.',
    mark: 'M',
    source: 'Visnes, Aandahl & Bahr 2013, Br J Sports Med 47:503–507, from memory',
  },
  {
    id: 'maturity-offset',
    fact: 'Years from the peak of growth, worked out from age, height, sitting height and mass by sex, ± 1 year. A boy of 14.0 years, 165 cm, 86 cm sitting and 54 kg is at +0.20. Nobody is selected on it.',
    mark: 'S',
    source: 'Mirwald 2002, Med Sci Sports Exerc 34(4):689–694',
  },
  {
    id: 'maturity-offset-simple',
    fact: 'Years from the peak of growth of boys: −7.999994 + 0.0036124 × age × height in cm.',
    mark: 'P',
    source: 'Moore 2015, Med Sci Sports Exerc 47(8):1755–1764',
  },
  {
    id: 'session-load',
    fact: 'Load of a session: effort × minutes. Monotony: mean of the seven days by their standard deviation; strain: load × monotony. Days of rest count as 0. Which standard deviation is meant is not said; the sample one is used here.',
    mark: 'P',
    source: 'Foster 1998, Med Sci Sports Exerc 30(7):1164–1168',
  },
];
