// The shape of `pins:`: numbers and choices of the coach's own, round which the rest is planned. Read by
// ../sections.ts.

import { PHASES } from '../../library/phases.ts';
import { date, weekday } from '../dates.ts';
import { each, group } from '../groups.ts';
import { exerciseName } from '../known-names.ts';
import { count } from '../numbers.ts';
import { mass } from '../quantity.ts';
import { oneOrMore } from '../lists.ts';
import { word, yesOrNo } from '../words.ts';
import { becauseKey, MOST_CONTACTS, MOST_SETS, rangeKeys, weekKey, whoKeys } from './common.ts';
import { lineShape } from './lines.ts';
import { PARTS, WEEK_KINDS } from '../../library/types.ts';

const exercises = oneOrMore(exerciseName);

export const pinShape = group({
  ...whoKeys,
  ...weekKey,
  date: date().describe('One day.').optional(),
  ...rangeKeys,
  'contacts-a-week': count(0, MOST_CONTACTS).describe('Exactly so many planned contacts in the week.').optional(),
  phase: word(PHASES.map((phase) => phase.id))
    .describe('The phase of these weeks.')
    .optional(),
  rest: yesOrNo().describe('No session on these days.').optional(),
  kind: word(WEEK_KINDS).describe('What kind of week it is.').optional(),
  swap: each(exerciseName, 'exercise-name')
    .describe('One exercise in the place of another: { back-squat: trap-bar-deadlift }.')
    .optional(),
  'leave-out': exercises.describe('Exercises that are not planned.').optional(),
  keep: exercises.describe('Exercises that stay in.').optional(),
  add: oneOrMore(lineShape).describe('Lines put into the sessions.').optional(),
  part: word(PARTS).describe('Where the added lines go. Left out: by what they are.').optional(),
  sets: each(count(1, MOST_SETS), 'exercise-name').describe('Sets of an exercise: { back-squat: 3 }.').optional(),
  load: each(mass(), 'lift-name').describe('The load of a lift: { back-squat: 80 kg }.').optional(),
  on: oneOrMore(weekday()).describe('Days of the jump sessions.').optional(),
  ...becauseKey,
}).describe('A number or choice of your own; the rest is planned round it.');
