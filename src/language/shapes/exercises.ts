// The shapes of `drills:` and `lifts:`: exercises added to the library, or in the place of built-in ones. Read by
// ../sections.ts; plan/resolve-exercises.ts fills what is left out.

import { KIT_IDS } from '../../library/kit.ts';
import { PHASES } from '../../library/phases.ts';
import {
  CYCLES,
  DEPTHS,
  DIRECTIONS,
  LANDINGS,
  LEGS,
  LEVELS,
  LIFT_PATTERNS,
  LOADINGS,
  TIERS,
} from '../../library/types.ts';
import { exactlyOne, group } from '../groups.ts';
import { liftName } from '../known-names.ts';
import { count, countRange, decimal } from '../numbers.ts';
import { duration, length, percent } from '../quantity.ts';
import { either, isWord, oneOrMore } from '../lists.ts';
import { text, word, yesOrNo } from '../words.ts';
import { MOST_REPS, MOST_SETS } from './common.ts';

const MOST_RUNGS = 20;
const MOST_STAGE = 4;

const kit = oneOrMore(word(KIT_IDS)).describe('The kit it needs.').optional();
const stage = count(1, MOST_STAGE)
  .describe('The lowest stage of a return that allows it. Left out: the last.')
  .optional();

const directionShape = either(
  isWord,
  word(DIRECTIONS),
  group({
    vertical: count(0, 100).describe('Per cent.').optional(),
    horizontal: count(0, 100).describe('Per cent.').optional(),
    lateral: count(0, 100).describe('Per cent.').optional(),
  }),
);

export const drillShape = group({
  name: text('a name').describe('As printed.'),
  family: text('a family').describe('The same movement, easier and harder.'),
  rung: count(1, MOST_RUNGS).describe('How hard within its family: 1 is the easiest.'),
  direction: directionShape.describe('vertical, horizontal or lateral; or shares that add up to 100.'),
  cycle: word(CYCLES).describe('The stretch-shortening cycle: fast, slow or none.'),
  tier: word(TIERS).describe('How intense: low, moderate or high.'),
  legs: word(LEGS).describe('both; each: the reps are done on each leg; alternate: from one to the other.'),
  'contacts-per-rep': count(1, 50).describe('Foot contacts in one repetition.').optional(),
  'metres-per-contact': decimal(0.1, 20).describe('For drills given as distance: metres of one contact.').optional(),
  lands: word(LANDINGS).describe('Where it lands. Left out: ground.').optional(),
  'from-level': word(LEVELS).describe('The lowest level that does it.'),
  kit,
  reps: countRange(1, MOST_REPS).describe('Repetitions in a set, as in 3-8.'),
  sets: countRange(1, MOST_SETS).describe('Sets, as in 2-6.'),
  rest: duration().describe('Rest after a set.'),
  drop: length().describe('Height dropped from, for drops.').optional(),
  box: length().describe('Height jumped onto or over.').optional(),
  stage,
  unstable: yesOrNo().describe('Done on a pad or board.').optional(),
  cue: text('what the athlete thinks of').describe('What the athlete thinks of.'),
  stop: text('when to stop').describe('When to stop, in words an athlete reads.'),
})
  .meta(exactlyOne('contacts-per-rep', 'metres-per-contact'))
  .describe('A drill, added to the library or in the place of a built-in one.');

export const liftShape = group({
  name: text('a name').describe('As printed.'),
  pattern: word(LIFT_PATTERNS).describe('The movement.'),
  depth: word(DEPTHS).describe('Of a squat: loads are never carried over between depths.').optional(),
  kit,
  loading: word(LOADINGS).describe('How the load is made. Left out: by the kit.').optional(),
  'max-of': liftName
    .describe('The lift whose maximum its percentages are of. Left out: none, and reps with a reserve.')
    .optional(),
  'max-share': percent().describe('Of that maximum, what counts as 100 % here.').optional(),
  role: word(['main', 'assistance', 'trunk']).describe('main lifts carry the loads of the phase.').optional(),
  'eccentric-seconds': count(0, 60).describe('Seconds of lowering.').optional(),
  unstable: yesOrNo().describe('Done on a pad or board.').optional(),
  'from-level': word(LEVELS).describe('The lowest level that does it. Left out: beginner.').optional(),
  'from-phase': word(PHASES.map((phase) => phase.id))
    .describe('The first phase it comes in.')
    .optional(),
  each: yesOrNo().describe('Done on each side in turn.').optional(),
  held: yesOrNo().describe('Held for seconds instead of repeated.').optional(),
  reps: countRange(1, MOST_REPS).describe('Repetitions in a set, as in 3-8.').optional(),
  stage,
  cue: text('what the athlete thinks of').describe('What the athlete thinks of.').optional(),
  stop: text('when to stop').describe('When to stop, in words an athlete reads.').optional(),
}).describe('A lift, added to the library or in the place of a built-in one.');
