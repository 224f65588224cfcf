// Limits in words: what they bar and up to when, never why. Said the same on cards, boards, sheets and the physio's page.

import { isKindOf } from '../library/lift-facts.ts';
import type { Cycle, Direction, Tier } from '../library/types.ts';
import type { Avoid, Limit, Plan } from '../plan/types.ts';
import { dateWords } from './calendar-words.ts';
import { exerciseName } from './exercise-words.ts';

/** `no drops, no sideways jumps, at most 60 jumps a session, until 14 Feb`. */
export function limitWords(plan: Plan, limit: Limit): string {
  const { until } = limit.range;
  return [...barredWords(plan, limit), ...(until >= plan.season.ends ? [] : [`until ${dateWords(until)}`])].join(', ');
}

/** What a limit bars, without its days: `no drops from a box`, `at most 60 jumps a session`. */
export function barredWords(
  plan: Plan,
  { avoid, contactsASession, contactsAWeek }: Pick<Limit, 'avoid' | 'contactsASession' | 'contactsAWeek'>,
): readonly string[] {
  return [
    ...new Set(avoid.map((one) => `no ${avoidWords(plan, one)}`)),
    ...(contactsASession === undefined ? [] : [`at most ${contactsASession} jumps a session`]),
    ...(contactsAWeek === undefined ? [] : [`at most ${contactsAWeek} jumps a week`]),
  ];
}

const DIRECTION_WORDS: Readonly<Record<Direction, string>> = {
  vertical: 'upward jumps',
  horizontal: 'forward jumps',
  lateral: 'sideways jumps',
};
const CYCLE_WORDS: Readonly<Record<Exclude<Cycle, 'none'>, string>> = {
  fast: 'jumps off short contacts',
  slow: 'jumps with a dip before them',
};
const TIER_WORDS: Readonly<Record<Tier, string>> = {
  low: 'jumps',
  moderate: 'jumps but the easiest',
  high: 'jumps of the hardest kind',
};

const SINGLE_LEG = 'single-leg work';

function avoidWords({ library, season }: Plan, avoid: Avoid): string {
  switch (avoid.kind) {
    case 'drops':
      return 'drops from a box';
    case 'single-leg':
      return SINGLE_LEG;
    case 'direction':
      return DIRECTION_WORDS[avoid.id];
    case 'cycle':
      return CYCLE_WORDS[avoid.id];
    case 'tier':
      return TIER_WORDS[avoid.id];
    case 'drill':
      return exerciseName(library, avoid.id, season.units).toLowerCase();
    case 'lift':
      return `${exerciseName(library, avoid.id).toLowerCase()}${hasKinds(library, avoid.id) ? ' of any kind' : ''}`;
    case 'family':
      return avoid.id.replaceAll('-', ' ');
    case 'pattern':
      // The word bars lifts and jumps alike, and is told once.
      return avoid.id === 'single-leg' ? SINGLE_LEG : avoid.id.replaceAll('-', ' ');
  }
}

const hasKinds = ({ lifts }: Plan['library'], id: string): boolean =>
  [...lifts.values()].some((lift) => lift.id !== id && isKindOf(lift, id));
