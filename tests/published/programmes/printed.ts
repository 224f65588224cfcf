// What is printed of each programme beside this file, and where. Each folder holds one season in which the programme is
// written by hand; nothing in it is ours but what its first lines say.

import type { RuleId } from '../../../src/library/rules.ts';

export interface Printed {
  /** The folder. */
  readonly name: string;
  readonly source: string;
  /** As the library marks its sources: published and read, or from memory. */
  readonly mark: 'P' | 'M';
  readonly unit: 'contacts' | 'repetitions';
  /** Sum of the whole programme, as printed or as the printed sessions add up. */
  readonly total: number;
  /** Sum of each week, where it is printed or follows from what is. */
  readonly weeks: readonly number[];
  /** Where the drills are stand-ins only the rules of how much and when say anything about the programme. */
  readonly rules: readonly RuleId[];
  readonly remark?: string;
}

const VOLUME: readonly RuleId[] = [
  'session-ceiling',
  'weekly-rise',
  'session-rise',
  'all-jumps-rise',
  'deload-rhythm',
  'deload-depth',
  'session-frequency',
  'session-spacing',
  'youth-ceiling',
  'rest-day',
];

const DROPS: readonly RuleId[] = [...VOLUME, 'drop-count', 'fast-spacing'];

const LIFTS: readonly RuleId[] = [
  'load-reps',
  'load-reserve',
  'load-step',
  'lift-spacing',
  'pair-rest',
  'eccentric-tempo',
  'deload-rhythm',
];

const same = (weeks: number, sum: number): readonly number[] => Array.from({ length: weeks }, () => sum);

const sumOf = (weeks: readonly number[]): number => weeks.reduce((sum, week) => sum + week, 0);

type Counted = Pick<Printed, 'name' | 'source' | 'weeks'> & Partial<Printed>;

const jumps = (one: Counted): Printed => ({
  mark: 'P',
  unit: 'contacts',
  total: sumOf(one.weeks),
  rules: VOLUME,
  ...one,
});

const lifts = (one: Counted): Printed => ({
  mark: 'P',
  unit: 'repetitions',
  total: sumOf(one.weeks),
  rules: LIFTS,
  ...one,
});

const NORDIC = 'Sports Med 2020;50:83–99, Table 2';

/** Jumps a session are the printed total shared evenly: sessions a week, weeks, total. */
const mean = (who: string, sessions: number, weeks: number, total: number, remark?: string): Printed =>
  jumps({
    name: `mean-${who.toLowerCase()}`,
    source: `${who}, in tables of reviews: Ramirez-Campillo 2023, Sports Med Open; J Sports Sci Med 2020;19:489; Wang 2024, J Sports Sci Med 23:177–195`,
    total,
    weeks: same(weeks, (total / (weeks * sessions)) * sessions),
    ...(remark !== undefined && { remark }),
  });

export const PRINTED: readonly Printed[] = [
  jumps({
    name: 'pairs',
    source: 'J Sports Sci Med 2018;17:348, Table 1',
    weeks: [18, 24, 30, 18],
    rules: [...VOLUME, ...LIFTS.filter((rule) => rule !== 'deload-rhythm')],
    remark: 'sessions 1 and 3 of each week; printed as 827, 1,103, 1,378 and 827 kg a session at 91.9 kg of body mass',
  }),
  lifts({
    name: 'undulating-squat',
    source: 'Sports Med Open 2023;9, s40798-023-00651-y, Table 4',
    weeks: [48, 72, 72, 63, 63, 54, 54, 20],
  }),
  lifts({ name: 'nordic-alt', source: NORDIC, weeks: same(4, 27), total: 108 }),
  lifts({
    name: 'nordic-anastasi',
    source: NORDIC,
    weeks: [54, 54, 63, 63, 72, 72, 72, 90, 90, 90],
    total: 720,
  }),
  lifts({ name: 'nordic-clark', source: NORDIC, weeks: [10, 24, 54, 72], total: 160 }),
  lifts({ name: 'nordic-freeman', source: NORDIC, weeks: [20, 24, 30, 36], total: 110 }),
  jumps({
    name: 'agility-miller',
    source: 'Miller 2006, J Sports Sci Med 5:459–465',
    mark: 'M',
    weeks: [180, 240, 240, 280, 280, 240],
    remark: '90, 120, 120, 140, 140 and 120 a session, two a week',
  }),
  jumps({
    name: 'drop-jumps-1200',
    source: 'Interv Med Appl Sci 2014;6(3):125–130',
    weeks: same(6, 200),
    total: 1200,
    rules: DROPS,
  }),
  jumps({ name: 'constant-100', source: 'PLoS ONE 19(5):e0295786', weeks: same(8, 200), total: 1600 }),
  ...[420, 840, 1680].map((total) =>
    jumps({
      name: `drop-jumps-${total}`,
      source: 'J Strength Cond Res 22(3):715–725',
      weeks: same(7, total / 7),
      total,
      rules: DROPS,
    }),
  ),
  mean('Asadi', 2, 6, 720),
  mean('Ramirez-Campillo', 2, 6, 1008),
  mean('Vera-Assaoka', 2, 7, 840),
  mean('Cimenli', 3, 8, 3000),
  mean('Aloui', 2, 8, 1056),
  mean('Chaabene', 2, 8, 800),
  mean('Gaamouri', 2, 10, 1440),
  mean('Karadenizli', 2, 10, 2100),
  mean(
    'Noutsos',
    2,
    6,
    2304,
    'girls of 12.9 years; elsewhere 36 to 108 contacts a session are printed for them (J Funct Morphol Kinesiol 9(4):204), and the two do not agree',
  ),
];

/** Trials of which only sessions a week, weeks and the total are printed, and the total doesn't share out evenly. */
export const NOT_WRITTEN: readonly (readonly [who: string, sessions: number, weeks: number, total: number])[] = [
  ['Lloyd, first group', 2, 6, 958],
  ['Lloyd, second group', 2, 4, 740],
  ['Amato', 2, 6, 880],
  ['Behrens', 2, 8, 972],
  ['Idrizovic', 1, 12, 613],
  ['Pereira', 2, 8, 2376],
  ['Chelly', 2, 8, 430],
  ['Hermassi', 2, 8, 470],
  ['Mazurek', 3, 5, 1168],
];
