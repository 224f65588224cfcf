// What holds an exercise back, in words. The scheduler says it as a rule with numbers and places. For `why` and
// `library`.

import type { Span } from '../source/types.ts';
import { heightWords } from '../util/quantities.ts';
import type { Units } from '../util/quantities.ts';
import type { Places } from './places.ts';

export interface Refused {
  /** The rule or fact. */
  readonly by: string;
  readonly params: Readonly<Record<string, string | number>>;
  readonly spans: readonly Span[];
}

type Params = Refused['params'];

const WORDS: Readonly<Record<string, (params: Params, height: (cm: string | number | undefined) => string) => string>> =
  {
    limit: () => "the athlete's limit bars it",
    'returning-stage': ({ stage, of }) =>
      stage === 0 ? 'no stage of the return is open yet' : `only stage ${stage} of ${of} of the return is open`,
    'drill-level': ({ from }) => `from the level ${from} on`,
    'drop-age': ({ under, most }, height) =>
      most === undefined ? `no drops under the age of ${under}` : `at most ${height(most)} at this age`,
    'drop-clearance': ({ clear }) => `the coach hasn't cleared it (cleared: [${clear}])`,
    'drop-height': ({ most }, height) => `at most ${height(most)} at this level`,
    'drop-mass': ({ most }, height) => `at most ${height(most)} at this body mass, or as long as it isn't known`,
    'first-drop': ({ most }, height) =>
      `drops start at ${height(most)}; a pin, or the drill among those cleared, opens higher ones`,
    'drop-strength': ({ percent }) => `needs a back squat of ${percent} % of body mass`,
    'youth-load': ({ under }) => `no loaded jumps under the age of ${under}`,
    phase: ({ from }) => `comes in with the phase ${from}`,
    surface: ({ place, surface }) => `${place} is ${surface}, which doesn't give`,
    kit: ({ place, kit, cm }, height) => `${place} has no ${kit}${cm === undefined ? '' : ` of about ${height(cm)}`}`,
  };

/** Why not, heights in the plan's units, with the line of the plan where there is one. Throws for a refusal it has no words for. */
export function refusalWords({ by, params, spans }: Refused, places: Places, units: Units): string {
  const words = WORDS[by];
  if (words === undefined) throw new Error(`no words for a refusal by ${by}`);
  const [first] = spans;
  const said = words(params, (cm) => heightWords(Number(cm), units));
  return first === undefined ? said : `${said}, ${places.words(first)}`;
}
