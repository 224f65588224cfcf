// The shape of an athlete, and of a squad, which gives its athletes any of the same fields as defaults. Read by
// ../sections.ts; what the words mean is settled in plan/.

import { CLEARANCES } from '../../library/clearances.ts';
import { DIRECTIONS, LEVELS, TIERS } from '../../library/types.ts';
import { born, date } from '../dates.ts';
import { each, exactlyOne, group } from '../groups.ts';
import { count } from '../numbers.ts';
import { liftSet, mass } from '../quantity.ts';
import { either, isWord, list, oneOrMore } from '../lists.ts';
import { nameOf, text, word } from '../words.ts';
import { awayShape } from './calendar.ts';
import { becauseKey, MOST_CONTACTS, rangeKeys, sportName, weekKey } from './common.ts';

/** Grams. Outside of these a mass is taken for a slip; no athlete is refused that the equations were made for. */
export const PLAUSIBLE_MASS = { from: 15_000, to: 300_000, words: 'a body mass from 15 kg to 300 kg' };
const MOST_SESSIONS = 14;
const MOST_STAGES = 9;

const contactsASession = count(0, MOST_CONTACTS);
const contactsAWeek = count(0, MOST_CONTACTS);

const nowShape = group({
  'contacts-a-session': contactsASession.describe('Contacts in a usual session of the last weeks, as it really was.'),
  'sessions-a-week': count(0, MOST_SESSIONS).describe('Jump sessions in a usual one of the last weeks.'),
}).describe('The last weeks, as they really were. Left out: a cautious start for the level, and a notice.');

const levelWord = word(LEVELS);

const levelSteps = list(
  group({
    is: levelWord.describe('The level.'),
    from: date().describe('From this day: the date of your sign-off. Left out: from the start.').optional(),
  }),
);

const levelShape = either(isWord, levelWord, levelSteps).describe(
  'How experienced: beginner, intermediate, advanced; or a list with dates, each date the sign-off. Left out: beginner.',
);

/** What a limit may avoid beside the ids of drills, families, lifts and patterns. */
export const AVOIDABLE_WORK = ['drops', 'single-leg'] as const;
export const AVOIDABLE_CYCLES = ['fast', 'slow'] as const;
export const AVOID_WORDS: readonly string[] = [...AVOIDABLE_WORK, ...DIRECTIONS, ...AVOIDABLE_CYCLES, ...TIERS];

const limitShape = group({
  ...rangeKeys,
  ...weekKey,
  avoid: oneOrMore(nameOf('what to avoid', AVOID_WORDS))
    .describe(
      'What is not done: drops, single-leg, a direction, fast, slow, a tier, a drill, a family, a lift with its kinds and theirs (of back-squat those with the bar on the back) or a pattern. A pin with leave-out: leaves out the one alone.',
    )
    .optional(),
  'contacts-a-session': contactsASession.describe('At most so many contacts in a session.').optional(),
  'contacts-a-week': contactsAWeek.describe('At most so many contacts in a week.').optional(),
  ...becauseKey,
}).meta({ id: 'limit', description: 'What is barred for a while. Nobody can waive it; end it or change it.' });

const returnShape = group({
  stage: count(1, MOST_STAGES).describe('The stage that is signed off.'),
  of: count(1, MOST_STAGES).describe('How many stages there are.'),
  since: date().describe('When this stage was signed off.'),
  signed: text('who signed').describe('Who signed it off: physio, surgeon.'),
}).meta({ id: 'return-stage', description: 'Coming back after surgery or a long lay-off, by stages somebody signs.' });

const maxShape = group({
  max: mass().describe('The one-repetition maximum, lifted.').optional(),
  did: liftSet().describe('A hard set, as in 70 kg x 5: the maximum is estimated from it and marked so.').optional(),
  on: date().describe('When.').optional(),
})
  .meta(exactlyOne('max', 'did'))
  .meta({ id: 'max', description: 'What the athlete lifts: `max` or `did`.' });

const fields = {
  group: text('a word for the group').describe('Who trains side by side on the floor.').optional(),
  sport: sportName()
    .describe("The athlete's own sport profile, where a squad has several. Left out: that of the season.")
    .optional(),
  born: born()
    .describe('A year, a month or a date: 2003, 2003-06, 2003-06-14. Decides what protects children.')
    .optional(),
  sex: word(['female', 'male']).describe('Only where an equation needs it.').optional(),
  mass: mass(PLAUSIBLE_MASS).describe('Body mass: 68 kg or 150 lb.').optional(),
  level: levelShape.optional(),
  now: nowShape.optional(),
  goal: group({ 'contacts-a-session': contactsASession.describe('Contacts in a session at the height of the block.') })
    .describe('What to aim at. Left out: the foot of the band of the level.')
    .optional(),
  lifts: each(maxShape, 'lift-name').describe('What the athlete lifts, by lift.').optional(),
  cleared: list(
    nameOf(
      'a clearance',
      CLEARANCES.map((clearance) => clearance.id),
    ),
  )
    .describe('What you have signed off: drops, single-leg-high, drop-strength, loads, or a drill.')
    .optional(),
  limits: oneOrMore(limitShape).describe('What is barred for a while, and why.').optional(),
  returning: oneOrMore(returnShape).describe('Coming back, by signed stages.').optional(),
  away: oneOrMore(awayShape).describe('Days on which this athlete is away.').optional(),
};

export const athleteShape = group({
  name: text('a name').describe('As printed. Left out: the id.').optional(),
  squad: nameOf('a squad').describe('One of `squads`: gives what is left out here.').optional(),
  ...fields,
}).describe('An athlete.');

export const squadShape = group(fields).describe('A squad: any field of its athletes, as a default.');
