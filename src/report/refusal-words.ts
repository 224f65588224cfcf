// What holds an exercise back, in words. The scheduler says it as a rule with numbers and places. For `why` and
// `library`.

import type { Span } from '../source/types.ts';
import type { Places } from './places.ts';

export interface Refused {
  /** The rule or fact. */
  readonly by: string;
  readonly params: Readonly<Record<string, string | number>>;
  readonly spans: readonly Span[];
}

type Params = Refused['params'];

const WORDS: Readonly<Record<string, (params: Params) => string>> = {
  limit: () => "the athlete's limit bars it",
  'returning-stage': ({ stage, of }) =>
    stage === 0 ? 'no stage of the return is open yet' : `only stage ${stage} of ${of} of the return is open`,
  'drill-level': ({ from }) => `from the level ${from} on`,
  'drop-age': ({ under, most }) =>
    most === undefined ? `no drops under the age of ${under}` : `at most ${most} cm at this age`,
  'drop-clearance': ({ clear }) => `the coach hasn't cleared it (cleared: [${clear}])`,
  'drop-height': ({ most }) => `at most ${most} cm at this level`,
  'drop-mass': ({ most }) => `at most ${most} cm at this body mass, or as long as it isn't known`,
  'first-drop': ({ most }) => `drops start at ${most} cm; a pin, or the drill among those cleared, opens higher ones`,
  'drop-strength': ({ percent }) => `needs a back squat of ${percent} % of body mass`,
  'youth-load': ({ under }) => `no loaded jumps under the age of ${under}`,
  phase: ({ from }) => `comes in with the phase ${from}`,
  surface: ({ place, surface }) => `${place} is ${surface}, which doesn't give`,
  kit: ({ place, kit, cm }) => `${place} has no ${kit}${cm === undefined ? '' : ` of about ${cm} cm`}`,
};

/** Why not, with the line of the plan where there is one. Throws for a refusal it has no words for. */
export function refusalWords({ by, params, spans }: Refused, places: Places): string {
  const words = WORDS[by];
  if (words === undefined) throw new Error(`no words for a refusal by ${by}`);
  const [first] = spans;
  return first === undefined ? words(params) : `${words(params)}, ${places.words(first)}`;
}
