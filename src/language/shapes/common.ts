// Keys that many items share: for whom, when, and why. Spread into the shapes beside this file.

import { date } from '../dates.ts';
import { SPORTS } from '../../library/sports.ts';
import type { Shape } from '../shape.ts';
import { oneOrMore } from '../lists.ts';
import { nameOf, text } from '../words.ts';

export const whoKeys = {
  squads: oneOrMore(nameOf('names of squads'))
    .meta({
      id: 'for-squads',
      description: 'Only for these squads. With `athletes` as well it is for either; without both it is for everybody.',
    })
    .optional(),
  athletes: oneOrMore(nameOf('ids of athletes'))
    .meta({ id: 'for-athletes', description: 'Only for these athletes, by id.' })
    .optional(),
};

export const rangeKeys = {
  from: date().describe('First day, included. Left out: from the start of the season.').optional(),
  until: date().describe('Last day, included. Left out: to the end of the season.').optional(),
};

export const weekKey = { week: date().describe('Any date in the week that is meant.').optional() };

export const becauseKey = {
  because: text('the reason, in a few words').describe(
    'Why. Printed where it acts; a health reason is printed on coach pages only. Put it in quotes if it has a colon.',
  ),
};

/** The id of a sport profile. */
export const sportName = (): Shape<string> =>
  nameOf(
    'a sport',
    SPORTS.map((sport) => sport.id),
  );

/** Most contacts of a session or a week, and of jumps, that are taken for meant; likewise sets, and reps of a set. */
export const MOST_CONTACTS = 2000;
export const MOST_SETS = 50;
export const MOST_REPS = 500;
