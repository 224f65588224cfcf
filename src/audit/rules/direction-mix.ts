// direction-mix: the directions of the athlete's sport, or the phase's own, within some points over a week of several
// sessions. V7, D8 (P: mixing is for breadth). Silent where a limit forbids a direction, and while a signed stage says what may be done.

import { DIRECTIONS } from '../../library/types.ts';
import { limitsOn, returnStageOn } from '../../plan/athlete-facts.ts';
import { directionsOf } from '../../plan/sport-of.ts';
import { auditRule } from '../rule.ts';
import { weekPlace } from '../places.ts';
import type { SeasonReading, WeekReading } from '../season-reading.ts';

export const directionMix = auditRule('direction-mix', (season, find) => {
  const points = season.parameter('direction-mix', 'points');
  const sessions = season.parameter('direction-mix', 'sessions');
  const ofSport = directionsOf(season.plan, season.athlete);
  for (const week of season.weeks) {
    const wanted = ofSport ?? week.phase.directions;
    const mix = week.mix;
    if (wanted === undefined || mix.contacts === 0 || mix.sessions < sessions(week)) continue;
    if (isSilent(season, week)) continue;
    for (const direction of DIRECTIONS) {
      const off = mix[direction] - wanted[direction] * mix.contacts;
      if (Math.abs(off) <= points(week) * mix.contacts) continue;
      find(week, {
        params: {
          direction,
          found: Math.round(mix[direction] / mix.contacts),
          wanted: wanted[direction],
          points: points(week),
        },
        span: weekPlace(season, week),
      });
    }
  }
});

function isSilent({ athlete }: SeasonReading, week: WeekReading): boolean {
  return week.jumpSessions.some(
    ({ day }) =>
      returnStageOn(athlete, day) !== undefined ||
      limitsOn(athlete, day).some((limit) => limit.avoid.some((avoid) => avoid.kind === 'direction')),
  );
}
