// Upward jumps with a deep, slow dip: in place, with a turn, in a split stance, on one leg. Joined by ../drills.ts.
// Tuck and pike jumps stand above the order of classes, because they put the highest forces through the knee (D4).

import type { Drill } from '../types.ts';
import { EASY, EASY_EACH, HARD, STEADY, STEADY_EACH, family, only } from './family.ts';

const UP_SLOW = { direction: only('vertical'), cycle: 'slow' } as const;

const JUMP_IN_PLACE = family('jump-in-place', UP_SLOW, [
  {
    id: 'small-jump',
    name: 'Small jump',
    tier: 'low',
    stage: 1,
    ...EASY,
    cue: 'Half of your height, hands on the hips, land where you took off.',
    stop: 'The landing gets loud, or the knees fall in.',
  },
  {
    id: 'countermovement-jump',
    name: 'Counter-movement jump',
    tier: 'low',
    stage: 2,
    ...EASY,
    restSeconds: 90,
    cue: 'Hands on the hips, a quick dip, as high as you can, reset each time.',
    stop: 'The jump gets clearly lower, or you land off the spot.',
  },
  {
    id: 'countermovement-jump-arms',
    name: 'Counter-movement jump with arms',
    tier: 'low',
    stage: 2,
    ...EASY,
    restSeconds: 90,
    cue: 'Swing the arms through with the dip and reach for the ceiling.',
    stop: 'The jump gets clearly lower, or you land off the spot.',
  },
  {
    id: 'countermovement-jump-series',
    name: 'Counter-movement jumps in a row',
    tier: 'moderate',
    stage: 3,
    ...STEADY,
    cue: 'Jump high, land, dip and go again without a pause.',
    stop: 'The dip gets deeper from jump to jump, or the height is gone.',
  },
]);

const TUCK = family('tuck', { ...UP_SLOW, fromLevel: 'intermediate' }, [
  {
    id: 'tuck-jump-stick',
    name: 'Tuck jump and stick',
    lands: 'stick',
    tier: 'moderate',
    stage: 3,
    ...STEADY,
    cue: 'Jump first, then bring the knees up; long legs again before landing.',
    stop: 'You land with the knees still bent high, or can’t hold it.',
  },
  {
    id: 'tuck-jump',
    name: 'Tuck jump',
    tier: 'moderate',
    stage: 3,
    ...STEADY,
    restSeconds: 120,
    cue: 'Knees to the hands, not the chest to the knees; land softly and reset.',
    stop: 'The knees come up less, or the landing gets louder.',
  },
  {
    id: 'pike-jump',
    name: 'Pike jump',
    tier: 'high',
    fromLevel: 'advanced',
    stage: 4,
    ...HARD,
    cue: 'Jump high, legs long in front, hands to the shins, soft landing.',
    stop: 'The back rounds on landing, or the heels hit first.',
  },
]);

const STATIC_JUMP = family('static-jump', { direction: only('vertical'), cycle: 'none' }, [
  {
    id: 'paused-quarter-jump',
    name: 'Paused quarter jump',
    tier: 'low',
    stage: 1,
    ...EASY,
    cue: 'Bend a little, wait two counts, jump up without a dip.',
    stop: 'You dip before the jump, or land heavily.',
  },
  {
    id: 'squat-jump',
    name: 'Squat jump from a pause',
    tier: 'low',
    stage: 2,
    ...EASY,
    restSeconds: 90,
    cue: 'Thighs near level, wait two counts, jump up as high as you can.',
    stop: 'You dip before the jump, or the back rounds in the pause.',
  },
  {
    id: 'seated-jump',
    name: 'Seated jump',
    kit: ['boxes'],
    boxCm: 45,
    tier: 'moderate',
    fromLevel: 'intermediate',
    stage: 3,
    ...STEADY,
    cue: 'Sit tall on the box, feet flat, stand up so fast that you leave the floor.',
    stop: 'You rock back to get going, or land on the box.',
  },
]);

const SPLIT_JUMP = family('split-jump', UP_SLOW, [
  {
    id: 'small-split-jump',
    name: 'Small split jump',
    legs: 'each',
    tier: 'low',
    stage: 2,
    ...EASY_EACH,
    cue: 'Short stance, small jump, land in the same stance with a tall trunk.',
    stop: 'The front knee falls in, or the trunk tips forward.',
  },
  {
    id: 'split-squat-jump',
    name: 'Split squat jump',
    legs: 'each',
    tier: 'moderate',
    stage: 3,
    ...STEADY_EACH,
    cue: 'From a split squat straight up, land in the same stance, reset.',
    stop: 'The back knee hits the floor, or the front knee falls in.',
  },
  {
    id: 'cycled-split-jump',
    name: 'Cycled split jump',
    legs: 'alternate',
    tier: 'moderate',
    fromLevel: 'intermediate',
    stage: 3,
    ...STEADY,
    restSeconds: 120,
    cue: 'Jump high, switch the legs at the top, land in a full split stance.',
    stop: 'The stance gets short, or the trunk tips forward.',
  },
]);

const TURN_JUMP = family('turn-jump', { ...UP_SLOW, lands: 'stick' }, [
  {
    id: 'quarter-turn-jump',
    name: 'Quarter-turn jump',
    tier: 'low',
    stage: 3,
    ...EASY,
    cue: 'Jump, turn a quarter, land on both feet at once and hold. Both ways.',
    stop: 'One foot lands first, or the turn goes on after landing.',
  },
  {
    id: 'half-turn-jump',
    name: 'Half-turn jump',
    tier: 'low',
    stage: 3,
    ...EASY,
    cue: 'Turn half way in the air, eyes first, land square and hold. Both ways.',
    stop: 'The feet twist on the floor, or you need a step.',
  },
  {
    id: 'full-turn-jump',
    name: 'Full-turn jump',
    tier: 'moderate',
    fromLevel: 'intermediate',
    stage: 4,
    ...STEADY,
    cue: 'Jump high, tight arms, all the way round, land square and hold. Both ways.',
    stop: 'You land short of the turn, or get dizzy.',
  },
]);

const SINGLE_LEG_JUMP = family('single-leg-jump', { ...UP_SLOW, legs: 'each' }, [
  {
    id: 'single-leg-small-jump',
    name: 'Single-leg small jump',
    tier: 'moderate',
    stage: 2,
    ...EASY_EACH,
    cue: 'A small hop up on one leg, soft landing on the same foot, reset.',
    stop: 'The hip drops, or the knee falls in.',
  },
  {
    id: 'single-leg-countermovement-jump',
    name: 'Single-leg counter-movement jump',
    tier: 'moderate',
    fromLevel: 'intermediate',
    stage: 3,
    ...STEADY_EACH,
    cue: 'Dip on one leg, drive the free knee up, land on the same foot.',
    stop: 'The jump gets lower, or you twist in the air.',
  },
  {
    id: 'single-leg-tuck-jump',
    name: 'Single-leg tuck jump',
    tier: 'high',
    fromLevel: 'advanced',
    stage: 4,
    ...STEADY_EACH,
    restSeconds: 150,
    cue: 'Jump off one foot, bring that knee up, long leg again before landing.',
    stop: 'You land with a bent trunk, or need the other foot.',
  },
]);

export const VERTICAL_SLOW: readonly Drill[] = [
  ...JUMP_IN_PLACE,
  ...TUCK,
  ...STATIC_JUMP,
  ...SPLIT_JUMP,
  ...TURN_JUMP,
  ...SINGLE_LEG_JUMP,
];
