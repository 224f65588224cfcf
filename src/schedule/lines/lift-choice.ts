// Which lift fills a place of a session's pattern: the first in the library's order of preference that the athlete, the
// phase and the kit allow; a main lift rather one whose maximum is known. Called for every lift session; what doesn't
// depend on maxima is cached by ladder.

import { SLOW_HINGE_SECONDS } from '../../library/leg-sparing.ts';
import type { Lift, PhaseId } from '../../library/types.ts';
import { inTurn } from '../../library/lifting.ts';
import type { PatternPlace } from '../../library/lifting.ts';
import { boundedCache } from './bounded-cache.ts';
import type { Refusal } from './gates.ts';
import { kitRefusal, liftRefusal, liftRefusals } from './gates.ts';
import type { Ladder } from './ladders.ts';

/** Lifts that could fill a place, in order of preference, whatever the athlete's maxima. */
export type LiftChoice = (place: PatternPlace, ladder: Ladder, phase: PhaseId) => readonly Lift[];

/**
 * Choices among these lifts, without those on unstable ground and those lowered for longer than `mostEccentricSeconds`.
 */
export function liftChoice(lifts: ReadonlyMap<string, Lift>, mostEccentricSeconds: number): LiftChoice {
  const patterns = new Map<string, Lift[]>();
  for (const lift of lifts.values()) patterns.set(lift.pattern, [...(patterns.get(lift.pattern) ?? []), lift]);
  const cache = boundedCache<readonly Lift[]>(CHOICES_KEPT);
  return (place, ladder, phase) =>
    cache(`${ladder.number}|${phase}|${place.pattern}|${place.depth ?? ''}|${place.brisk ?? ''}`, () =>
      inTurn(
        (patterns.get(place.pattern) ?? []).filter(
          (lift) =>
            suits(lift, place) &&
            lift.unstable !== true &&
            lift.eccentricSeconds <= mostEccentricSeconds &&
            !isLoweredTooLong(lift, ladder) &&
            liftBar(lift, ladder, phase) === undefined,
        ),
        phase,
      ),
    );
}

const CHOICES_KEPT = 20_000;

/** A plan may allow less than the library, of what loads the legs. */
const isLoweredTooLong = ({ lower, held, eccentricSeconds }: Lift, { standing }: Ladder): boolean =>
  lower && held !== true && eccentricSeconds > standing.values.mostLoweringSeconds;

/** The gate, or the kit the place lacks, that bars a lift; undefined when it may be done. */
export function liftBar(lift: Lift, ladder: Ladder, phase: PhaseId): Refusal | undefined {
  return liftRefusal(lift, ladder.standing, phase) ?? kitRefusal(lift.kit, ladder.place);
}

/** All gates, and the kit, that bar a lift a pin names. */
export const liftBars = (lift: Lift, ladder: Ladder, phase: PhaseId): readonly Refusal[] =>
  [...liftRefusals(lift, ladder.standing, phase), kitRefusal(lift.kit, ladder.place)].filter(
    (one) => one !== undefined,
  );

/** Half and quarter squats stand only where they are asked for: no load carries over from one depth to another. */
function suits(lift: Lift, place: PatternPlace): boolean {
  if (place.brisk === true && lift.eccentricSeconds >= SLOW_HINGE_SECONDS) return false;
  if (place.depth !== undefined) return lift.depth === place.depth;
  return lift.depth !== 'half' && lift.depth !== 'quarter';
}
