// The shape of `season:`, and of the keys that say which files a plan has and which version it is written in. Read by
// ../sections.ts.

import { date, weekday } from '../dates.ts';
import { group } from '../groups.ts';
import { count } from '../numbers.ts';
import { oneOrMore } from '../lists.ts';
import { text, word } from '../words.ts';
import { sportName } from './common.ts';

export const VERSION = 1;

export const versionShape = count(1, 9999).describe('Version of the plan language. Required in the entry file: 1.');

export const seasonShape = group({
  title: text('the name of the season').describe('What is printed on every page.'),
  sport: sportName()
    .describe('A sport profile: directions and usual practice jumps, of who has none of their own. Left out: general.')
    .optional(),
  starts: date().describe('First day of the season.'),
  ends: date().describe('Last day. Left out: the end of the week of the last competition.').optional(),
  'week-starts': weekday().describe('The day a week starts on. Left out: monday.').optional(),
  units: word(['metric', 'imperial']).describe('What is printed; a plan may use either.').optional(),
  'time-zone': text('a time zone, as in Europe/Oslo')
    .describe('For the calendar, as in Europe/Oslo. Left out: times are local wherever they are read.')
    .optional(),
  'in-season': oneOrMore(group({ from: date().describe('First day.'), until: date().describe('Last day, included.') }))
    .describe('When matches are played week by week: jumps are kept up, not built.')
    .optional(),
}).describe('What the season is, and when.');

export const filesShape = oneOrMore(text('a path or a glob, as in squad/*.yaml')).describe(
  'More files of this plan: paths or globs from the folder of the entry file.',
);

export const rosterShape = text('the path of a CSV file').describe(
  'Athletes from a CSV file, one a row: `id` and the names of athlete fields as columns, `now.contacts-a-session` for a field inside a field.',
);

export const recordShape = group({
  done: text('the path of a CSV file')
    .describe('What was done: date,athlete,kind,contacts,minutes,effort,pain,note.')
    .optional(),
  tests: text('the path of a CSV file')
    .describe('Test results: date,athlete,test,trial,value,unit,method,arms,note.')
    .optional(),
}).describe('Files of what was really done.');
