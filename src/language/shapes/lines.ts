// The shapes of lines written by hand, and of what holds them: `always:`, `programmes:` and `use:`. Read by
// ../sections.ts; plan/resolve-lines.ts refuses what doesn't go together.

import { WEEKDAY_NAMES } from '../../util/days.ts';
import { date } from '../dates.ts';
import { exactlyOne, group } from '../groups.ts';
import { count } from '../numbers.ts';
import { duration, length, mass, percent } from '../quantity.ts';
import { list } from '../lists.ts';
import { nameOf, text, word } from '../words.ts';
import { drillName, liftName } from '../known-names.ts';
import { becauseKey, MOST_REPS, MOST_SETS, rangeKeys, whoKeys } from './common.ts';
import type { Output } from '../shape.ts';
import { PARTS } from '../../library/types.ts';

const MOST_PROGRAMME_WEEKS = 104;
const MOST_MINUTES = 240;

const exerciseKeys = {
  drill: drillName.describe('A drill of the library or of `drills`.').optional(),
  lift: liftName.describe('A lift of the library or of `lifts`.').optional(),
};

const exerciseChoice = exactlyOne('drill', 'lift');

const loadKeys = {
  reps: count(1, MOST_REPS).describe(
    'Repetitions in a set; of one side where each side is done, metres or seconds where the exercise has them.',
  ),
  percent: percent()
    .describe(
      'Of the one-repetition maximum: 80 %. Where the lift goes by the maximum of another, of the share that the library gives it: footfall library says how much.',
    )
    .optional(),
  load: mass().describe('What is on the bar, bar included: 60 kg.').optional(),
  reserve: count(0, 10).describe('Repetitions left in reserve.').optional(),
  drop: length().describe('Height dropped from: 30 cm.').optional(),
  rest: duration().describe('Rest after a set: 90 s or 3 min.').optional(),
  tempo: text('a tempo').describe('As printed.').optional(),
  note: text('a note').describe('Printed beside the line.').optional(),
};

const pairShape = group({ ...exerciseKeys, ...loadKeys })
  .meta(exerciseChoice)
  .meta({ id: 'pair', description: 'Done in each set of the line, after it.' });

export const lineShape = group({
  ...exerciseKeys,
  sets: count(1, MOST_SETS).describe('Sets.'),
  ...loadKeys,
  pair: pairShape.optional(),
})
  .meta(exerciseChoice)
  .meta({ id: 'line', description: 'One line of a session: a drill or a lift.' });

export type LineFields = Output<typeof lineShape>;

export const alwaysShape = group({
  part: word(PARTS).describe('Where in the session.'),
  minutes: count(1, MOST_MINUTES).describe('How long it takes, where the lines alone do not say.').optional(),
  lines: list(lineShape).describe('What is done.'),
  ...rangeKeys,
  ...whoKeys,
  ...becauseKey,
}).describe('Lines in every session.');

export const DAY_KEYS = [...WEEKDAY_NAMES, 'mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const;

const dayLines = list(lineShape).describe('The lines of this day.').optional();

const dayShapes = Object.fromEntries(DAY_KEYS.map((name) => [name, dayLines])) as Readonly<
  Record<(typeof DAY_KEYS)[number], typeof dayLines>
>;

export const programmeWeekShape = group({
  week: count(1, MOST_PROGRAMME_WEEKS).describe('Which week of the programme, from 1.'),
  ...dayShapes,
}).describe('One week of a programme: days with their lines.');

export const programmeShape = list(programmeWeekShape).describe('Sessions written by hand, week by week.');

export const useShape = group({
  programme: nameOf('a programme').describe('One of `programmes`.'),
  from: date().describe('A day in the first week it is used.'),
  ...whoKeys,
}).describe('Where a programme takes the place of what would be planned.');
