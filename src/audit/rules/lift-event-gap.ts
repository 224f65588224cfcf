// lift-event-gap: in the last days before a competition, and on its days, no heavy lifting for legs and hips and none that
// the hamstrings lower; on its eve one light main lift for the legs, and no more of them. S7, S12, C.

import { SLOW_HINGE_SECONDS } from '../../library/leg-sparing.ts';
import type { Lift, LiftPattern } from '../../library/types.ts';
import { sessionsTooNear } from '../events.ts';
import type { LineReading } from '../line-reading.ts';
import { legLiftPlace, writtenPlace } from '../places.ts';
import { auditRule } from '../rule.ts';
import type { SessionReading } from '../session-reading.ts';

export const liftEventGap = auditRule(
  'lift-event-gap',
  (season, find) => {
    const working = season.sessions.filter((session) => session.heavy || session.lines.some(worksLegs));
    for (const { session, week, params, related, eve } of sessionsTooNear(season, 'lift-event-gap', working)) {
      const { date, competition, found, wanted } = params;
      if (session.heavy) {
        find(week, {
          params: { date, competition, found, wanted, what: 'heavy', lifts: '' },
          span: legLiftPlace(session),
          related,
        });
      }
      const sore = eve ? tooMuchForAnEve(session) : session.lines.filter(isLowered);
      const [first] = sore;
      if (first === undefined) continue;
      const lifts = [...new Set(sore.map(({ line }) => line.exercise))].join(', ');
      find(week, {
        params: { date, competition, found, wanted, what: eve ? 'eve' : 'lowered', lifts },
        span: writtenPlace(first),
        related,
      });
    }
  },
  { asksLoads: true },
);

/** What is done fast or leaves the ground makes nobody sore like the rest, and has rules of its own. */
const FAST: ReadonlySet<LiftPattern> = new Set(['pull-from-floor', 'loaded-jump']);

/** A warm-up is none of it. */
const worksLegs = ({ line, lift }: LineReading): boolean =>
  line.part !== 'prepare' && lift !== undefined && lift.lower && !FAST.has(lift.pattern);

const isLowered = (reading: LineReading): boolean =>
  reading.lift?.pattern === 'hamstring-eccentric' && worksLegs(reading);

/** The first lift that may be the main one stays, in as many lines as it has. */
function tooMuchForAnEve({ lines }: SessionReading): readonly LineReading[] {
  const legs = lines.filter(worksLegs);
  const main = legs.find(({ lift }) => lift !== undefined && mayBeMain(lift))?.lift?.id;
  return legs.filter(({ lift }) => lift?.id !== main);
}

const mayBeMain = ({ pattern, eccentricSeconds }: Lift): boolean =>
  pattern === 'squat' || (pattern === 'hinge' && eccentricSeconds < SLOW_HINGE_SECONDS);
