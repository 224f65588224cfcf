// The shapes of what stands in a calendar: slots, competitions, closures, practice and tests. Read by ../sections.ts;
// minutes, jumps and contacts are whole numbers.

import { date, timeOfDay, weekday } from '../dates.ts';
import { group } from '../groups.ts';
import { testedName } from '../known-names.ts';
import { count } from '../numbers.ts';
import { oneOrMore } from '../lists.ts';
import { nameOf, text, word } from '../words.ts';
import { MOST_CONTACTS, rangeKeys, whoKeys } from './common.ts';

export const TRAINED = ['none', 'some', 'full'] as const;
const MOST_MINUTES = 480;

const trained = word(TRAINED)
  .describe('How much is trained elsewhere meanwhile: decides how much is lost. Left out: none.')
  .optional();

export const slotShape = group({
  day: weekday().describe('The day of the week.'),
  name: text('a word for this slot').describe('Needed where two slots fall on one day: morning, evening.').optional(),
  at: timeOfDay().describe('When it begins, in quotes: "18:00".').optional(),
  minutes: count(1, MOST_MINUTES).describe('How long it is, in minutes, warm-up included.'),
  place: nameOf('a place').describe('Where: one of `places`.'),
  use: word(['jumps', 'lifts', 'both']).describe('What it is for. Left out: both.').optional(),
  ...rangeKeys,
  ...whoKeys,
}).describe('A time each week when training is possible.');

export const competitionShape = group({
  name: text('the name of the competition').describe('What it is called.'),
  date: date().describe('Its first day.'),
  until: date().describe('Its last day, included, when it has several.').optional(),
  prepare: word(['peak', 'freshen', 'through']).describe(
    'peak: the season aims at it. freshen: go in fresh. through: train on as usual.',
  ),
  jumps: count(0, MOST_CONTACTS)
    .describe("Jumps on each of its days. Left out: what one practice of the athlete's sport usually has.")
    .optional(),
  ...whoKeys,
}).describe('A competition, match or tournament.');

export const closureShape = group({
  from: date().describe('First day without training.'),
  until: date().describe('Last day without training, included.'),
  because: text('the reason, in a few words').describe('Why.').optional(),
  trained,
  places: oneOrMore(nameOf('names of places')).describe('Only these places are closed. Left out: all.').optional(),
  ...whoKeys,
}).describe('Days on which nobody, or not here, can train.');

export const awayShape = group({
  from: date().describe('First day away.'),
  until: date().describe('Last day away, included.'),
  because: text('the reason, in a few words').describe('Why.').optional(),
  trained,
}).meta({ id: 'away', description: 'Days on which this athlete is away.' });

export const practiceShape = group({
  day: weekday().describe('The day of the week.'),
  jumps: count(0, MOST_CONTACTS).describe(
    'Jumps the sport itself does in this practice; several lines on a day add up.',
  ),
  ...rangeKeys,
  ...whoKeys,
}).describe('Jumps in practice of the sport: they count in the week.');

export const testShape = group({
  date: date().describe('The day of the test.'),
  what: oneOrMore(testedName).describe('What is tested.'),
  contacts: count(0, MOST_CONTACTS).describe('Contacts the test itself takes.').optional(),
  ...whoKeys,
}).describe('A test day: no other jumps stand on it.');
